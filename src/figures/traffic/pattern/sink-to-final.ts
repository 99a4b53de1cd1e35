import type { ArrivalProfile } from '../arrival';

/**
 * m above mean sea level of the wheels, by the m still to fly: level at `top` down to `from`, then evenly down to the
 * glide path where final begins, and down that.
 */
export function sinkToFinal(
  profile: ArrivalProfile,
  top: number,
  { from, final }: { readonly from: number; readonly final: number },
): (toFly: number) => number {
  const foot = Math.min(profile.wheelsAt(final), top);
  return (toFly) =>
    toFly <= final
      ? Math.min(profile.wheelsAt(toFly), top)
      : Math.min(top, foot + ((top - foot) * (toFly - final)) / (from - final));
}
