import * as v from 'valibot';
import { flagField, textField, type Read } from '../fields';
import { shown } from '../json';
import { clock, dateField } from './when';

/**
 * One arrival or departure that is due. `time`: by the clock of the airfield; without a `date` it is due every day.
 * `type`: type designator as it was given; `subject`: key of the subject that stands for it, null for the one that
 * has the type as its key. `runway`: designator of the end, if it was given. `place`: where from or where to.
 */
const movementFields = {
  id: v.pipe(v.string('expected an id'), v.nonEmpty('expected an id')),
  date: dateField,
  time: clock,
  use: v.picklist(['arrival', 'departure'], 'expected arrival or departure'),
  type: textField(''),
  subject: textField(null),
  flight: textField(''),
  place: textField(''),
  runway: textField(''),
  starred: flagField(false),
};
export type Movement = Read<typeof movementFields>;
const schema = v.object(movementFields, 'expected a movement: {id, time, use}');

/** A busy week of a large airfield; more would stall the page. The rest stays in the file. */
const mostMovements = 2000;

/** An entry makes sense only as a whole: one that does not fit is set aside with its path. */
export function readMovements(value: unknown, aside: (reason: string) => void): readonly Movement[] {
  if (value === undefined || value === null) return [];
  if (!Array.isArray(value)) {
    aside(`sunside.movements: expected a list, got ${shown(value)}`);
    return [];
  }
  const seen = new Set<string>();
  if (value.length > mostMovements)
    aside(`sunside.movements: ${value.length} movements; the first ${mostMovements} are read`);
  return (value as unknown[]).slice(0, mostMovements).flatMap((given, i) => {
    const read = v.safeParse(schema, given);
    if (!read.success) {
      const issue = read.issues[0];
      aside(
        `${['sunside.movements', i, v.getDotPath(issue) ?? ''].filter((part) => part !== '').join('.')}: ${issue.message}, got ${shown(issue.input)}`,
      );
      return [];
    }
    if (seen.has(read.output.id)) {
      aside(`sunside.movements.${i}.id: "${read.output.id}" is there already; the first one is used`);
      return [];
    }
    seen.add(read.output.id);
    return [read.output];
  });
}

/** Two movements that mean the same one: same day and minute, use, type and flight. */
export const movementKey = ({ date: day, time, use, type, flight }: Omit<Movement, 'id'>): string =>
  [day ?? '', time, use, type.toUpperCase(), flight.toUpperCase().replace(/\s/g, '')].join('|');
