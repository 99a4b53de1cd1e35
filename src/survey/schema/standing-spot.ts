import * as v from 'valibot';
import type { Position } from '../document';
import { choiceField, notesField, numberField, readFields, textField, type Read } from '../fields';
import { isObject, type JsonObject } from '../json';
import { dateField } from './when';

export const accessStates = ['public', 'permitted', 'ask', 'forbidden', 'unknown'] as const;

/** May one stand there, whom to ask, and when that was last checked (a date, `2026-06-21`). */
const accessFields = {
  status: choiceField(accessStates, 'unknown'),
  contact: notesField(null),
  hours: notesField(null),
  ladder: v.nullish(v.union([v.boolean(), v.string()], 'expected text, true or false'), null),
  parking: notesField(null),
  checkedOn: dateField,
};

/** What was asked and answered (local dates, `from` and `until` included; null: no bound, or not said). */
const permissionFields = {
  askedOn: dateField,
  answer: choiceField(['waiting', 'granted', 'refused'], 'waiting'),
  by: textField(null),
  from: dateField,
  until: dateField,
  reference: textField(null),
};
export type Permission = Read<typeof permissionFields>;

export interface Access extends Read<typeof accessFields> {
  /** Null where nobody has asked. */
  readonly permission: Permission | null;
}

function readAccess(value: unknown, doubt: (reason: string) => void): Access {
  const fields = readFields(accessFields, value ?? undefined, 'access', doubt);
  const given = isObject(value) ? value['permission'] : undefined;
  if (given === undefined || given === null) return { ...fields, permission: null };
  const permission = readFields(permissionFields, given, 'access.permission', doubt);
  const { from, until } = permission;
  if (from !== null && until !== null && until < from)
    doubt(`access.permission.until: ${until} lies before its first day, ${from}; it covers no day`);
  return { ...fields, permission };
}

/** Height of the eyes of a standing adult, m above what one stands on. Common practice, no source. */
export const standingEyeHeight = 1.7;

/** `eyeHeight`: m above the ground (a car-park deck counts). `ground`: m above mean sea level, null when not stated. */
const spotFields = {
  name: textField(''),
  eyeHeight: numberField(0, 500, standingEyeHeight),
  ground: numberField(-500, 9000, null),
  notes: notesField(''),
};

export interface StandingSpot extends Read<typeof spotFields> {
  readonly id: string;
  readonly position: Position;
  readonly access: Access;
}

export function readSpotProperties(properties: JsonObject, doubt: (reason: string) => void) {
  return {
    ...readFields(spotFields, properties, '', doubt),
    access: readAccess(properties['access'], doubt),
  };
}
