import type { Contents } from '../survey/contents';
import type { Position } from '../survey/document';
import type { StandingSpot } from '../survey/schema/standing-spot';
import type { WindRecord } from '../survey/schema/wind-record';
import { mapped } from '../figures/geometry/earth';
import type { EndUse } from '../figures/flown/end-uses';
import { pastUse } from '../figures/flown/past-use';
import { outlookOf } from '../figures/outlook';
import { groundAt } from '../figures/sight/ground';
import type { ElevationGrid } from '../figures/sight/terrain';
import { GroundPlan, type GroundThere } from './ground/ground-plan';
import { overYear, type OverYear } from './over-year';
import { planSweep, type SweepAsked } from './plan';
import { leastFocals, linesFor, reachLines, type ReachLine } from './reach-lines';
import { sightShares } from './sight-shares';

/** A place, m above the ground of the eye, and m above mean sea level of the ground where that is stated. */
export interface PlaceForYear {
  readonly position: Position;
  readonly ground: number | null;
  readonly eyeHeight: number;
  /** Of the survey, whose access counts; null for one that is proposed. */
  readonly spot: StandingSpot | null;
}

/** What is asked besides the sweep itself, one answer each: name -> [request, answer]. */
export interface Errands {
  /** What a place is, for those who stand. */
  ground: [
    { readonly contents: Contents; readonly asked: SweepAsked; readonly position: Position },
    GroundThere,
  ];
  /** Lines of equal focal length for a path (PathRef.path). */
  reach: [
    {
      readonly contents: Contents;
      readonly asked: SweepAsked;
      readonly path: string;
      readonly terrain: ElevationGrid | null;
    },
    readonly ReachLine[],
  ];
  /** Share of its best path that is in sight, cell by cell. */
  inSight: [
    { readonly contents: Contents; readonly asked: SweepAsked; readonly terrain: ElevationGrid | null },
    Float64Array,
  ];
  /** Good minutes month by month. `step`: s. */
  year: [
    {
      readonly contents: Contents;
      readonly record: WindRecord | null;
      /** What recorded flights used. */
      readonly uses: readonly EndUse[];
      readonly places: readonly PlaceForYear[];
      readonly at: number;
      readonly step: number;
      readonly terrain: ElevationGrid | null;
    },
    OverYear,
  ];
}
/** Points of a line that is worth drawing. */
const fewestPoints = 16;

export type ErrandName = keyof Errands;

export type Errand = {
  [N in ErrandName]: { readonly id: number; readonly name: N; readonly body: Errands[N][0] };
}[ErrandName];
export type ErrandAnswer =
  | { [N in ErrandName]: { readonly id: number; readonly name: N; readonly body: Errands[N][1] } }[ErrandName]
  | { readonly id: number; readonly name: 'failed'; readonly body: string };

/** Runs one errand. What it cannot answer is told in words. */
export async function runErrand(errand: Errand): Promise<ErrandAnswer> {
  const { id } = errand;
  try {
    return await answered(errand);
  } catch (error) {
    return { id, name: 'failed', body: error instanceof Error ? error.message : String(error) };
  }
}

async function answered(errand: Errand): Promise<ErrandAnswer> {
  const { id, name } = errand;
  switch (name) {
    case 'ground': {
      const { contents, asked, position } = errand.body;
      // Where it lies is the same with any heights.
      const { area, instants } = planned(contents, asked, null);
      const plan = new GroundPlan(contents, area, instants[0] ?? asked.at);
      return { id, name, body: plan.ofPlace(...mapped(area.frame, position)) };
    }
    case 'reach': {
      const { contents, asked, path: wanted, terrain } = errand.body;
      const { area, paths } = planned(contents, asked, terrain);
      const path = paths.find(({ ref }) => ref.path === wanted);
      if (!path) return { id, name, body: [] };
      const focals = leastFocals(contents, path, area, terrain, asked.at);
      const lines = linesFor(contents, outlookOf(contents, terrain).reach.usableTo);
      const found = await reachLines(focals, area, lines);
      // Along the path itself cells ahead of a sample and beside it alternate: rings of a few cells say nothing.
      const long = found.map((line) => ({
        ...line,
        lines: line.lines.filter((l) => l.length > fewestPoints),
      }));
      return { id, name, body: long };
    }
    case 'inSight': {
      const { contents, asked, terrain } = errand.body;
      return { id, name, body: sightShares(contents, planned(contents, asked, terrain), terrain) };
    }
    case 'year': {
      const { contents, record, uses, places, at, step, terrain } = errand.body;
      const { runways, fieldElevation, around } = outlookOf(contents, terrain);
      const eyes = places.map(({ position, ground, eyeHeight, spot }) => ({
        position,
        spot,
        eye:
          (ground ?? groundAt(position, runways, fieldElevation, around?.terrain ?? null).elevation) +
          eyeHeight,
      }));
      const past = pastUse(contents, record, uses);
      if (!past) throw new Error('nothing tells how often each end is in use');
      return { id, name, body: overYear(contents, past, eyes, at, step, terrain) };
    }
  }
}

function planned(contents: Contents, asked: SweepAsked, terrain: ElevationGrid | null) {
  const plan = planSweep(contents, asked, terrain);
  if (!plan.ok) throw new Error(plan.reason);
  return plan.plan;
}
