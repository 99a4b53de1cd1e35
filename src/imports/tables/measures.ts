import type { Measure } from '../../survey/kit-members';
import { metresPerFoot } from '../../units/length';
import { metresPerSecondPer } from '../../units/speed';
import { speedUnitOf } from '../../units/typed-speed';

/** Spellings of the units that a table may use, each with its size in the unit of the survey. */
const units: Readonly<Partial<Record<Measure, readonly (readonly [RegExp, number])[]>>> = {
  millimetres: [
    [/^(mm|millimet(re|er)s?)$/, 1],
    [/^(cm|centimet(re|er)s?)$/, 10],
    [/^(in|inch|inches|")$/, 25.4],
  ],
  metres: [
    [/^(m|met(re|er)s?)$/, 1],
    [/^(ft|feet|foot|')$/, metresPerFoot],
  ],
  gradient: [
    [/^(m\/m|rise over run|ratio|1)$/, 1],
    [/^(%|per ?cent)$/, 0.01],
  ],
  degrees: [[/^(°|º|deg|degs|degrees?)$/, 1]],
  rpm: [[/^(rpm|1\/min|rev\/min|r\/min)$/, 1]],
  count: [[/^(px|pixels?)$/, 1]],
  'f-number': [[/^(f|f\/|f-number|f-stop)$/, 1]],
  factors: [[/^[x×]$/, 1]],
};

/** The size of a unit as spelled in a heading or behind a number; null when it measures nothing of that kind. */
export function sizeOfUnit(measure: Measure, spelled: string): number | null {
  if (measure === 'metres-per-second') {
    const unit = speedUnitOf(spelled);
    return unit === null ? null : metresPerSecondPer[unit];
  }
  return units[measure]?.find(([pattern]) => pattern.test(spelled.trim().toLowerCase()))?.[1] ?? null;
}
