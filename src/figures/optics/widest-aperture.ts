import type { Lens } from '../../survey/schema/kit';

/**
 * The widest aperture (f-number) of a lens at a focal length in mm, an extender counted in. A lens that opens less at
 * its long end ("4.5-5.6") is taken to close evenly in stops from one end to the other (CP).
 */
export function widestApertureAt(
  { shortest, longest, widestAperture, widestApertureLong }: Omit<Lens, 'key' | 'name' | 'extenders'>,
  focalLength: number,
  extender: number | null = null,
): number {
  const times = extender ?? 1;
  if (!widestApertureLong || longest <= shortest) return widestAperture * times;
  const along = Math.log(focalLength / times / shortest) / Math.log(longest / shortest);
  const share = Math.max(0, Math.min(1, along));
  return widestAperture * (widestApertureLong / widestAperture) ** share * times;
}
