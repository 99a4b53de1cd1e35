import * as v from 'valibot';
import type { Position } from '../document';
import { choiceField, flagField, numberField, readFields, textField, type Read } from '../fields';
import type { JsonObject } from '../json';
import { flownField, type FlownBand } from './flown-band';
import { readPatterns, type Pattern } from './flying';

/**
 * One end of a runway. `elevation`: m above mean sea level of the pavement end, null when not known.
 * `displaced`: m from the pavement end to the landing threshold. `glide`: degrees.
 * `crossingHeight`: m of the wheels above the landing threshold. `circuit`: the side of the turns.
 */
const endFields = {
  designator: textField(''),
  elevation: numberField(-500, 9000, null),
  displaced: numberField(0, 5000, 0),
  glide: numberField(1, 12, 3),
  crossingHeight: numberField(0, 60, 15.24),
  circuit: choiceField(['left', 'right'], 'left'),
  closed: flagField(false),
  flown: flownField,
};
export interface RunwayEnd extends Omit<Read<typeof endFields>, 'flown'> {
  /** What recorded flights have taught, where the user has taken it over. */
  readonly flown?: readonly FlownBand[] | null;
}

const runwayFields = {
  name: textField(''),
  width: numberField(1, 500, 30),
  surface: textField(''),
  /** What the data that a runway came from leave in doubt, in plain words, until the user has checked it. */
  doubts: v.nullish(
    v.pipe(
      v.array(v.string('expected a sentence'), 'expected a list of sentences'),
      v.maxLength(100, 'expected up to 100 sentences'),
    ),
    [],
  ),
};

/** `line[0]` is the pavement end at which `ends[0]` lands, towards `line[1]`. */
export interface Runway extends Read<typeof runwayFields> {
  readonly id: string;
  readonly line: readonly [Position, Position];
  readonly ends: readonly [RunwayEnd, RunwayEnd];
  /** What else is flown at its ends. */
  readonly patterns: readonly Pattern[];
}

export function readRunwayProperties(properties: JsonObject, doubt: (reason: string) => void) {
  const given = properties['ends'];
  if (given !== undefined && !Array.isArray(given))
    doubt('ends: expected a list of two ends; defaults are used instead');
  const list: readonly unknown[] = Array.isArray(given) ? (given as readonly unknown[]) : [];
  if (list.length > 2) doubt(`ends: expected two ends, got ${list.length}; the first two are used`);
  const end = (i: 0 | 1) => readFields(endFields, list[i], `ends.${i}`, doubt);
  return {
    ...readFields(runwayFields, properties, '', doubt),
    ends: [end(0), end(1)] as const,
    patterns: readPatterns(properties['patterns'], doubt),
  };
}

export type EndIndex = 0 | 1;

/** A path inside the survey is named by the runway's id and the end's index: designators change. */
export const endIndexField = v.picklist([0, 1], 'expected 0 or 1');
