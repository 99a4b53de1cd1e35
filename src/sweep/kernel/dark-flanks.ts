import { along, dot, type Vec3 } from '../../figures/geometry/earth';
import { litFrom } from '../../figures/practice';
import type { PathSamples } from '../../figures/traffic/samples';
import { leftAt } from './piece-shapes';
import { leftSeen, pieceSize, rightSeen } from './pieces';
import type { SunOver } from './sun-over';

/** Refraction lifts the sun by no more than this, in radians, and no two places of a neighbourhood see it lifted alike. */
const lifted = 0.012;

/**
 * Of a path, piece by piece, side by side (`Side`) and instant by instant: 1 where the sun certainly leaves that flank dark at
 * every sample, from wherever one looks. Half of all that is looked at is, and such a flank halves the light. The suns as they
 * stand at the moment; pieces x 3 sides x instants.
 */
export function darkFlanks({ count, forward, up }: PathSamples, { suns, frame }: SunOver): Uint8Array {
  const pieces = Math.ceil(count / pieceSize);
  const dark = new Uint8Array(pieces * sides * suns.length);
  const zero: Vec3 = [0, 0, 0];
  const towards = suns.map(({ east, north, up: high }) =>
    along(along(along(zero, frame.east, east), frame.north, north), frame.up, high),
  );
  for (let b = 0; b < pieces; b++) {
    const to = Math.min(count, (b + 1) * pieceSize);
    const lefts = Array.from({ length: to - b * pieceSize }, (_, k) =>
      leftAt(forward, up, b * pieceSize + k),
    );
    towards.forEach((sun, t) => {
      const lit = lefts.map((left) => dot(left, sun));
      if (Math.max(...lit) + lifted <= litFrom) dark[rowOf(b, leftSeen, suns.length) + t] = 1;
      if (-Math.min(...lit) + lifted <= litFrom) dark[rowOf(b, rightSeen, suns.length) + t] = 1;
    });
  }
  return dark;
}

const sides = 3;

/** Where the instants of a piece seen from a side begin. */
export const rowOf = (piece: number, side: number, instants: number): number =>
  (piece * sides + side) * instants;
