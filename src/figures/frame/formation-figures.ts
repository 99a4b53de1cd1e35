import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { framingOf, type Hold } from '../optics/framing';
import type { Outlook } from '../outlook';
import type { Scratch } from '../scratch';
import { inspectPath } from '../spot/inspect-path';
import { formationAt, formationPlaces, type Formation } from '../traffic/formation';
import type { Path } from '../traffic/paths';

export interface FormationFigures extends Formation {
  /** mm that frame all of them, and one; null inside an aircraft, and for all where their spacing is not known. */
  readonly all: number | null;
  readonly one: number | null;
}

/** The focal lengths of what flies together at the sample nearest to a station; null for one alone. */
export function formationFigures(
  spot: StandingSpot,
  path: Path,
  station: number,
  { subject, body, kit }: Pick<Contents, 'subject' | 'body' | 'kit'>,
  outlook: Outlook,
  instant: number,
  portrait: boolean,
  scratch: Scratch,
): FormationFigures | null {
  const formation = formationAt(path, station);
  if (!formation) return null;
  const places = formationPlaces(formation);
  const needed = (part: Hold['part']) => {
    const framing = framingOf(subject, body, kit.fill, { portrait, part }, places);
    return inspectPath(spot, path, station, { ...outlook, framing }, instant, scratch).focalLength;
  };
  return { ...formation, all: places && needed('formation'), one: needed('whole') };
}
