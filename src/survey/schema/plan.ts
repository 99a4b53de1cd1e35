import * as v from 'valibot';
import { choiceField, readFields, type Read } from '../fields';
import { instant } from './when';

const text = v.string('expected text');

/** Minutes between two spots (ids), the same both ways, as the user knows them. */
const minutes = v.pipe(
  v.number('expected minutes'),
  v.minValue(0, 'expected minutes'),
  v.maxValue(600, 'expected minutes'),
);
const move = v.object(
  { between: v.tuple([text, text], 'expected the ids of two spots'), minutes },
  'expected a way: {between, minutes}',
);

/** A window that was chosen to be taken along. `path` as the figures print it. */
const chosen = v.object(
  { spot: text, path: text, from: instant, to: instant },
  'expected a window: {spot, path, from, to}',
);
export type ChosenWindow = v.InferOutput<typeof chosen>;

const planFields = {
  moves: v.nullish(v.array(move, 'expected a list of {between, minutes}'), []),
  /** How one goes from spot to spot; null on foot, and by car where it is far. */
  by: choiceField(['foot', 'bicycle', 'car'], null),
  chosen: v.nullish(v.array(chosen, 'expected a list of {spot, path, from, to}'), []),
};
export type Plan = Read<typeof planFields>;

export const readPlan = (value: unknown, doubt: (reason: string) => void): Plan =>
  readFields(planFields, value ?? undefined, 'sunside.plan', doubt);
