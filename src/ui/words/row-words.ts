import type { DayRow } from '../../figures/when/day-rows';
import type { LightRun, RowReading } from '../../figures/when/light-row';
import type { Day } from '../../time/day-share';
import { factor, focal } from '../../units/format';
import type { Formats } from '../formats';
import type { Clock } from './lit-words';
import { isSunUp, lightName } from './sample-words';

/** "Orchard Path, 25 arrival". */
export const rowName = ({ spot, path }: Pick<DayRow, 'spot' | 'path'>): string =>
  `${spot.name || 'Standing spot'}, ${path.name}`;

/** What a run is called: "front-lit", "back-lit with glare", "flat light: either side", "hidden". */
const runName = ({ light, glare, flat, blocked }: Omit<LightRun, 'from' | 'to' | 'worth'>): string =>
  blocked ? 'hidden' : `${lightName(light, flat)}${glare ? ' with glare' : ''}`;

/** The same with what the picture is worth, where there is one: "front-lit, good". */
const worthName = (run: LightRun): string =>
  run.blocked || !isSunUp(run.light) ? runName(run) : `${runName(run)}, ${run.worth},`;

/** A row in words, for those who hear the page: "front-lit, good, 16:40 to 21:05, twilight 21:05 to 21:50". */
export function rowWords({ runs, light: { light } }: DayRow, day: Day, clock: Clock): string {
  const at = (index: number) => clock(day.from + ((day.to - day.from) * index) / light.length);
  const told = runs.filter((run) => run.light !== 'dark');
  if (told.length === 0) return 'dark all day';
  // Worth is told apart by day only: a twilight is one, whatever it scores.
  const stretches: { name: string; from: number; to: number }[] = [];
  for (const run of told) {
    const last = stretches.at(-1);
    const name = worthName(run);
    if (last?.name === name && last.to === run.from) last.to = run.to;
    else stretches.push({ name, from: run.from, to: run.to });
  }
  return stretches.map(({ name, from, to }) => `${name} ${at(from)} to ${at(to)}`).join(', ');
}

/** Why no path has a row, and what to do about it. */
export function nothingWords(outOfReach: number, hidden: number): string {
  if (hidden > 0 && outOfReach === 0)
    return 'Every path is hidden behind what is drawn: move the spot or raise the eye.';
  if (hidden > 0)
    return `Of the paths ${outOfReach} are out of the kit’s reach and ${hidden} hidden behind what is drawn: move the spot, raise the eye or choose a longer lens.`;
  return 'No path is within reach of the kit from a spot where one may stand. Move a spot closer, or choose a longer lens.';
}

/** What the best picture is at an instant: "front-lit, score 0.83, 400 mm at 620 m". */
export function readingWords(
  { light, flat, glare, score, focalLength, slantRange }: RowReading,
  format: Formats,
): string {
  const blocked = score.sight === 0;
  const words = [runName({ light, glare: glare && !flat, flat, blocked })];
  if (light !== 'dark' && !blocked) words.push(`score ${factor(score.total)}`);
  words.push(`${focal(focalLength)} at ${format.length(slantRange)}`);
  if (score.haze < 0.9 && score.light > 0) words.push(`heat haze ${factor(score.haze)}`);
  return words.join(', ');
}
