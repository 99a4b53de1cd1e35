import * as v from 'valibot';
import type { Position } from '../document';
import { choiceField, numberField, numbersField, readFields, textField, type Read } from '../fields';
import { isObject, shown, type JsonObject } from '../json';
import { clockField, date, dateField } from './when';

type Doubt = (reason: string) => void;

/** How many fly together, and m from centre to centre of neighbours; null where nobody has said. */
const formationFields = {
  aircraft: numberField(1, 12, 1),
  spacing: numberField(1, 2000, null),
};

/** How aircraft come past along a display line. */
export const displayPasses = ['level', 'climbing', 'turning-away', 'topside', 'underside'] as const;
export type DisplayPass = (typeof displayPasses)[number];

/**
 * What is due when: `time` by the clock of the airfield, null where the programme has none; it is over at `to` where that
 * is said; every day of the display without a `date`. `type`: what flies it, as it was given.
 */
const programmeEntry = v.object(
  { time: clockField(null), to: clockField(null), name: textField(''), type: textField(''), date: dateField },
  'expected an entry: {time, name}',
);
export type ProgrammeEntry = v.InferOutput<typeof programmeEntry>;
/** Entries of a programme: more than any day has. */
const mostEntries = 200;
/** Minutes that a programme may be late: more would be another day's. */
export const mostLate = 600;

/** Minutes by which the programme of one date runs late, or early below 0. */
const late = v.object(
  {
    date,
    minutes: v.pipe(
      v.number('expected minutes'),
      v.minValue(-mostLate, 'expected minutes'),
      v.maxValue(mostLate, 'expected minutes'),
    ),
  },
  'expected a delay: {date, minutes}',
);

/**
 * The line that a display flies along, from its first position to its last. `height`: m above the field; `speed`: m/s;
 * null: what is usual. `passes`: those that are looked at. `aircraft` fly it together, `spacing` m from centre to centre
 * of neighbours; null where nobody has said.
 */
const displayLineFields = {
  name: textField(''),
  passes: v.nullish(
    v.array(
      v.picklist(displayPasses, `expected some of ${displayPasses.join(', ')}`),
      `expected a list of ${displayPasses.join(', ')}`,
    ),
    ['level', 'topside'],
  ),
  height: numberField(0, 5000, null),
  speed: numberField(1, 400, null),
  ...formationFields,
  late: v.nullish(late, null),
};
export interface DisplayLine extends Read<typeof displayLineFields> {
  readonly id: string;
  readonly line: readonly Position[];
  readonly programme: readonly ProgrammeEntry[];
}
export const readDisplayLineProperties = (p: JsonObject, doubt: Doubt) => ({
  ...readFields(displayLineFields, p, '', doubt),
  programme: readProgramme(p['programme'], doubt),
});

function readProgramme(value: unknown, doubt: Doubt): readonly ProgrammeEntry[] {
  if (value === undefined || value === null) return [];
  if (!Array.isArray(value)) {
    doubt(`programme: expected a list of {time, name}, got ${shown(value)}; none is used instead`);
    return [];
  }
  if (value.length > mostEntries)
    doubt(`programme: ${value.length} entries; the first ${mostEntries} are used`);
  return (value as unknown[]).slice(0, mostEntries).flatMap((given, i) => {
    const read = v.safeParse(programmeEntry, given);
    if (read.success) return [read.output];
    const issue = read.issues[0];
    const at = ['programme', i, v.getDotPath(issue) ?? ''].filter((part) => part !== '').join('.');
    doubt(`${at}: ${issue.message}, got ${shown(issue.input)}; this entry is not used`);
    return [];
  });
}

/** The line up to which the public may stand at a display. */
const crowdLineFields = { name: textField('') };
export interface CrowdLine extends Read<typeof crowdLineFields> {
  readonly id: string;
  readonly line: readonly Position[];
}
export const readCrowdLineProperties = (p: JsonObject, doubt: Doubt) =>
  readFields(crowdLineFields, p, '', doubt);

/**
 * Where helicopters land. `courses`: degrees from true north in which they come in to land; none: as the runway ends in
 * use. `elevation`: m above mean sea level, null for the ground there.
 */
const helipadFields = {
  name: textField(''),
  courses: numbersField(0, 360),
  elevation: numberField(-500, 9000, null),
};
export interface Helipad extends Read<typeof helipadFields> {
  readonly id: string;
  readonly position: Position;
}
export const readHelipadProperties = (p: JsonObject, doubt: Doubt) => readFields(helipadFields, p, '', doubt);

/** Where a winch pulls gliders up: its cable lies along the line. */
const winchRunFields = { name: textField('') };
export interface WinchRun extends Read<typeof winchRunFields> {
  readonly id: string;
  readonly line: readonly Position[];
}
export const readWinchRunProperties = (p: JsonObject, doubt: Doubt) =>
  readFields(winchRunFields, p, '', doubt);

/** What is flown at a runway's end besides the straight approach, the take-off and the usual circuit. */
export const patternKinds = ['break', 'wide-circuit', 'offset', 'circling', 'glider', 'aerotow'] as const;
export type PatternKind = (typeof patternKinds)[number];

/**
 * One of them. What is null takes what is usual. `side`: of the turns, that of the end's circuit unless said. `height`: m
 * above the field; `speed`: m/s of the run-in; `aircraft` of a stream, run in `spacing` m from one another and break
 * `interval` s apart; `offset`: degrees by
 * which a localizer is turned off the runway, `meets`: m before the threshold at which it crosses the centreline.
 */
const patternFields = {
  pattern: v.picklist(patternKinds, `expected one of ${patternKinds.join(', ')}`),
  end: v.picklist([0, 1], 'expected 0 or 1'),
  side: choiceField(['left', 'right'], null),
  height: numberField(0, 3000, null),
  speed: numberField(1, 400, null),
  aircraft: numberField(1, 8, 1),
  spacing: numberField(1, 2000, null),
  interval: numberField(1, 60, null),
  offset: numberField(0, 30, null),
  meets: numberField(0, 5000, null),
};
export type Pattern = Read<typeof patternFields>;

/** Patterns of one runway: more than any has. */
const mostPatterns = 24;

/** An entry makes sense only with its pattern and its end: without them it is said and left out. */
export function readPatterns(value: unknown, doubt: Doubt): readonly Pattern[] {
  if (value === undefined || value === null) return none;
  if (!Array.isArray(value)) {
    doubt(`patterns: expected a list, got ${shown(value)}; none is used instead`);
    return none;
  }
  if (value.length > mostPatterns)
    doubt(`patterns: ${value.length} entries; the first ${mostPatterns} are used`);
  return (value as unknown[]).slice(0, mostPatterns).flatMap((given, i) => {
    const { pattern, end } = isObject(given) ? given : {};
    const read = v.safeParse(v.object({ pattern: patternFields.pattern, end: patternFields.end }), {
      pattern,
      end,
    });
    if (!read.success) {
      const issue = read.issues[0];
      doubt(
        `patterns.${i}.${v.getDotPath(issue) ?? ''}: ${issue.message}, got ${shown(issue.input)}; it is not used`,
      );
      return [];
    }
    return [readFields(patternFields, given, `patterns.${i}`, doubt)];
  });
}
const none: readonly Pattern[] = [];
