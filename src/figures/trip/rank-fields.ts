import type { FieldDay } from './field-day';

/** Something that is compared, with the minutes of the way there where they are known. */
export interface Comparable {
  readonly day: Pick<FieldDay, 'goodMinutes' | 'goodPasses'>;
  readonly way: number | null;
}

export interface Ranked<T> {
  /** Most good passes first; of as many the shorter way first. Empty where fewer than two can be told apart. */
  readonly ranked: readonly T[];
  /** In the order in which they were chosen: nobody knows how much flies there. */
  readonly unranked: readonly T[];
}

/**
 * Which field is worth more. Only good passes count: good minutes alone would put a strip on which nothing flies before
 * an airport. What has no figure of traffic is therefore in no order at all, neither before nor behind the others.
 */
export function rankFields<T extends Comparable>(fields: readonly T[]): Ranked<T> {
  const known = fields.filter(({ day }) => day.goodPasses !== null);
  const unranked = fields.filter(({ day }) => day.goodPasses === null);
  if (known.length < 2) return { ranked: [], unranked: [...fields] };
  const passes = ({ day }: T) => Math.round(day.goodPasses ?? 0);
  const ranked = known.toSorted(
    (a, b) => passes(b) - passes(a) || (a.way ?? Infinity) - (b.way ?? Infinity) || 0,
  );
  return { ranked, unranked };
}
