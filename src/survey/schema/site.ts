import * as v from 'valibot';
import type { Position } from '../document';
import { choiceField, flagField, numberField, readFields, textField, type Read } from '../fields';
import { shown } from '../json';
import { endIndexField } from './runway';
import { clockField, dateField } from './when';

const megahertz = 'expected a frequency from 0.1 to 1000 MHz';
const frequency = v.object(
  {
    use: v.string('expected text'),
    name: v.nullish(v.string('expected text')),
    mhz: v.pipe(v.number(megahertz), v.minValue(0.1, megahertz), v.maxValue(1000, megahertz)),
  },
  'expected a frequency: {use, name, mhz}',
);
export type Frequency = v.InferOutput<typeof frequency>;

const within = (bound: number, what: string) => {
  const message = `expected a ${what} within ±${bound} degrees`;
  return v.pipe(v.number(message), v.minValue(-bound, message), v.maxValue(bound, message));
};
const longitude = within(180, 'longitude');
const latitude = within(90, 'latitude');

/** `elevation`: m above mean sea level, null when not known. `timeZone`: as the survey has it. `reference`: where the survey is. */
const siteFields = {
  name: textField(''),
  icao: textField(null),
  /** Flown by the military, as far as the user has said. */
  military: flagField(false),
  elevation: numberField(-500, 9000, null),
  timeZone: textField(null),
  reference: v.nullish(v.tuple([longitude, latitude], 'expected [longitude, latitude] in degrees'), null),
  frequencies: v.nullish(
    v.pipe(
      v.array(frequency, 'expected a list of frequencies'),
      v.maxLength(100, 'expected up to 100 frequencies'),
    ),
    [],
  ),
};
export interface Site extends Omit<Read<typeof siteFields>, 'reference'> {
  readonly reference: Position | null;
}
export const readSite = (value: unknown, doubt: (reason: string) => void): Site =>
  readFields(siteFields, value, 'sunside.site', doubt);

const minutesWords = 'expected minutes from -720 to 720';

/** A moment that follows the sun: minutes after (negative: before) sunrise, sunset or the sun's transit of the date. */
const momentRule = v.object(
  {
    event: v.picklist(['sunrise', 'sunset', 'noon'], 'expected one of sunrise, sunset, noon'),
    minutes: v.nullish(
      v.pipe(v.number(minutesWords), v.minValue(-720, minutesWords), v.maxValue(720, minutesWords)),
      0,
    ),
  },
  'expected {event, minutes}',
);
export type MomentRule = v.InferOutput<typeof momentRule>;

/**
 * A date and two wall-clock times at the airfield. A null date means today. A rule goes before the time beside it, which
 * holds where the date has no such event.
 */
const momentFields = {
  date: dateField,
  a: clockField('08:00'),
  b: clockField('18:00'),
  aRule: v.nullish(momentRule, null),
  bRule: v.nullish(momentRule, null),
};
export type Moments = Read<typeof momentFields>;
export const readMoments = (value: unknown, doubt: (reason: string) => void): Moments =>
  readFields(momentFields, value, 'sunside.moments', doubt);

const endOfRunway = v.object(
  { runway: v.string('expected the id of a runway'), end: endIndexField },
  'expected an end: {runway, end}',
);
export type EndRef = v.InferOutput<typeof endOfRunway>;
const endsInUse = v.nullish(v.array(endOfRunway, 'expected a list of {runway, end}'), []);

/** Which ends serve arrivals and which departures, and the wind limits (kt, gusts included). */
const configurationFields = {
  name: textField(''),
  arrivals: endsInUse,
  departures: endsInUse,
  hours: textField(null),
  maxTailwindKt: numberField(0, 50, 5),
  maxCrosswindKt: numberField(0, 100, 15),
};
export type Configuration = Read<typeof configurationFields>;

export interface Flow {
  /** In order of preference. */
  readonly configurations: readonly Configuration[];
  /** Which of them is used in calm or variable wind, by index; null when the survey names none. */
  readonly calm: number | null;
  /** What shares of ends come from where there are recorded flights and past winds; null for the better of them, month by month. */
  readonly sharesFrom: SharesFrom | null;
}

export const sharesFrom = ['flights', 'winds'] as const;
export type SharesFrom = (typeof sharesFrom)[number];

const mostConfigurations = 200;

/** `calm` is the name of a configuration; its place in the list, from 0, is understood as well. */
const flowFields = {
  configurations: v.nullish(v.array(v.unknown(), 'expected a list'), []),
  calm: v.nullish(v.union([v.string(), v.number()], 'expected the name of a configuration'), null),
  sharesFrom: choiceField(sharesFrom, null),
};

export function readFlow(value: unknown, doubt: (reason: string) => void): Flow {
  const flow = readFields(flowFields, value, 'sunside.flow', doubt);
  if (flow.configurations.length > mostConfigurations)
    doubt(
      `sunside.flow.configurations: ${flow.configurations.length} entries; the first ${mostConfigurations} are read`,
    );
  const configurations = flow.configurations
    .slice(0, mostConfigurations)
    .map((c, i) => readFields(configurationFields, c, `sunside.flow.configurations.${i}`, doubt));
  const calm = configurations.findIndex((c, i) => c.name === flow.calm || i === flow.calm);
  if (flow.calm !== null && calm === -1)
    doubt(`sunside.flow.calm: there is no configuration ${shown(flow.calm)}; none is used for calm wind`);
  return { configurations, calm: calm === -1 ? null : calm, sharesFrom: flow.sharesFrom };
}

/** Chosen subject, body and lenses, by key. */
const currentFields = {
  subject: textField(null),
  body: textField(null),
  lenses: v.nullish(v.array(v.string('expected a key'), 'expected a list of keys'), null),
};
export type Current = Read<typeof currentFields>;
export const readCurrent = (value: unknown, doubt: (reason: string) => void): Current =>
  readFields(currentFields, value, 'sunside.current', doubt);
