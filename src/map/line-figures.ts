import { runwayFigures } from '../figures/runway-figures';
import { fieldElevation } from '../figures/traffic/paths';
import type { Contents } from '../survey/contents';
import type { Position } from '../survey/document';
import { readRunwayProperties, type Runway } from '../survey/schema/runway';

export interface LineFigures {
  /** m, WGS84 geodesic. */
  readonly length: number;
  /** Degrees from true and from magnetic north at the first position. */
  readonly trueBearing: number;
  readonly magneticBearing: number;
  /** What the two ends of a runway along this line would be called, the first landing from `from` towards `to`. */
  readonly designators: readonly [string, string];
}

const noDoubts = () => undefined;

/** What follows from two positions before they are a feature; null when they are less than 1 m apart. `instant`: ms since 1970, UTC. */
export function lineFigures(
  from: Position,
  to: Position,
  field: Pick<Contents, 'site' | 'runways'>,
  instant: number,
): LineFigures | null {
  const runway: Runway = { id: '', line: [from, to], ...readRunwayProperties({}, noDoubts) };
  const figures = runwayFigures(runway, fieldElevation(field), instant);
  if (!figures) return null;
  const [first, second] = figures.ends;
  return {
    length: figures.length,
    trueBearing: figures.trueBearing,
    magneticBearing: first.magneticBearing,
    designators: [first.suggestedDesignator, second.suggestedDesignator],
  };
}
