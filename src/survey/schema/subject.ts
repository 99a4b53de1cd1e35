import * as v from 'valibot';
import { numberField, textField, type Read } from '../fields';

const within = (min: number, max: number, unit: string) => {
  const what = `expected a number from ${min} to ${max} ${unit}`;
  return v.pipe(v.number(what), v.finite(what), v.minValue(min, what), v.maxValue(max, what));
};

/**
 * An aircraft class or type. Lengths in m, speeds in m/s, `climbGradient` rise over run, `approachAngle` and
 * attitudes in degrees, `rpm` of propeller or rotor. `tailSpan`: span of the tailplane, m. Null: no word of
 * its own, the runway end's or the usual one goes.
 */
export const subjectFields = {
  key: v.pipe(v.string('expected text'), v.nonEmpty('expected a key that is not empty')),
  name: textField(''),
  length: within(0.5, 150, 'm'),
  span: within(0.5, 150, 'm'),
  height: within(0.2, 50, 'm'),
  propulsion: v.picklist(
    ['jet', 'propeller', 'rotor', 'none'],
    'expected one of jet, propeller, rotor, none',
  ),
  wing: textField(null),
  engines: numberField(0, 12, null),
  approachSpeed: within(1, 400, 'm/s'),
  climbSpeed: within(1, 400, 'm/s'),
  groundRun: within(0, 6000, 'm'),
  landingRun: within(0, 6000, 'm'),
  climbGradient: within(0.001, 3, '(rise over run)'),
  approachAngle: numberField(1, 60, null),
  crossingHeight: numberField(0, 200, null),
  approachAttitude: numberField(-30, 30, null),
  climbAttitude: numberField(-30, 45, null),
  rpm: numberField(1, 20_000, null),
  blades: numberField(1, 12, null),
  tailSpan: numberField(0.1, 100, null),
  seaplane: v.nullish(v.boolean('expected true or false'), null),
};

export interface Subject extends Omit<Read<typeof subjectFields>, 'seaplane'> {
  /** Whether it can use a runway on water. */
  readonly seaplane?: boolean | null;
}
