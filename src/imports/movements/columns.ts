import { readClock, readStamp } from '../../time/read-stamp';
import { isType, useOf } from './typed-movement';

/** What a column of a list of movements is. */
export const roles = ['time', 'date', 'use', 'type', 'flight', 'from', 'to', 'runway'] as const;
export type Role = (typeof roles)[number];
export type Mapping = Readonly<Record<Role, number | null>>;

const names: Readonly<Record<Role, RegExp>> = {
  time: /^(time|sched(uled)?( time)?|eta|etd|sta|std|at|hour|when|local time|time (utc|local|lt|z)|utc|date ?time|uhrzeit|zeit|est(imated)?)$/,
  date: /^(date|day|datum)$/,
  use: /^(a ?\/? ?d|arr ?\/? ?dep|(arrival|departure)s? ?\/? ?(or)? ?(departure|arrival)s?|direction|movement|type of movement|kind|use)$/,
  type: /^(type|ac ?type|a\/?c|aircraft( type)?|icao type|equip(ment)?|type designator|model|typ|subject)$/,
  flight:
    /^(flight( no| number)?|callsign|call sign|reg(istration)?|tail( number)?|ident|flug|flight or registration)$/,
  from: /^(from|origin|orig|dep airport|adep|departed from|from\/to|from or to|place|route|airport|von)$/,
  to: /^(to|dest(ination)?|arr airport|ades|nach)$/,
  runway: /^(runway|rwy|rw|end|piste|bahn)$/,
};

const plain = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/[([{].*$/, '')
    .replace(/[^a-z0-9/]+/g, ' ')
    .trim();

const none: Mapping = {
  time: null,
  date: null,
  use: null,
  type: null,
  flight: null,
  from: null,
  to: null,
  runway: null,
};

/** Which column is what, by the names in the first row; null when that row names no time: then it is a movement itself. */
export function columnsByName(headings: readonly string[]): Mapping | null {
  const found: Record<Role, number | null> = { ...none };
  const taken = new Set<number>();
  for (const role of roles) {
    const index = headings.findIndex((h, i) => !taken.has(i) && names[role].test(plain(h)));
    if (index === -1) continue;
    found[role] = index;
    taken.add(index);
  }
  return found.time === null && found.use === null ? null : found;
}

/** Names of a column that holds places of departure alone. */
const fromOnly = /^(from|origin|orig|dep airport|adep|departed from|von)$/;

/** What the rows are of a list that tells only where from, or only where to; null where that decides nothing. */
export function useByPlaces(
  headings: readonly string[],
  { use, from, to }: Mapping,
): 'arrival' | 'departure' | null {
  if (use !== null || (from === null) === (to === null)) return null;
  if (from === null) return 'departure';
  return fromOnly.test(plain(headings[from] ?? '')) ? 'arrival' : null;
}

/** Which column is what by what stands in it, for lists without names: each role takes the first column that mostly fits. */
export function columnsByContent(rows: readonly (readonly string[])[]): Mapping {
  const width = Math.max(0, ...rows.map((r) => r.length));
  const found: Record<Role, number | null> = { ...none };
  const taken = new Set<number>();
  const fits: readonly (readonly [Role, (cell: string) => boolean])[] = [
    ['time', (c) => readClock(c) !== null || (readStamp(c, 'dmy') !== null && /\d[T\s]\d/.test(c))],
    ['date', (c) => readStamp(c, 'dmy') !== null],
    ['use', (c) => useOf(c) !== null],
    ['runway', (c) => /^(rwy ?)?(0?[1-9]|[12]\d|3[0-6])[LCR]?$/i.test(c)],
    ['type', (c) => isType(c) && /\d/.test(c)],
    ['flight', (c) => /^[A-Z0-9]{1,3}[- ]?[A-Z0-9]{2,6}$/i.test(c) && /[\d-]/.test(c)],
    ['from', (c) => /^\p{L}[\p{L} .'()-]+$/u.test(c)],
  ];
  for (const [role, fit] of fits) {
    for (let i = 0; i < width && found[role] === null; i++) {
      if (taken.has(i)) continue;
      const cells = rows.map((r) => r[i] ?? '').filter((c) => c !== '');
      if (cells.length > 0 && cells.filter(fit).length * 2 > cells.length) {
        found[role] = i;
        taken.add(i);
      }
    }
  }
  return found;
}
