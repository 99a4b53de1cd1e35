import type { Contents } from '../../survey/contents';
import type { EndIndex } from '../../survey/schema/runway';
import type { EndRef } from '../../survey/schema/site';
import type { PathFilter } from '../traffic/paths';
import type { PathRef } from '../types';

/** Ends in use over a stretch of time (ms since 1970, `to` excluded). */
export interface FlowSpan {
  readonly from: number;
  readonly to: number;
  readonly arrivals: readonly EndRef[];
  readonly departures: readonly EndRef[];
}

/** Ends that would be in use instead. */
export interface OtherFlow {
  /** Its configuration's name, "" where the survey names none. */
  readonly name: string;
  readonly arrivals: readonly EndRef[];
  readonly departures: readonly EndRef[];
}

const has = (list: readonly EndRef[], runway: string | null, end: EndIndex | null) =>
  list.some((e) => e.runway === runway && e.end === end);

const serves = (
  { arrivals, departures }: OtherFlow | FlowSpan,
  { kind, runway, end }: Pick<PathRef, 'kind' | 'runway' | 'end'>,
) => {
  if (kind === 'arrival' || kind === 'pattern') return has(arrivals, runway, end);
  if (kind === 'departure') return has(departures, runway, end);
  if (kind === 'pass' && runway !== null) return has(arrivals, runway, end) || has(departures, runway, end);
  return kind === 'flight-path' || kind === 'pass';
};

/** Whether a path is flown at an instant. */
export const isFlown = (spans: readonly FlowSpan[], path: PathRef, instant: number): boolean =>
  spans.some((span) => span.from <= instant && instant < span.to && serves(span, path));

/** The paths that are flown in any of the spans: arrivals, departures and what else belongs to their ends, and what belongs to none. */
export const flownPaths =
  (spans: readonly FlowSpan[]): PathFilter =>
  (kind, runway, end) =>
    spans.some((span) => serves(span, { kind, runway, end }));

const sameEnds = (a: readonly EndRef[], b: readonly EndRef[]) =>
  a.length === b.length && a.every((e) => has(b, e.runway, e.end));

const turned = (list: readonly EndRef[]): EndRef[] =>
  list.map(({ runway, end }) => ({ runway, end: end === 0 ? 1 : 0 }));

/**
 * The flows that may come instead of the one at hand: the survey's other configurations in their order; where it names
 * none, the same runways the other way round, closed ends left out.
 */
export function otherFlows(
  { configurations, runways }: Pick<Contents, 'configurations' | 'runways'>,
  now: Pick<OtherFlow, 'arrivals' | 'departures'>,
): OtherFlow[] {
  const open = ({ runway, end }: EndRef) => runways.find((r) => r.id === runway)?.ends[end].closed === false;
  const others = configurations.filter(
    (c) => !sameEnds(c.arrivals, now.arrivals) || !sameEnds(c.departures, now.departures),
  );
  if (others.length > 0)
    return others.map(({ name, arrivals, departures }) => ({ name, arrivals, departures }));
  const round = {
    name: '',
    arrivals: turned(now.arrivals).filter(open),
    departures: turned(now.departures).filter(open),
  };
  return round.arrivals.length + round.departures.length > 0 ? [round] : [];
}
