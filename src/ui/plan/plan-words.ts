import type { MoveTime } from '../../figures/plan/move-time';
import type { PlanWindow, WindowEnd } from '../../figures/plan/windows';
import type { Score, Verdict } from '../../figures/types';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { factor, focalRange, share } from '../../units/format';
import type { Formats } from '../formats';
import { lightWords, verdictWords } from '../spot/words';

export const spotName = ({ name }: Pick<StandingSpot, 'name'>): string => name || 'Standing spot';

const endWords: Readonly<Record<WindowEnd, string>> = {
  'sun-down': 'until the sun sets',
  overhead: 'until the sun stands overhead',
  glare: 'until the sun shines into the lens',
  light: 'until the light falls off',
  haze: 'until heat haze spoils it',
  flow: 'until other ends come into use',
  day: 'to midnight',
  other: '',
};

/** Why a window is worth it, in plain words. `take`: the lens for its best picture; `fill`: the share of the frame that is wanted. */
export function windowReason(
  { lights, focal, best, score, ends }: PlanWindow,
  format: Formats,
  take: Verdict | null,
  fill: number,
): string {
  const light = lights
    .slice(0, 2)
    .map((name) => lightWords[name])
    .join(' and ');
  const parts = [[light, endWords[ends]].filter(Boolean).join(' ')];
  if (focal)
    parts.push(`${focalRange(focal.shortest, focal.longest)}, best at ${format.length(best.slantRange)}`);
  if (take) parts.push(`${take.lens.name} ${verdictWords(take, fill)}`);
  if (score.sight < 0.995) parts.push(`${share(score.sight)} in sight`);
  if (score.haze < 0.95)
    parts.push(`heat haze takes ${share(1 - score.haze)}: long range over warm ground at high sun`);
  return parts.join('; ');
}

/** What is due in a window: "14:25 A320 ZZ123 (starred), 15:10 B738", many of them cut short. */
export function dueWords(due: PlanWindow['due'], format: Formats): string {
  const told = due.slice(0, 6).map(({ movement: { time, type, flight, starred } }) => {
    const what = [format.clock(time), type, flight].filter(Boolean).join(' ');
    return starred ? `${what} (starred)` : what;
  });
  return due.length > told.length
    ? `${told.join(', ')} and ${due.length - told.length} more`
    : told.join(', ');
}

/** The factors behind it: "light 0.97, reach 1.00, aspect 1.00, sight 1.00, haze 0.98". */
export const factorWords = ({ light, reach, aspect, sight, haze }: Score): string =>
  Object.entries({ light, reach, aspect, sight, haze })
    .map(([name, value]) => `${name} ${factor(value)}`)
    .join(', ');

/** "12 min on foot", "18 min by car", "20 min". */
export const moveWords = ({ minutes, by }: MoveTime): string =>
  `${minutes} min${by === 'stated' ? '' : by === 'foot' ? ' on foot' : ' by car'}`;
