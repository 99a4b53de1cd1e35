import type { Lens } from './schema/kit';

/** A lens by the name that it was given; one without a name by its figures: "150–600 mm f/5–6.3". */
export function lensName(lens: Omit<Lens, 'key' | 'extenders'>): string {
  const { name, shortest, longest, widestAperture, widestApertureLong } = lens;
  if (name?.trim()) return name.trim();
  const range = shortest === longest ? `${shortest}` : `${shortest}–${longest}`;
  const long = !widestApertureLong || widestApertureLong === widestAperture ? '' : `–${widestApertureLong}`;
  return `${range} mm f/${widestAperture}${long}`;
}
