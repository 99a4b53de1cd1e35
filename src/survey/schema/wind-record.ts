import * as v from 'valibot';
import { numberField, readFields, textField, type Read } from '../fields';
import { isObject } from '../json';
import { dateField } from './when';

/** kt of the gusts, or of the mean wind without any, from which each class of a wind record begins. */
export const speedClasses = [5, 8, 11, 14, 17, 20, 25, 30] as const;
/** Directions of ten degrees, and one entry for variable. */
export const directions = 37;
export const variableDirection = 36;
/** Months times hours of the clock. */
export const monthHours = 288;

/** A cell of the record: 0 is calm (mean wind below 5 kt), then class by class 36 directions and variable. */
export const cellOf = (speedClass: number, direction: number): number =>
  1 + speedClass * directions + direction;
export const cells = 1 + speedClasses.length * directions;

const count = numberField(0, 1e9, 0);
const recordFields = {
  source: textField(''),
  /** Dates of the first and the last observation, "2021-01-01". */
  from: dateField,
  to: dateField,
  /** The zone whose clock the hours are of. */
  timeZone: textField('UTC'),
  observations: count,
  unread: count,
};
const classWind = v.object({ meanKt: v.number(), strongestKt: v.number() });

/** Counts of past winds by month and hour of the clock, direction and speed: what a history of winds comes down to. */
export interface WindRecord extends Read<typeof recordFields> {
  /** Mean speeds of each class: all that is left of the single speeds. */
  readonly classes: readonly { readonly meanKt: number; readonly strongestKt: number }[];
  /** One list for each month * 24 + hour: cell, count, cell, count ... */
  readonly counts: readonly (readonly number[])[];
}

const lists = v.pipe(
  v.array(v.pipe(v.array(v.pipe(v.number(), v.integer(), v.minValue(0))), v.maxLength(2 * cells))),
  v.length(monthHours),
  v.check(
    (all) => all.every((list) => list.length % 2 === 0 && list.every((n, i) => i % 2 === 1 || n < cells)),
    'expected cells and counts in turn',
  ),
);
const classList = v.pipe(v.array(classWind), v.length(speedClasses.length));

/** Null where the survey has no record, or one that cannot be made out: then that is a doubt. */
export function readWindRecord(value: unknown, doubt: (reason: string) => void): WindRecord | null {
  if (value === undefined || value === null) return null;
  const given = isObject(value) ? value : {};
  const counts = v.safeParse(lists, given['counts']);
  const classes = v.safeParse(classList, given['classes']);
  if (!counts.success || !classes.success) {
    doubt('sunside.windRecord: the counts cannot be made out; bring the record in again');
    return null;
  }
  const fields = readFields(recordFields, value, 'sunside.windRecord', doubt);
  return { ...fields, classes: classes.output, counts: counts.output };
}
