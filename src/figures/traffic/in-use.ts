import type { Contents } from '../../survey/contents';
import type { EndRef } from '../../survey/schema/site';
import { groundLine } from '../geometry/earth';

export interface EndsInUse {
  readonly arrivals: readonly EndRef[];
  readonly departures: readonly EndRef[];
  /** False when the survey names no configuration and the longest runway's first open end stands in. */
  readonly stated: boolean;
  /** Name of the configuration, "" when assumed. */
  readonly name: string;
}

/** The ends in use under one of the survey's flow configurations (by index, the first when there is no such). */
export function inUse(contents: Pick<Contents, 'configurations' | 'runways'>, index: number): EndsInUse {
  const configuration = contents.configurations[index] ?? contents.configurations[0];
  if (configuration) return { ...configuration, stated: true };
  const assumed = longestOpenEnd(contents);
  const ends = assumed ? [assumed] : [];
  return { arrivals: ends, departures: ends, stated: false, name: '' };
}

function longestOpenEnd({ runways }: Pick<Contents, 'runways'>): EndRef | null {
  let longest: { ref: EndRef; length: number } | null = null;
  for (const runway of runways) {
    const end = runway.ends.findIndex((e) => !e.closed);
    const length = groundLine(runway.line[0], runway.line[1]).distance;
    if (end !== -1 && length > (longest?.length ?? 0))
      longest = { ref: { runway: runway.id, end: end as 0 | 1 }, length };
  }
  return longest?.ref ?? null;
}
