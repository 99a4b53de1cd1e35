import type { PreferenceValues } from '../state/preferences.svelte';
import type { Position } from '../survey/document';
import { clockWords, dayWords } from '../time/words';
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
  length(m: number | null): string;
  /** "1.7 m" or "5.6 ft". */
  fine(m: number | null): string;
  speed(metresPerSecond: number): string;
  bearing(degrees: number): string;
  coordinates(position: Position): string;
  /** A wall-clock time, "18:30" or "6:30 pm". */
  clock(clock: string): string;
  /** A date ("2026-06-21") in words, with its weekday. */
  day(date: string): string;
  /** A length or a speed as it stands in a field, in the preferred unit, without it. */
  typedLength(m: number): string;
  typedSpeed(metresPerSecond: number): string;
  readLength(text: string): LengthReading;
  readSpeed(text: string): SpeedReading;
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
    fine: (m) => print.fineLength(m, lengths),
    speed: (ms) => print.speed(ms, speeds),
    bearing: (deg) => print.bearing(deg, bearings),
    coordinates: (position) => formatCoordinates(position, coordinates),
    clock: (text) => clockWords(text, clock),
    day: (date) => dayWords(date, dates === 'system' ? undefined : dates),
    typedLength: (m) => (lengths === 'm' ? typedNumber(m, 2) : typedNumber(metresToFeet(m), 1)),
    typedSpeed: (ms) => typedNumber(ms / metresPerSecondPer[speeds], 1),
    readLength: (text) => parseLength(text, lengths),
    readSpeed: (text) => parseSpeed(text, speeds),
  };
}
