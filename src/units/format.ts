import { wrap360 } from './angle';
import { metresToFeet, type LengthUnit } from './length';
import { metresPerSecondPer, type SpeedUnit } from './speed';

/**
 * Figures as they are printed. Every number on screen and on paper goes through here, so that the same value
 * reads the same everywhere. A missing value (null) prints as an en dash.
 */
const none = '–';

/** Thousands with a comma, minus as a true minus sign; no "-0". */
export function decimal(value: number, digits: number): string {
  const plain = Math.abs(value).toFixed(digits);
  // Written hundreds of times while something is dragged: most numbers are short.
  const whole = digits > 0 ? plain.length - digits - 1 : plain.length;
  const text = whole > 3 ? grouped(plain, whole) + plain.slice(whole) : plain;
  return value < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}

/** The first `whole` digits with a comma between thousands. */
function grouped(digits: string, whole: number): string {
  let end = whole % 3 || 3;
  let text = digits.slice(0, end);
  for (; end < whole; end += 3) text += `,${digits.slice(end, end + 3)}`;
  return text;
}

const with2Figures = (value: number): number => {
  const unit = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 1);
  return value === 0 ? 0 : Math.round(value / unit) * unit;
};

const twoFigures = (mm: number): string => decimal(with2Figures(mm), mm !== 0 && mm < 9.95 ? 1 : 0);

/** m to the metre or the foot: "1,240 m", "4,068 ft". */
export const length = (m: number | null, unit: LengthUnit): string =>
  m === null ? none : `${decimal(unit === 'm' ? m : metresToFeet(m), 0)} ${unit}`;

/** m to a tenth of the unit, for eye heights and aircraft: "1.7 m", "5.6 ft". */
export const fineLength = (m: number | null, unit: LengthUnit): string =>
  m === null ? none : `${decimal(unit === 'm' ? m : metresToFeet(m), 1)} ${unit}`;

/** m to the metre, whatever the user prefers: "1,240 m". */
export const metres = (m: number | null): string => (m === null ? none : `${decimal(m, 0)} m`);

/** m to the decimetre, for eye heights and aircraft: "1.7 m". */
export const finely = (m: number | null): string => (m === null ? none : `${decimal(m, 1)} m`);

/** mm of focal length to two significant figures: "260 mm". */
export const focal = (mm: number | null): string => (mm === null ? none : `${twoFigures(mm)} mm`);

/** mm of focal length to a tenth, on demand: "257.4 mm". */
export const focalExact = (mm: number | null): string => (mm === null ? none : `${decimal(mm, 1)} mm`);

/** Two focal lengths in mm as a range, "180–390 mm", or one where they read the same. */
export function focalRange(shortest: number, longest: number): string {
  const [a, b] = [twoFigures(shortest), twoFigures(longest)];
  return a === b ? `${a} mm` : `${a}–${b} mm`;
}

/** How bearings are written: "089°" or "89°". */
export type BearingStyle = 'three-digits' | 'plain';

/** A bearing in degrees, "089°" or "89°"; 360 reads as 000. */
export function bearing(deg: number, style: BearingStyle = 'three-digits'): string {
  const whole = wrap360(Math.round(deg));
  return `${String(whole).padStart(style === 'plain' ? 1 : 3, '0')}°`;
}

/** An angle in whole degrees: "24°", "−3°". */
export const degrees = (deg: number): string => `${decimal(deg, 0)}°`;

/** A share from 0 to 1 in whole per cent: "62 %". What is more than nothing is never printed as 0 %. */
export function share(part: number | null): string {
  if (part === null) return none;
  return part > 0 && part < 0.005 ? 'under 1 %' : `${decimal(part * 100, 0)} %`;
}

/** A factor from 0 to 1 with two decimals: "0.83". */
export const factor = (value: number): string => decimal(value, 2);

/** ft to the foot, given in feet: "1,000 ft". */
export const feet = (ft: number): string => `${decimal(ft, 0)} ft`;

/** Pixels: "2,980 px". */
export const pixels = (count: number): string => `${decimal(count, 0)} px`;

/** m/s to the whole of a unit: "70 m/s", "136 kt". */
export const speed = (metresPerSecond: number, unit: SpeedUnit = 'm/s'): string =>
  `${decimal(metresPerSecond / metresPerSecondPer[unit], 0)} ${unit}`;
