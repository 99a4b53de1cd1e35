import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { Outlook } from '../outlook';
import { Scratch } from '../scratch';
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
  { view, lines }: Scratch = new Scratch(),
): Sample {
  const { eye, sun, look } = lookingFrom(spot, [path], outlook, instant, lines);
  const { sight, way } = look(path);
  view.look(path.samples, eye, outlook.framing, sight);
  const { station: stations, count } = path.samples;
  let index = 0;
  for (let i = 1; i < count; i++) {
    if (Math.abs((stations[i] as number) - station) < Math.abs((stations[index] as number) - station))
      index = i;
  }
  return sampleAt(view, path, index, sun, way, eye, outlook);
}
