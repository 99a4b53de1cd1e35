import { speedUnitOf } from '../../units/typed-speed';
import type { SpeedUnit } from '../../units/speed';

/** What a column of past winds is; a date and a clock may stand in two columns or in one ("time"). */
export const roles = ['time', 'clock', 'direction', 'speed', 'gust', 'cloud'] as const;
export type Role = (typeof roles)[number];
export type Mapping = Readonly<Record<Role, number | null>>;

const names: Readonly<Record<Role, RegExp>> = {
  time: /^(valid|(obs(ervation)? )?(date ?time|time ?stamp|date)|time|when|datum|date (utc|local)|(date )?time (utc|local)|valid (utc|time)|unix)( utc| gmt| local| lt)?$/,
  clock: /^(time|hour|clock|time of day|hhmm|hrmn|zeit|uhrzeit)( utc| gmt| local| lt)?$/,
  direction:
    /^(drct|dir|ddd?|wd|wdir|wind ?dir(ection)?|direction|wind from|wind ?angle|windrichtung)( deg(rees)?)?$/,
  speed: /^(sknt|spd|ff|ws|wspd|speed|wind|wind ?sp(eed|d)|windgeschwindigkeit|mean wind|wind mean)( .*)?$/,
  cloud:
    /^(metar|skyc1|sky ?c(over|ondition)?( 1)?|cloud(s| ?cover| ?amount)?|okta?s?|octas?|total ?cloud.*|bew(ö|oe)lkung)( .*)?$/,
  gust: /^(gust|gst|wgst|gusts|fx|wind ?gusts?|gust ?sp(eed|d)|peak ?gust|gust kts?)( .*)?$/,
};

const plain = (heading: string) =>
  heading
    .replace(/([a-z])(?=[A-Z])/g, '$1 ')
    .toLowerCase()
    .replace(/[([{].*$/, '')
    .replace(/[^a-z0-9/]+/g, ' ')
    .trim();

/** The unit in or behind a heading's words: "wind speed (m/s)", "gust_kts"; null for none. */
function unitIn(heading: string): SpeedUnit | null {
  const inBrackets = /[([{]([^)\]}]*)[)\]}]/.exec(heading)?.[1];
  const last = /[\s_]([a-z/]+(?: s-1)?)$/i.exec(heading.replace(/[([{].*$/, '').trim())?.[1];
  if (/^sknt$/i.test(heading)) return 'kt';
  return speedUnitOf(inBrackets ?? last ?? '');
}

/** Which column is what by the names of the first row, and the unit of speed where one is named. */
export function guessColumns(headings: readonly string[]): { mapping: Mapping; unit: SpeedUnit | null } {
  const found: Record<Role, number | null> = {
    time: null,
    clock: null,
    direction: null,
    speed: null,
    gust: null,
    cloud: null,
  };
  const taken = new Set<number>();
  for (const role of ['gust', 'direction', 'speed', 'time', 'clock', 'cloud'] as const) {
    const index = headings.findIndex((h, i) => !taken.has(i) && names[role].test(plain(h)));
    if (index === -1) continue;
    found[role] = index;
    taken.add(index);
  }
  const unit = found.speed === null ? null : unitIn(headings[found.speed] ?? '');
  return { mapping: found, unit: unit ?? (found.gust === null ? null : unitIn(headings[found.gust] ?? '')) };
}
