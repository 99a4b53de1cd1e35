import * as v from 'valibot';
import { choiceField, flagField, numberField, readFields, textField, type Read } from '../fields';
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

/**
 * The wind that the survey is looked at with: what was typed or pasted, when, and the winds that were read from it.
 * `follow`: the ends in use follow it.
 */
const weatherFields = {
  text: textField(''),
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
}

/** No forecast has more. */
const mostWinds = 200;

/** Null where the survey says nothing of a wind. */
export function readWeatherMember(value: unknown, doubt: (reason: string) => void): Weather | null {
  if (value === undefined || value === null) return null;
  const given = isObject(value) ? value['winds'] : undefined;
  const list: readonly unknown[] = Array.isArray(given) ? (given as readonly unknown[]) : [];
  const winds = list
    .slice(0, mostWinds)
    .map((w, i) => readFields(windFields, w, `sunside.weather.winds.${i}`, doubt));
  return winds.length === 0 ? null : { ...readFields(weatherFields, value, 'sunside.weather', doubt), winds };
}
