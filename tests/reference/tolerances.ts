import type { Tolerance } from '../support/tolerance';

const tolerance = (limit: number, unit: string, why: string): Tolerance => ({ limit, unit, why });

/** How far each figure may be from what is published, and why not less. Azimuths count by the cosine of the altitude. */
export const tolerances = {
  sunAltitude: tolerance(0.01, 'deg', 'the low-accuracy sun of Meeus ch. 25 is good to 0.01; no parallax'),
  sunAzimuth: tolerance(0.01, 'deg', 'the same'),
  spaAltitude: tolerance(0.01, 'deg', 'the low-accuracy sun, and standard air instead of 820 mbar (0.004)'),
  refraction: tolerance(0.0005, 'deg', 'printed to four decimals; standard air'),
  highAirRefraction: tolerance(0.005, 'deg', 'standard air instead of 820 mbar'),
  almanacMinutes: tolerance(1, 'min', 'almanacs print whole minutes'),
  transitMinutes: tolerance(1, 'min', 'almanacs print whole minutes'),
  timeSeconds: tolerance(
    5,
    's',
    'what the source is compared by; the upper limb is taken at -0.833, not -0.8333',
  ),
  sunFromAxis: tolerance(0.01, 'deg', 'printed to three decimals'),
  shortDistance: tolerance(0.01, 'm', 'chord and mean radius instead of the geodesic'),
  shortAzimuth: tolerance(0.0001, 'deg', 'normal section instead of the geodesic'),
  longDistance: tolerance(0.5, 'm', '55 km is beyond the 15 km that the site frame is made for'),
  longAzimuth: tolerance(0.001, 'deg', 'the same'),
  geodTestDistance: tolerance(0.0001, 'm', 'the second opinion against its own test set'),
  geodTestAzimuth: tolerance(1e-9, 'deg', 'the same'),
  runwayLength: tolerance(0.01, 'm', 'printed to the millimetre'),
  runwayBearing: tolerance(0.0001, 'deg', 'printed to five decimals'),
  station: tolerance(0.05, 'm', 'the plane of the site frame instead of a geodesic foot'),
  centrelineDistance: tolerance(0.05, 'm', 'the same'),
  groundRange: tolerance(0.05, 'm', 'an arc over the mean radius at the eye'),
  slantRange: tolerance(0.005, 'm', 'printed to the millimetre, positions to 0.00000005 degrees'),
  elevation: tolerance(0.002, 'deg', 'what the source is compared by'),
  bearing: tolerance(0.002, 'deg', 'printed to five decimals'),
  publishedDeclination: tolerance(0.0055, 'deg', 'half the last printed digit, and one model a day'),
  declination: tolerance(0.01, 'deg', 'one model a day'),
  magneticBearing: tolerance(0.01, 'deg', 'printed to two decimals'),
  descentPublished: tolerance(5, 'ft/min', 'the source rounds to 5, once wrongly (395 at 75 kt, exact 398)'),
  descentExact: tolerance(0.06, 'ft/min', 'printed to one decimal'),
  heightFeet: tolerance(0.6, 'ft', 'printed to the foot'),
  heightMetres: tolerance(0.06, 'm', 'printed to one decimal'),
  fieldOfView: tolerance(0.001, 'deg', 'printed to three decimals'),
  pinholeFocal: tolerance(0.006, 'mm', 'printed to two decimals'),
  thinLensShare: tolerance(
    0.005,
    'of f',
    'the design has a pinhole, not a thin lens: 1/(1 + magnification) longer',
  ),
  equivalentFactor: tolerance(0.0006, 'x', 'printed to three decimals, from 43.267 instead of 43.2666'),
} as const satisfies Record<string, Tolerance>;
