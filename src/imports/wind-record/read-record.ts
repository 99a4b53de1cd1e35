import { isoInstant } from '../../time/local-time';
import {
  MonthHours,
  readClock,
  readStamp,
  stampInUtc,
  type DateOrder,
  type Stamp,
} from '../../time/read-stamp';
import type { WindRecord } from '../../survey/schema/wind-record';
import { metresPerSecondPer, type SpeedUnit } from '../../units/speed';
import { readCsv } from '../tables/csv';
import { csvPieces } from '../tables/csv-pieces';
import { coverIn, skyColumns } from './cover';
import { guessColumns, type Mapping } from './columns';
import { Tally, type Observation } from './tally';

/** What is known of a table before it is read: shown to the user, who may change all of it. */
export interface RecordLayout {
  readonly delimiter: string;
  /** Names of the columns, as the first row has them. */
  readonly headings: readonly string[];
  readonly mapping: Mapping;
  /** Null until the user has said it: the table names no unit. */
  readonly unit: SpeedUnit | null;
  /** Times without an offset of their own: UTC, or by the airfield's clock. */
  readonly clock: 'utc' | 'site';
  readonly order: DateOrder;
  /** The order of day and month cannot be told from the first rows. */
  readonly orderUnsure: boolean;
}

export interface RecordReading {
  readonly record: WindRecord;
  /** The first of the rows that are left out, with the reason. */
  readonly left: readonly { readonly row: number; readonly reason: string }[];
  readonly leftCount: number;
  /** Rows of an instant that was there already. */
  readonly repeated: number;
}

const withoutComments = (text: string) =>
  text.replace(/^\ufeff/, '').replace(/^(?:[ \t]*(?:#|\/\/)[^\n]*(?:\n|$))+/, '');
const shownLeft = 100;

/** Looks at the head of a table; null for one without rows. */
export function recordLayout(text: string): RecordLayout | null {
  const head = withoutComments(text.slice(0, 20_000));
  const { rows, delimiter } = readCsv(
    head.slice(0, head.length < 15_000 ? undefined : head.lastIndexOf('\n')),
  );
  const [first, ...rest] = rows;
  if (!first || rest.length === 0) return null;
  const { mapping, unit } = guessColumns(first.cells);
  const dates = rest.map(({ cells }) =>
    /^(\d{1,2})[-/.](\d{1,2})[-/.]\d{4}/.exec(cells[mapping.time ?? 0] ?? ''),
  );
  const over12 = (part: 1 | 2) => dates.some((d) => Number(d?.[part] ?? 0) > 12);
  const order = over12(2) && !over12(1) ? 'mdy' : 'dmy';
  return {
    delimiter,
    headings: first.cells,
    mapping,
    unit,
    clock: /local|\blt\b/i.test(first.cells[mapping.time ?? 0] ?? '') ? 'site' : 'utc',
    order,
    orderUnsure: dates.some(Boolean) && !over12(1) && !over12(2),
  };
}

/**
 * Reads a table of past winds bit by bit: each step yields the share that is done, the last one returns what was
 * read. Rows that make no sense are left out and counted. `zone`: the airfield's, whose hours the record is by.
 */
export function* readRecord(
  text: string,
  layout: RecordLayout & { readonly unit: SpeedUnit },
  zone: string,
  source: string,
): Generator<number, RecordReading, void> {
  const body = withoutComments(text);
  const tally = new Tally();
  const hours = new MonthHours(zone);
  const sky = layout.mapping.cloud === null ? [] : skyColumns(layout.headings, layout.mapping.cloud);
  const seen = new Set<number>();
  const left: { row: number; reason: string }[] = [];
  /** The row of the headings, as a spreadsheet counts. */
  const head = text.slice(0, text.length - body.length).split('\n').length;
  let [row, leftCount, repeated, first, last] = [head, 0, 0, Infinity, -Infinity];
  const leave = (reason: string) => {
    leftCount++;
    if (left.length < shownLeft) left.push({ row, reason });
  };
  for (const { rows, unclear, end } of csvPieces(body, layout.delimiter)) {
    const unclosed = new Set(unclear);
    for (const [i, cells] of rows.entries()) {
      if (row > head && cells.some((cell) => cell.trim() !== '')) {
        const read = unclosed.has(i) ? 'a quotation mark is not closed' : readRow(cells, layout, sky);
        if (typeof read === 'string') leave(read);
        else {
          const local = layout.clock === 'site' && read.stamp.offset === null;
          const instant = stampInUtc(read.stamp);
          if (seen.has(instant)) repeated++;
          else {
            seen.add(instant);
            first = Math.min(first, instant);
            last = Math.max(last, instant);
            tally.add(
              local ? (read.stamp.month - 1) * 24 + read.stamp.hour : hours.at(instant),
              read.observation,
            );
          }
        }
      }
      row++;
    }
    yield end / body.length;
  }
  const day = (instant: number) => (Number.isFinite(instant) ? isoInstant(instant).slice(0, 10) : null);
  const record = tally.record({ source, from: day(first), to: day(last), timeZone: zone, unread: leftCount });
  return { record, left, leftCount, repeated };
}

interface RowRead {
  readonly stamp: Stamp;
  readonly observation: Observation;
}

/** One row, or why it is left out. */
function readRow(
  cells: readonly string[],
  layout: RecordLayout & { readonly unit: SpeedUnit },
  sky: readonly number[],
): RowRead | string {
  const { mapping } = layout;
  const at = (index: number | null) => (index === null ? '' : (cells[index] ?? '').trim());
  const date = readStamp(at(mapping.time), layout.order);
  if (!date) return `no date and time: "${at(mapping.time)}"`;
  const minute = mapping.clock === null ? null : clockIn(at(mapping.clock));
  if (mapping.clock !== null && minute === null) return `no time of day: "${at(mapping.clock)}"`;
  const stamp = minute === null ? date : { ...date, hour: Math.floor(minute / 60), minute: minute % 60 };
  const knots = metresPerSecondPer[layout.unit] / metresPerSecondPer.kt;
  const speed = numberIn(at(mapping.speed));
  if (speed === null || speed < 0 || speed * knots > 200) return `no speed: "${at(mapping.speed)}"`;
  const gust = numberIn(at(mapping.gust));
  const direction = directionIn(at(mapping.direction));
  if (direction === undefined && speed > 0) return `no direction: "${at(mapping.direction)}"`;
  const speedKt = speed * knots;
  const gustKt = gust !== null && gust > speed && gust * knots < 250 ? gust * knots : null;
  const cover = coverIn(sky.map(at));
  return { stamp, observation: { direction: direction ?? null, speedKt, gustKt, cover } };
}

/** "14:50", "1450", "14". */
const clockIn = (text: string): number | null =>
  /^\d{1,2}$/.test(text) && Number(text) < 24 ? Number(text) * 60 : readClock(text.padStart(4, '0'));

/** A number as loggers write them, with point or comma; null for what stands for "missing". */
function numberIn(text: string): number | null {
  const number = /^[+-]?\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : NaN;
  return Number.isNaN(number) || number >= 999 ? null : number;
}

const points = 'N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW'.split(' ');

/** Degrees, null for variable (990 in some archives), undefined for none. */
function directionIn(text: string): number | null | undefined {
  if (/^(vrb|v|var|variable|990)$/i.test(text)) return null;
  const point = points.indexOf(text.toUpperCase());
  if (point !== -1) return point * 22.5;
  const degrees = numberIn(text.replace(/°$/, ''));
  return degrees !== null && degrees >= 0 && degrees <= 360 ? degrees : undefined;
}
