import type { ElevationGrid } from '../figures/sight/terrain';
import { everyPath } from '../figures/traffic/every-path';
import type { PathFilter } from '../figures/traffic/paths';
import type { EndsInUse } from '../figures/traffic/in-use';
import type { Derived } from './derived.svelte';
import type { Contents } from '../survey/contents';
import type { SweepAsked } from '../sweep/plan';
import { lightHours, type Hours } from '../sweep/instants';

/** Which hours of the day are looked at. */
export type HourChoice = 'day' | 'morning' | 'afternoon' | 'moments';

/** What a question is made of, besides what the survey says. */
export interface PlaceInput {
  readonly contents: Contents;
  readonly inUse: Pick<EndsInUse, 'arrivals' | 'departures'>;
  readonly hours: HourChoice;
  readonly instantA: number;
  readonly instantB: number;
  readonly terrain: ElevationGrid | null;
}

/** s from instant to instant. */
const step = 900;

/** The question that stands behind the view: the paths of the ends in use in the hours that were chosen. */
export function placeQuestion({
  contents,
  inUse,
  hours,
  instantA,
  instantB,
  terrain,
}: PlaceInput): SweepAsked {
  const has = (list: EndsInUse['arrivals'], runway: string | null, end: number | null) =>
    list.some((e) => e.runway === runway && e.end === end);
  const flown: PathFilter = (kind, runway, end) =>
    kind === 'arrival' || kind === 'pattern'
      ? has(inUse.arrivals, runway, end)
      : kind === 'departure'
        ? has(inUse.departures, runway, end)
        : kind === 'pass' && (runway === null || has(inUse.arrivals, runway, end));
  return {
    names: everyPath(contents, flown, terrain).map(({ ref }) => ref.path),
    wind: null,
    configuration: 0,
    at: instantA,
    side: null,
    cell: null,
    step,
    hours: hoursOf(hours, contents, instantA, instantB),
  };
}

/** What a question follows from. */
export type Grounds = Pick<Derived, 'contents' | 'day' | 'flow' | 'terrain'>;

/** The question at hand. `contents`: those that it hangs on, where they are older than the present ones and say the same. */
export const questionOf = (
  { contents: present, day, flow, terrain }: Grounds,
  hours: HourChoice,
  contents = present,
): SweepAsked =>
  placeQuestion({
    contents,
    inUse: flow.inUse,
    hours,
    instantA: day.instantA,
    instantB: day.instantB,
    terrain,
  });

/** One instant only: what the light is then. */
export const lightQuestion = (asked: SweepAsked, at: number): SweepAsked => ({
  ...asked,
  hours: { from: at, to: at + 1000 },
  step: 1,
});

function hoursOf(choice: HourChoice, contents: Contents, a: number, b: number): Hours {
  const day = lightHours(contents, a);
  const noon = (day.from + day.to) / 2;
  switch (choice) {
    case 'day':
      return day;
    case 'morning':
      return { from: day.from, to: noon };
    case 'afternoon':
      return { from: noon, to: day.to };
    case 'moments':
      // An instant stands for the quarter of an hour that follows it: the last one ends with the later moment.
      return { from: Math.min(a, b), to: Math.max(a, b, Math.min(a, b) + step * 1000) };
  }
}

/**
 * What a question hangs on, of a survey: the same list while an edit leaves all of it alone, as one of names of spots,
 * of movements or of the plan does.
 */
export const groundsOf = (contents: Contents): readonly unknown[] => [
  contents.site,
  contents.kit,
  contents.body,
  contents.subject,
  contents.rules,
  contents.sky,
  contents.runways,
  contents.aprons,
  contents.taxiRoutes,
  contents.obstacles,
  contents.noGoAreas,
  contents.groundUses,
  contents.displayLines,
  contents.crowdLines,
  contents.helipads,
  contents.winchRuns,
  // Where they stand and who lets people in, but not their names.
  ...contents.spots
    .filter(({ access: { status, hours, permission } }) => status !== 'unknown' || hours || permission)
    .flatMap(({ position, access }) => [position, access]),
];
