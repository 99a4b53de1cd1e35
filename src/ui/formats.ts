import type { PreferenceValues } from '../state/preferences.svelte';
import type { Position } from '../survey/document';
import { clockAt } from '../time/local-time';
import { clockWords, dateWords } from '../time/words';
import { formatCoordinates } from '../units/coordinates';
import * as print from '../units/format';
import { metresToFeet, type LengthUnit } from '../units/length';
import { typedNumber } from '../units/number';
import { metresPerSecondPer, type SpeedUnit } from '../units/speed';
import { parseLength, type LengthReading } from '../units/typed-length';
import { parseSpeed, type SpeedReading } from '../units/typed-speed';

/** Figures printed and read back the way the user prefers. Everything that goes in is in metres, m/s and degrees. */
export interface Formats {
  readonly lengthUnit: LengthUnit;
  readonly speedUnit: SpeedUnit;
  /** "1,240 m" or "4,068 ft"; null is an en dash. */
  readonly length: (m: number | null) => string;
  /** A height, in feet as well, which the trade counts in: "312 m (1,024 ft)". */
  readonly height: (m: number) => string;
  /** "1.7 m" or "5.6 ft". */
  readonly fine: (m: number | null) => string;
  readonly speed: (metresPerSecond: number) => string;
  readonly bearing: (degrees: number) => string;
  readonly coordinates: (position: Position) => string;
  /** The same to the metre, for paper, letters and lists. */
  readonly whereabouts: (position: Position) => string;
  /** A wall-clock time, "18:30" or "6:30 pm". */
  readonly clock: (clock: string) => string;
  /** A full hour in little room, "18" or "6pm". */
  readonly hour: (clock: string) => string;
  /** The wall-clock time in a zone at an instant (ms since 1970). */
  readonly clockAt: (instant: number, zone: string) => string;
  /** A date ("2026-06-21") in words, with its weekday. */
  readonly day: (date: string) => string;
  /** The same in short, "21 Jun 2026". */
  readonly date: (date: string) => string;
  /** The month of a date in short, "Jun". */
  readonly month: (date: string) => string;
  /** A length or a speed as it stands in a field, in the preferred unit, without it. */
  readonly typedLength: (m: number) => string;
  readonly typedSpeed: (metresPerSecond: number) => string;
  readonly readLength: (text: string) => LengthReading;
  readonly readSpeed: (text: string) => SpeedReading;
}

export function formatsFor({
  lengths,
  speeds,
  bearings,
  coordinates,
  clock,
  dates,
}: PreferenceValues): Formats {
  return {
    lengthUnit: lengths,
    speedUnit: speeds,
    length: (m) => print.length(m, lengths),
    height: (m) =>
      lengths === 'm' ? `${print.length(m, 'm')} (${print.length(m, 'ft')})` : print.length(m, 'ft'),
    fine: (m) => print.fineLength(m, lengths),
    speed: (ms) => print.speed(ms, speeds),
    bearing: (deg) => print.bearing(deg, bearings),
    coordinates: (position) => formatCoordinates(position, coordinates),
    whereabouts: (position) => formatCoordinates(position, coordinates, 'feet'),
    clock: (text) => clockWords(text, clock),
    hour: (text) => (clock === '24h' ? text.slice(0, 2) : clockWords(text, clock).replace(/:00 /, '')),
    clockAt: (instant, zone) => clockWords(clockAt(instant, zone), clock),
    day: (date) => dateWords(date, dates, 'day'),
    date: (date) => dateWords(date, dates, 'date'),
    month: (date) => dateWords(date, dates, 'month'),
    typedLength: (m) => (lengths === 'm' ? typedNumber(m, 2) : typedNumber(metresToFeet(m), 1)),
    typedSpeed: (ms) => typedNumber(ms / metresPerSecondPer[speeds], 1),
    readLength: (text) => parseLength(text, lengths),
    readSpeed: (text) => parseSpeed(text, speeds),
  };
}
