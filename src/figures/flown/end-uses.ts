import type { Contents } from '../../survey/contents';
import { Memo } from '../../survey/memo';
import type { EndIndex } from '../../survey/schema/runway';
import { grounded } from '../sight/grounded';
import type { ElevationGrid } from '../sight/terrain';
import { fieldElevation } from '../traffic/paths';
import { endGeometry } from '../traffic/runway-geometry';
import { isRecorded } from './packed-flights';
import type { RecordedFlight } from './track';
import { wayOf, type FlownKind, type Way } from './way-of';

/** Which end a recorded flight used, and when: ms since 1970 of its landing, else of its take-off; null without times. */
export interface EndUse {
  readonly runway: string;
  readonly end: EndIndex;
  readonly kind: FlownKind;
  readonly instant: number | null;
}

type Field = Pick<Contents, 'site' | 'runways'>;

/** Keyed by flight, runways and elevation: an edit of something else makes a new list of the same flights. Of past surveys nothing stays. */
const kept = new Memo<readonly EndUse[]>();

/**
 * Which ends a survey's recorded flights used: what of learning shares need. `terrain`: what ends without a stated height lie
 * on. For workers: hundreds of flights take some tenths of a second.
 */
export function endUses(
  contents: Field & Pick<Contents, 'flightPaths'>,
  terrain: ElevationGrid | null,
): readonly EndUse[] {
  const field = grounded(contents, terrain);
  const { runways, flightPaths } = field;
  const elevation = fieldElevation(field);
  const ends = endPairs(field);
  const uses = flightPaths.filter(isRecorded).flatMap((flight) =>
    kept.get([flight, runways, elevation], () => {
      const way = wayOf(flight, ends);
      return way ? [useOf(flight, way)] : [];
    }),
  );
  kept.keepOnly(flightPaths);
  return uses;
}

export function useOf({ times }: RecordedFlight, { kind, geometry: { runway, end } }: Way): EndUse {
  const instant = times?.[kind === 'departure' ? 0 : times.length - 1] ?? null;
  return { runway: runway.id, end, kind, instant };
}

/** Both ends of each runway that has a direction. */
export function endPairs(field: Field) {
  const elevation = fieldElevation(field);
  return field.runways.flatMap((runway) => {
    const [a, b] = [endGeometry(runway, 0, elevation), endGeometry(runway, 1, elevation)];
    return a && b ? [[a, b] as const] : [];
  });
}
