import type { MoveTime } from '../../figures/plan/move-time';
import type { ActType } from '../../figures/display/programme-acts';
import type { ActDue } from '../../figures/plan/acts-due';
import type { PlanWindow, WindowEnd } from '../../figures/plan/windows';
import type { Served } from '../../figures/optics/lens-fit';
import type { Score, Verdict } from '../../figures/types';
import type { Subject } from '../../survey/schema/subject';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { decimal, factor, focalRange, share } from '../../units/format';
import { parseNumber } from '../../units/number';
import type { Formats } from '../formats';
import { actName, litUntilWords } from '../words/display-words';
import { lightWords, takeWords } from '../words/sample-words';

export const spotName = ({ name }: Pick<StandingSpot, 'name'>): string => name || 'Standing spot';

const endWords: Readonly<Record<WindowEnd, string>> = {
  'sun-down': 'until the sun sets',
  overhead: 'until the sun stands overhead',
  glare: 'until the sun shines into the lens',
  light: 'until the light falls off',
  haze: 'until heat haze spoils it',
  flow: 'until other ends come into use',
  programme: 'until the programme moves on',
  hours: 'until it closes',
  day: 'to midnight',
  other: '',
};

/** The lens to take for a window's best picture, and the focal lengths in mm that it serves so. */
export interface WindowLens {
  readonly take: Verdict;
  readonly served: Served;
}

/** Why a window is worth it, in plain words. `lens`: null without one. */
export function windowReason(
  { lights, flat, focal, best, score, ends }: PlanWindow,
  format: Formats,
  lens: WindowLens | null,
): string {
  const light = lights
    .slice(0, 2)
    .map((name) => lightWords[name])
    .join(' and ');
  const lit = [flat ? 'flat light' : light, endWords[ends]].filter(Boolean).join(' ');
  const parts = [flat ? `${lit}: either side; go for reach and background` : lit];
  if (focal) parts.push(pictureWords({ focal, best }, format));
  if (lens) parts.push(lensWords(lens, focal));
  if (score.sight < 0.995) parts.push(`${share(score.sight)} in sight`);
  if (score.haze < 0.95)
    parts.push(`heat haze takes ${share(1 - score.haze)}: long range over warm ground at high sun`);
  return parts.join('; ');
}

/** "350–380 mm, best at 443 m"; empty without a focal length. */
export const pictureWords = ({ focal, best }: Pick<PlanWindow, 'focal' | 'best'>, format: Formats): string =>
  focal ? `${focalRange(focal.shortest, focal.longest)}, best at ${format.length(best.slantRange)}` : '';

/** What a lens makes of the best picture; said to be only that where the window's focal lengths go beyond what it serves. */
export function lensWords({ take, served }: WindowLens, focal: PlanWindow['focal']): string {
  const words = takeWords(take);
  if (take.verdict !== 'fits' || !focal) return words;
  // To the millimetre: what is not seen in the printed range is not beyond it.
  const beyond =
    Math.round(focal.shortest) < Math.round(served.from) || Math.round(focal.longest) > Math.round(served.to);
  return beyond ? `${words} at the best point` : words;
}

/** Minutes of a way as typed, null for the estimate; or why they are refused. `kept`: minutes that count until then. */
export function typedMinutes(
  text: string,
  kept: number,
): { readonly minutes: number | null } | { readonly reason: string } {
  if (text.trim() === '') return { minutes: null };
  const minutes = parseNumber(text);
  if (minutes !== null && minutes >= 0 && minutes <= 600) return { minutes };
  const given = minutes === null ? `"${text.trim()}"` : decimal(minutes, Number.isInteger(minutes) ? 0 : 1);
  return { reason: `${given} is not taken: type 0 to 600 minutes. Until then ${kept} min count.` };
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

/** What a programme has in a window: "15:20 Jet, solo, lit from the left until 16:05; 15:40 Biplane". */
export const actsWords = (acts: PlanWindow['acts'], clock: (instant: number) => string): string =>
  acts
    .map(({ act, light }) => [actName(act, clock), litUntilWords(light, clock)].filter(Boolean).join(', '))
    .join('; ');

/** What a window's acts are framed for, and why where it is not their own: "framed for A320: type not known". */
export function framedWords(acts: readonly Pick<ActDue, 'act'>[], subject: Pick<Subject, 'name'>): string {
  // "A320 — narrow-body jet": which one is enough here.
  const name = subject.name.split(' — ')[0] ?? subject.name;
  const whys: Readonly<Record<ActType['kind'], string>> = {
    known: '',
    unknown: ': type not known',
    unsaid: ': no type given',
  };
  const told = acts.map(({ act }) => `framed for ${name}${whys[act.type.kind]}`);
  return [...new Set(told)].join('; ');
}

/** The factors behind it: "light 0.97, reach 1.00, aspect 1.00, sight 1.00, haze 0.98". */
export const factorWords = ({ light, reach, aspect, sight, haze }: Score): string =>
  Object.entries({ light, reach, aspect, sight, haze })
    .map(([name, value]) => `${name} ${factor(value)}`)
    .join(', ');

export const goingWords: Readonly<Record<MoveTime['by'], string>> = {
  foot: 'on foot',
  bicycle: 'by bicycle',
  car: 'by car',
  stated: '',
};

/** "12 min on foot", "18 min by car", "20 min". */
export const moveWords = ({ minutes, by }: MoveTime): string =>
  [`${minutes} min`, goingWords[by]].filter(Boolean).join(' ');
