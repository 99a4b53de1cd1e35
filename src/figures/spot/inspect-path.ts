import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { Outlook } from '../outlook';
import { Scratch } from '../scratch';
import { indexAtStation } from '../traffic/index-at-station';
import type { Path } from '../traffic/paths';
import type { Sample } from '../types';
import { lookingFrom } from './looking-from';
import { sampleAt } from './sample-at';

/** The sample of a path nearest to a station, as seen from a spot. */
export function inspectPath(
  spot: StandingSpot,
  path: Path,
  station: number,
  outlook: Outlook,
  instant: number,
  { view, worth, lines }: Scratch = new Scratch(),
): Sample {
  const { eye, sun, look } = lookingFrom(spot, [path], outlook, instant, lines);
  const { sight, way } = look(path);
  view.look(path.samples, eye, outlook.framing, sight);
  worth.look(outlook.reach);
  return sampleAt(worth, path, indexAtStation(path.samples, station), sun, way, eye, outlook);
}
