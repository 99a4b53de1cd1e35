import { movementKey, type Movement } from '../../survey/schema/movement';
import { clockAt, dateAt, datePlus } from '../../time/local-time';
import { readClock, readStamp, stampInUtc, type DateOrder } from '../../time/read-stamp';
import { readCsv } from '../tables/csv';
import { columnsByContent, columnsByName, useByPlaces, type Mapping } from './columns';
import { readTypedLines } from './typed-lines';
import { clockOf, useOf } from './typed-movement';

/** How a list is read: guessed, shown to the user, and mended by them. */
export interface ListLayout {
  /** Names of the columns; numbers where the list has none. */
  readonly headings: readonly string[];
  readonly rows: readonly {
    readonly row: number;
    readonly cells: readonly string[];
    readonly starred?: boolean;
  }[];
  readonly mapping: Mapping;
  /** Times without an offset of their own. */
  readonly clock: 'site' | 'utc';
  readonly order: DateOrder;
  /** Of rows that do not say which they are; null: they are left out. */
  readonly use: Movement['use'] | null;
  /** Lines above the headings that are none, titles for the most part: passed over. */
  readonly above?: number;
  /** The date of rows without one; null: they are due every day. */
  readonly date: string | null;
}

export interface ListReading {
  readonly movements: readonly Omit<Movement, 'id'>[];
  readonly left: readonly { readonly row: number; readonly reason: string }[];
  /** What was done to the list as a whole, in words. */
  readonly remarks: readonly string[];
}

/** Lists copied from a page have tabs, or columns lined up with blanks. */
const tabbed = (text: string): string => (isParted(text) ? text : text.replace(/[^\S\n]{2,}/g, '\t'));

/** Rows among which the headings are looked for: above them pages have titles. */
const titleRows = 6;

/** Whether anything parts the cells: in most of the first lines, for a title may have none, or a comma of its own. */
function isParted(text: string): boolean {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const first = lines.slice(0, titleRows);
  return first.filter((line) => /[\t;|,]/.test(line)).length * 2 > first.length;
}

/** Looks at a list; null for one in which there is nothing. `date`: the day that is being looked at. */
export function listLayout(text: string, date: string): ListLayout | null {
  const table = tabbed(text.trim());
  const typed = isParted(table) ? null : readTypedLines(text.trim());
  if (typed) return { ...typed, clock: 'site', order: 'dmy', use: null, date };
  const { rows } = readCsv(table);
  if (rows.length === 0) return null;
  const head = headingRow(rows);
  const first = rows[Math.max(0, head)] as (typeof rows)[number];
  const named = head < 0 ? null : columnsByName(first.cells);
  const rest = rows.slice(head + 1);
  const width = rows.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  const numbered = Array.from({ length: width }, (_, i) => `column ${i + 1}`);
  const heading = first.cells[named?.time ?? -1] ?? '';
  const headings = named ? first.cells : numbered;
  const mapping = named ?? columnsByContent(rows.map((r) => r.cells));
  return {
    headings,
    rows: named ? rest : rows,
    mapping,
    clock: /utc|gmt|\bz\b/i.test(heading) ? 'utc' : 'site',
    order: 'dmy',
    use: useByPlaces(headings, mapping),
    date,
    above: Math.max(0, head),
  };
}

/** Where the headings stand: the first row that names two columns, or the first of all if it names one; -1 for none. */
function headingRow(rows: readonly { readonly cells: readonly string[] }[]): number {
  const roles = rows.slice(0, titleRows).map(({ cells }) => {
    const named = columnsByName(cells);
    return named === null ? 0 : Object.values(named).filter((column) => column !== null).length;
  });
  const two = roles.findIndex((count) => count > 1);
  return two >= 0 ? two : roles[0] === 1 ? 0 : -1;
}

/** Types of a list in the order in which they come, for those that no subject is known by. */
export const typesOf = ({ movements }: Pick<ListReading, 'movements'>): string[] => [
  ...new Set(movements.map((m) => m.type).filter((type) => type !== '')),
];

/**
 * Reads the rows of a list. Times come out by the clock of the airfield's zone; a list of one day that passes midnight
 * goes on with the next; what is there twice or was there before (`present`) is left out. `day`: for the offset of UTC times without a date.
 */
export function readList(
  layout: ListLayout,
  zone: string,
  day: string,
  home: readonly string[],
  present: readonly Movement[],
): ListReading {
  const movements: Omit<Movement, 'id'>[] = [];
  const left: { row: number; reason: string }[] = [];
  const remarks: string[] = [];
  const keys = new Set(present.map(movementKey));
  let [daysOn, before, repeated, byPlaces] = [0, -1, 0, 0];
  for (const { row, cells, starred = false } of layout.rows) {
    const at = (index: number | null) => (index === null ? '' : (cells[index] ?? '').trim());
    const when = readWhen(at(layout.mapping.time), at(layout.mapping.date), layout);
    if (typeof when === 'string') {
      left.push({ row, reason: when });
      continue;
    }
    const said = readUse(at(layout.mapping.use), at(layout.mapping.from), at(layout.mapping.to), home);
    const use = said ?? layout.use;
    if (use === null) {
      left.push({ row, reason: 'it says neither arrival nor departure' });
      continue;
    }
    if (said === null && use === useByPlaces(layout.headings, layout.mapping)) byPlaces++;
    // More than half a day back is the next day; a few minutes are a list that is not quite in order.
    if (when.date === null && before - when.minute > 720) {
      daysOn++;
      if (layout.date !== null)
        remarks.push(
          `The list passes midnight at row ${row}: it goes on with ${datePlus(layout.date, daysOn)}.`,
        );
    }
    if (when.date === null) before = when.minute;
    const date = when.date ?? (layout.date === null ? null : datePlus(layout.date, daysOn));
    const local = inZone(date, when.minute, when.offset, layout.clock, zone, day);
    const movement = {
      ...local,
      use,
      type: at(layout.mapping.type).toUpperCase(),
      subject: null,
      flight: at(layout.mapping.flight),
      place: placeOf(use, at(layout.mapping.from), at(layout.mapping.to)),
      runway: at(layout.mapping.runway)
        .replace(/^\D+(?=\d)/, '')
        .toUpperCase(),
      starred,
    };
    const key = movementKey(movement);
    if (keys.has(key)) repeated++;
    else {
      keys.add(key);
      movements.push(movement);
    }
  }
  const above = layout.above ?? 0;
  if (above > 0)
    remarks.push(
      `${above === 1 ? 'A line' : `${above} lines`} above the headings ${above === 1 ? 'is' : 'are'} passed over.`,
    );
  if (byPlaces > 0)
    remarks.push(
      layout.use === 'arrival'
        ? 'The list tells only where from: its rows are taken as arrivals.'
        : 'The list tells only where to: its rows are taken as departures.',
    );
  if (repeated > 0) remarks.push(`${repeated} that are there already, or twice in the list, are left out.`);
  if (movements.some((m) => m.date === null)) remarks.push('Movements without a date are due every day.');
  return { movements, left, remarks };
}

interface When {
  readonly date: string | null;
  readonly minute: number;
  readonly offset: number | null;
}

/** Date, if there is one, and minute of the day; or why there is none. */
function readWhen(time: string, date: string, { order }: ListLayout): When | string {
  const stamp = readStamp(time, order);
  const iso = (s: NonNullable<typeof stamp>) =>
    `${s.year}-${String(s.month).padStart(2, '0')}-${String(s.day).padStart(2, '0')}`;
  if (stamp && /\d[T\s]\d/.test(time))
    return { date: iso(stamp), minute: stamp.hour * 60 + stamp.minute, offset: stamp.offset };
  const minute = readClock(time);
  if (minute === null) return `"${time}" is no time of day`;
  const offset = /(Z|UTC)$/i.test(time) ? 0 : null;
  if (date === '') return { date: null, minute, offset };
  const day = readStamp(date, order);
  return day ? { date: iso(day), minute, offset } : `"${date}" is no date`;
}

function readUse(text: string, from: string, to: string, home: readonly string[]): Movement['use'] | null {
  const said = useOf(text);
  if (said) return said;
  const here = (place: string) => place !== '' && home.includes(place.toUpperCase());
  if (here(to) && !here(from)) return 'arrival';
  return here(from) && !here(to) ? 'departure' : null;
}

/** Where from for an arrival, where to for a departure; lists with one column say it there. */
const placeOf = (use: Movement['use'], from: string, to: string): string =>
  use === 'arrival' ? from || to : to || from;

function inZone(
  date: string | null,
  minute: number,
  offset: number | null,
  clock: ListLayout['clock'],
  zone: string,
  day: string,
): { date: string | null; time: string } {
  const time = clockOf(minute);
  if (offset === null && clock === 'site') return { date, time };
  const stamp = readStamp(`${date ?? day} ${time}`, 'dmy');
  if (!stamp) return { date, time };
  const instant = stampInUtc({ ...stamp, offset: offset ?? 0 });
  return { date: date === null ? null : dateAt(instant, zone), time: clockAt(instant, zone) };
}
