import { indexAtStation } from './index-at-station';
import type { Path } from './paths';

/** Several that fly together. `spacing`: m from centre to centre of neighbours, null where nobody has said. */
export interface Formation {
  readonly aircraft: number;
  readonly spacing: number | null;
}

/** Where one of a formation flies: m ahead of, to the left of and above the leader, in the leader's axes. */
export type FormationPlace = readonly [ahead: number, left: number, up: number];

/**
 * The places of a formation, the leader first: an arrowhead, its sides slanted by 45 degrees, alternately right and left;
 * a pair is an echelon to the right. Common practice, no source.
 * Null where the spacing is not known.
 */
export function formationPlaces({ aircraft, spacing }: Formation): readonly FormationPlace[] | null {
  if (spacing === null) return aircraft <= 1 ? [[0, 0, 0]] : null;
  const step = spacing * Math.SQRT1_2;
  return Array.from({ length: Math.max(1, Math.round(aircraft)) }, (_, i): FormationPlace => {
    const row = Math.ceil(i / 2);
    return [i === 0 ? 0 : -row * step, i === 0 ? 0 : (i % 2 === 1 ? -1 : 1) * row * step, 0];
  });
}

/** What flies together at the sample nearest to a station; null for one alone. A stream is one up to its break, and no longer. */
export function formationAt({ formation, ref, samples }: Path, station: number): Formation | null {
  if (!formation || formation.aircraft < 2) return null;
  if (ref.kind !== 'pattern') return formation;
  return samples.bank.subarray(0, indexAtStation(samples, station) + 1).every((bank) => bank === 0)
    ? formation
    : null;
}
