import { parseDegrees } from '../../units/angle';
import { decimal } from '../../units/format';
import { parseNumber, typedNumber } from '../../units/number';
import type { Formats } from '../formats';

/** What a field says of the numbers it takes. Both bounds are included. */
export interface Bounds {
  readonly least: number;
  readonly most: number;
}

/** What a field calls with the typed text: the reason why it is refused, or null. */
type Take = (text: string) => string | null;

const within = (value: number, { least, most }: Bounds, unit: string): string | null =>
  value >= least && value <= most
    ? null
    : `${typedNumber(value, 2)} ${unit} is out of range. Type a number from ${decimal(least, 0)} to ${decimal(most, 0)} ${unit}.`;

/**
 * Takes a length in the preferred unit, or with its own behind it; sets metres, within `bounds` in metres. An empty
 * field sets undefined: the value is not known, or its default goes.
 */
export function takeLength(
  format: () => Formats,
  { least, most }: Bounds,
  set: (metres: number | undefined) => void,
): Take {
  return (text) => {
    if (text.trim() === '') return done(set);
    const { readLength, typedLength, length, lengthUnit } = format();
    const reading = readLength(text);
    if (!reading.ok) return reading.reason;
    const { metres } = reading;
    if (metres < least || metres > most)
      return `${typedLength(metres)} ${lengthUnit} is out of range. Type a number from ${length(least)} to ${length(most)}.`;
    // To the millimetre: 50 ft is 15.24 m, not 15.240000000000002 m.
    return done(set, Number(metres.toFixed(3)));
  };
}

/** Takes degrees; an empty field sets undefined. */
export function takeDegrees(bounds: Bounds, set: (degrees: number | undefined) => void): Take {
  return (text) => {
    if (text.trim() === '') return done(set);
    const degrees = parseDegrees(text);
    if (degrees === null) return `"${text.trim()}" is no angle. Type degrees, such as 3 or 3.5.`;
    return within(degrees, bounds, 'degrees') ?? done(set, degrees);
  };
}

/** Takes a frequency in MHz. */
export function takeMegahertz(bounds: Bounds, set: (mhz: number) => void): Take {
  return (text) => {
    const mhz = parseNumber(text.replace(/\s*mhz$/i, ''));
    if (mhz === null) return `"${text.trim()}" is no frequency. Type megahertz, such as 118.5.`;
    const outside = within(mhz, bounds, 'MHz');
    if (outside === null) set(mhz);
    return outside;
  };
}

/** Takes any text, without the spaces around it; an empty field sets undefined. */
export const takeText =
  (set: (text: string | undefined) => void): Take =>
  (text) =>
    done(set, text.trim() || undefined);

function done<T>(set: (value: T | undefined) => void, value?: T): null {
  set(value);
  return null;
}
