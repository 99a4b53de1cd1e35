import { parseInstant } from '../time/local-time';
import type { Hours } from '../sweep/instants';
import type { Read } from './arguments';

/** What is asked of the sweep; null for what is usual. */
export interface SweepArguments {
  readonly side: number | null;
  readonly cell: number | null;
  readonly hours: Hours | null;
  /** s. */
  readonly step: number | null;
  readonly paths: readonly string[] | null;
  /** A table of past winds (CSV). */
  readonly record: string | null;
  /** Whether every cell is to be printed. */
  readonly cells: boolean;
}

export const sweepOptions = {
  sweep: { type: 'boolean' },
  side: { type: 'string' },
  cell: { type: 'string' },
  from: { type: 'string' },
  to: { type: 'string' },
  step: { type: 'string' },
  paths: { type: 'string' },
  record: { type: 'string' },
  cells: { type: 'boolean' },
} as const;

export const sweepUsage =
  '[--sweep [--side M] [--cell M] [--from ISO --to ISO] [--step SECONDS] [--paths A,B] [--record WINDS.csv] [--cells]]';

type Given = { readonly [K in keyof typeof sweepOptions]?: string | boolean | undefined };

/** Null without --sweep. */
export function readSweep(given: Given): Read<SweepArguments | null> {
  const text = (name: keyof Given): string | null => {
    const value = given[name];
    return typeof value === 'string' ? value : null;
  };
  if (given.sweep !== true) {
    const stray = (Object.keys(sweepOptions) as (keyof Given)[]).find((name) => given[name] !== undefined);
    return stray === undefined
      ? { ok: true, value: null }
      : { ok: false, reason: `--${stray} goes with --sweep only` };
  }
  const numbers: Record<'side' | 'cell' | 'step', number | null> = { side: null, cell: null, step: null };
  for (const name of ['side', 'cell', 'step'] as const) {
    const value = text(name);
    if (value === null) continue;
    const read = value.trim() === '' ? NaN : Number(value);
    if (!(read > 0 && Number.isFinite(read)))
      return { ok: false, reason: `--${name}: expected a number above 0, got "${value}"` };
    numbers[name] = read;
  }
  const [from, to] = [text('from'), text('to')];
  if ((from === null) !== (to === null)) return { ok: false, reason: '--from and --to go together' };
  let hours: Hours | null = null;
  if (from !== null && to !== null) {
    const [a, b] = [parseInstant(from), parseInstant(to)];
    if (a === null)
      return { ok: false, reason: `--from: expected ISO 8601 with Z or an offset, got "${from}"` };
    if (b === null) return { ok: false, reason: `--to: expected ISO 8601 with Z or an offset, got "${to}"` };
    hours = { from: a, to: b };
  }
  const paths =
    text('paths')
      ?.split(',')
      .map((name) => name.trim()) ?? null;
  if (paths?.includes('') === true)
    return {
      ok: false,
      reason: `--paths: expected names with commas between them, as under "paths", got "${text('paths') ?? ''}"`,
    };
  return {
    ok: true,
    value: {
      ...numbers,
      hours,
      paths,
      record: text('record'),
      cells: given.cells === true,
    },
  };
}
