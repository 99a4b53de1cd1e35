import type { Contents } from '../../survey/contents';
import { parseInstant } from '../../time/local-time';
import { groundLine } from '../geometry/earth';
import type { PhotoFrame } from './frame-time';
import { spotWithin } from './practice';

export interface FoundSpot {
  /** Id of the spot; null is asked. */
  readonly spot: string | null;
  /** Path of the plan's window in which it was taken, as the figures print it. */
  readonly plannedPath: string | null;
  readonly doubts: readonly string[];
}

/** Where frames of one pass were taken: the camera's receiver says, else the plan, else it is asked. */
export function findSpot(
  frames: readonly PhotoFrame[],
  { spots, plan }: Pick<Contents, 'spots' | 'plan'>,
): FoundSpot {
  const here = frames.flatMap(({ instant }) => (instant === null ? [] : [instant]));
  const planned = plan.chosen.filter(({ from, to }) => {
    const [start, end] = [parseInstant(from) ?? Infinity, parseInstant(to) ?? -Infinity];
    return here.some((instant) => start <= instant && instant <= end);
  });
  const pathAt = (spot: string) => {
    const paths = new Set(planned.filter((w) => w.spot === spot).map(({ path }) => path));
    return paths.size === 1 ? ([...paths][0] ?? null) : null;
  };
  const position = frames.find(({ record }) => record.position !== null)?.record.position;
  if (position) {
    const [near] = spots
      .map((spot) => ({ spot, away: groundLine(position, spot.position).distance }))
      .toSorted((a, b) => a.away - b.away);
    if (near && near.away <= spotWithin)
      return { spot: near.spot.id, plannedPath: pathAt(near.spot.id), doubts: [] };
    const where = near
      ? `${Math.round(near.away)} m from the nearest spot`
      : 'and the survey has no standing spot';
    return { spot: null, plannedPath: null, doubts: [`Taken ${where}: from which one?`] };
  }
  const ids = new Set(planned.map(({ spot }) => spot));
  const [only] = [...ids].filter((id) => spots.some((s) => s.id === id));
  if (ids.size === 1 && only !== undefined) return { spot: only, plannedPath: pathAt(only), doubts: [] };
  return {
    spot: null,
    plannedPath: null,
    doubts: [
      ids.size > 1 ? 'The plan has several spots at that time: which one was it?' : 'From which spot?',
    ],
  };
}
