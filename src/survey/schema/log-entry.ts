import * as v from 'valibot';
import type { Position } from '../document';
import { isObject, type JsonObject } from '../json';
import { notesField, numberField, readFields, textField, type Read } from '../fields';
import { instantField } from './when';

/**
 * One pass that was photographed. `time`: its first frame; `frames`: how many were taken; `spot`: id of the standing spot;
 * `path` as the figures print it; `subject`: its key; `kept`: the highest rating, 0 to 5, null where nothing is rated.
 */
const entryFields = {
  time: instantField,
  frames: numberField(1, 100_000, 1),
  spot: textField(null),
  path: textField(null),
  subject: textField(null),
  camera: textField(null),
  name: textField(''),
  kept: numberField(0, 5, null),
  note: notesField(''),
};

/** What it was taken with: mm, f-number, s, ISO speed. */
const settingsFields = {
  focalLength: numberField(0.1, 10_000, null),
  fNumber: numberField(0.1, 1000, null),
  exposure: numberField(0, 86_400, null),
  iso: numberField(1, 100_000_000, null),
};

/** What the figures said of it when it was kept: mm, the class of light, degrees, m. */
const predictedFields = {
  focalLength: numberField(0, 1_000_000, null),
  light: textField(null),
  lightAngle: numberField(0, 180, null),
  slantRange: numberField(0, 1_000_000, null),
};

/**
 * What two marks on one of its frames say: m; `part` that was marked, `way` it was seen; station and heights as the path
 * counts them, `pathRange` and `pathHeight` what the path said of the station.
 */
const measuredFields = {
  part: textField(null),
  way: textField(null),
  station: numberField(-1_000_000, 1_000_000, null),
  slantRange: numberField(0, 1_000_000, null),
  slantRangeError: numberField(0, 1_000_000, null),
  height: numberField(-10_000, 100_000, null),
  heightError: numberField(0, 1_000_000, null),
  pathRange: numberField(0, 1_000_000, null),
  pathHeight: numberField(-10_000, 100_000, null),
};

export interface LogEntry extends Read<typeof entryFields> {
  readonly id: string;
  readonly position: Position;
  readonly settings: Read<typeof settingsFields>;
  readonly predicted: Read<typeof predictedFields>;
  /** Null where nothing was measured. */
  readonly measured: Read<typeof measuredFields> | null;
}

export function readLogEntryProperties(p: JsonObject, doubt: (reason: string) => void) {
  const within = <E extends v.ObjectEntries>(fields: E, member: string) => {
    const given = p[member];
    if (given !== undefined && given !== null && !isObject(given)) doubt(`${member}: expected an object`);
    return readFields(fields, isObject(given) ? given : {}, member, doubt);
  };
  return {
    ...readFields(entryFields, p, '', doubt),
    settings: within(settingsFields, 'settings'),
    predicted: within(predictedFields, 'predicted'),
    measured: (p['measured'] ?? null) === null ? null : within(measuredFields, 'measured'),
  };
}
