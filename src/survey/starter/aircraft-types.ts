import type { Subject } from '../schema/subject';
import { starterSubjects } from './subjects';
import { airliners } from './types/airliners';
import { jetsAndRotors } from './types/jets-and-rotors';
import { propellers } from './types/propellers';
import type { TypeRow } from './types/type-row';

/** A type of aircraft that the program knows by name, whether or not a survey has it among its subjects. */
export interface AircraftType {
  /** ICAO type designator. */
  readonly designator: string;
  /** Maker and model, then family and everyday names. */
  readonly names: readonly string[];
  /** Key of the generic class beside it. */
  readonly classKey: string;
  /** Whether its sizes are from a published list, not from memory. */
  readonly published: boolean;
  /** Its own sizes; performance is that of its class, unless the starter has a word of its own. */
  readonly subject: Subject;
}

const byKey = new Map(starterSubjects.map((subject) => [subject.key, subject]));

function typeOf([designator, classKey, length, span, height, source, names]: TypeRow): AircraftType {
  const own = byKey.get(designator);
  const stand = own ?? byKey.get(classKey);
  if (!stand) throw new Error(`expected the class "${classKey}" of ${designator} among the starter subjects`);
  const [name = designator, ...more] = names.split(', ');
  // How many engines it has, and where its wing sits, no class can tell.
  const unsaid = { wing: null, engines: null, tailSpan: null };
  const named = { key: designator, name: `${designator} — ${name}` };
  const subject = own ?? { ...stand, ...unsaid, ...named, length, span, height };
  return { designator, names: [name, ...more], classKey, published: source !== 'm', subject };
}

export const aircraftTypes: readonly AircraftType[] = [...airliners, ...propellers, ...jetsAndRotors].map(
  typeOf,
);
