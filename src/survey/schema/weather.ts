import * as v from 'valibot';
import { choiceField, flagField, notesField, numberField, readFields, textField, type Read } from '../fields';
import { isObject } from '../json';
import { instantField } from './when';

/**
 * One wind. `from`, `to`: when it holds, always where absent. `direction`: degrees true of where it comes from, null
 * when calm or variable. `likelihood`: "throughout" is what holds; the others come beside it.
 */
const windFields = {
  from: instantField,
  to: instantField,
  direction: numberField(0, 360, null),
  speedKt: numberField(0, 250, 0),
  gustKt: numberField(0, 300, null),
  variesFrom: numberField(0, 360, null),
  variesTo: numberField(0, 360, null),
  likelihood: choiceField(['throughout', 'becoming', 'at-times', 'chance'], 'throughout'),
  probability: numberField(0, 100, null),
};
export type WeatherWind = Read<typeof windFields>;

/** One sky: share of direct sun, 0 to 1, and visibility in m; null for what the report does not say. */
const skyFields = {
  from: instantField,
  to: instantField,
  direct: numberField(0, 1, null),
  visibility: numberField(50, 100_000, null),
  likelihood: choiceField(['throughout', 'becoming', 'at-times', 'chance'], 'throughout'),
  probability: numberField(0, 100, null),
};
export type WeatherSky = Read<typeof skyFields>;

/**
 * The wind that the survey is looked at with: what was typed or pasted, when, and the winds that were read from it.
 * `follow`: the ends in use follow it.
 */
const weatherFields = {
  /** As it was pasted: several reports may be longer than a name. */
  text: notesField(''),
  entered: instantField,
  source: choiceField(['typed', 'report'], 'typed'),
  /** Whether a typed wind was told from magnetic north. */
  magnetic: flagField(false),
  station: textField(null),
  observed: instantField,
  issued: instantField,
  forecastFrom: instantField,
  forecastTo: instantField,
  remarks: v.nullish(v.array(v.string('expected text'), 'expected a list of sentences'), []),
  follow: flagField(false),
};
export interface Weather extends Read<typeof weatherFields> {
  readonly winds: readonly WeatherWind[];
  /** An observation's before a forecast's. */
  readonly skies: readonly WeatherSky[];
}

/** No forecast has more. */
const mostWinds = 200;

/** Null where the survey says nothing of a wind. */
export function readWeatherMember(value: unknown, doubt: (reason: string) => void): Weather | null {
  if (value === undefined || value === null) return null;
  const list = (member: 'winds' | 'skies'): readonly unknown[] => {
    const given = isObject(value) ? value[member] : undefined;
    return Array.isArray(given) ? (given as readonly unknown[]).slice(0, mostWinds) : [];
  };
  const winds = list('winds').map((w, i) => readFields(windFields, w, `sunside.weather.winds.${i}`, doubt));
  const skies = list('skies').map((s, i) => readFields(skyFields, s, `sunside.weather.skies.${i}`, doubt));
  if (winds.length === 0) return null;
  return { ...readFields(weatherFields, value, 'sunside.weather', doubt), winds, skies };
}
