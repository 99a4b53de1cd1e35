import { wrap360 } from '../../geometry/angles';

/** A wind near the ground. */
export interface Wind {
  /** Degrees from true north of where it comes from, 360 for north; null when calm or variable. */
  readonly from: number | null;
  /** Mean speed. */
  readonly speedKt: number;
  /** Null without gusts. */
  readonly gustKt: number | null;
  /** Where the direction varies, degrees clockwise from the first to the second ("290V360"); null when not said. */
  readonly varies: readonly [number, number] | null;
}

export type Reading<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };

export type WindUnit = 'KT' | 'MPS' | 'KMH';

/** kt in one of each unit; 1 kt is 1852 m an hour exactly. */
export const knotsPer: Readonly<Record<WindUnit, number>> = { KT: 1, MPS: 3600 / 1852, KMH: 1000 / 1852 };

/** The speed that counts against limits: the gusts', where there are any. */
export const strongest = ({ speedKt, gustKt }: Wind): number => Math.max(speedKt, gustKt ?? 0);

/** A direction in degrees as reports write it: north is 360, never 0. */
export const reportedDirection = (degrees: number): number => wrap360(degrees) || 360;

/** A wind whose directions were told from magnetic north (tower, ATIS); `declination`: degrees, east positive. */
export function fromMagnetic(wind: Wind, declination: number): Wind {
  const turned = (degrees: number) => reportedDirection(degrees + declination);
  return {
    ...wind,
    from: wind.from === null ? null : turned(wind.from),
    varies: wind.varies && [turned(wind.varies[0]), turned(wind.varies[1])],
  };
}
