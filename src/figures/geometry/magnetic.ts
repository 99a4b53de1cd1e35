import geomagnetism from 'geomagnetism';
import type { Position } from '../../survey/document';

/** Years for which the World Magnetic Models that the library carries (2015, 2020, 2025) were made. */
const modelFrom = Date.UTC(2014, 11, 15);
const modelTo = Date.UTC(2030, 0, 1);

const dayMs = 86_400_000;
let current: { day: number; model: ReturnType<typeof geomagnetism.model> } | null = null;

/** The field changes by some hundredths of a degree a month, so one model a day serves. */
function modelAt(instant: number) {
  const day = Math.floor(instant / dayMs);
  if (current?.day !== day) {
    // The library stops answering some weeks before the model's last day, hence the option.
    current = { day, model: geomagnetism.model(new Date(day * dayMs), { allowOutOfBoundsModel: true }) };
  }
  return current.model;
}

/** Whether an instant lies in years that a World Magnetic Model was made for. */
export const hasMagneticModel = (instant: number) => instant >= modelFrom && instant < modelTo;

/**
 * Magnetic declination in degrees, east positive, by the World Magnetic Model (NOAA/NCEI and BGS).
 * `elevation`: m above mean sea level. The model is good to about half a degree; near the magnetic poles it is not.
 */
export function declination([lng, lat]: Position, elevation: number, instant: number): number {
  return modelAt(instant).point([lat, lng, elevation / 1000]).decl;
}
