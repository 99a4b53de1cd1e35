import type { Contents } from '../../survey/contents';
import type { Apron, FlightPath, TaxiRoute } from '../../survey/schema/places';
import type { Position } from '../../survey/document';
import { atOnce } from '../../survey/at-once';
import { Memo } from '../../survey/memo';
import type { EndIndex, Runway } from '../../survey/schema/runway';
import type { Subject } from '../../survey/schema/subject';
import { compassPoint } from '../geometry/compass';
import { groundLine } from '../geometry/earth';
import { grounded, terrainOf } from '../sight/grounded';
import type { ElevationGrid, Terrain } from '../sight/terrain';
import type { PathKind, PathRef } from '../types';
import { arrivalSamples } from './arrival';
import { circuitSamples } from './circuit';
import { departureSamples } from './departure';
import { flightPathSamples } from './flight-path';
import type { Formation } from './formation';
import { lookedAt } from './looked-at';
import { parkedSamples, taxiSamples } from './on-the-ground';
import { endName, endPath } from './end-name';
import { endGeometry } from './runway-geometry';
import type { PathSamples } from './samples';

/** A path of the survey, ready to be looked at. */
export interface Path {
  readonly ref: PathRef;
  /** As people say it: "09 arrivals". */
  readonly name: string;
  readonly samples: PathSamples;
  /** Those that fly it together; the samples are the leader's. */
  readonly formation?: Formation;
}

export const runwayPathKinds = ['arrival', 'departure', 'circuit'] as const;
type RunwayPathKind = (typeof runwayPathKinds)[number];

/** Builds what else is flown, for `pathsOf`: see `otherPaths`. */
export type OtherPaths = (
  contents: Contents,
  wanted: PathFilter,
  elevation: number,
  terrain: Terrain | null,
) => readonly Path[];
const noOthers: OtherPaths = () => [];

/** Which paths somebody wants; runway and end are null for those that belong to none. */
export type PathFilter = (kind: PathKind, runway: string | null, end: EndIndex | null) => boolean;

/** Elevation of the field in m above mean sea level: stated, else the highest runway end, else 0. */
export function fieldElevation(contents: Pick<Contents, 'site' | 'runways'>): number {
  if (contents.site.elevation !== null) return contents.site.elevation;
  const known = contents.runways.flatMap((r) => r.ends.map((e) => e.elevation)).filter((e) => e !== null);
  return known.length > 0 ? Math.max(...known) : 0;
}

/** How many subjects have their paths kept at a time: movements of several types take turns. */
const subjectsKept = 12;
/** Keyed by what the path follows; of past surveys nothing stays. */
const kept = new Memo<readonly Path[]>({ each: subjectsKept * runwayPathKinds.length * 2 });

/** One path of a runway's end, or none. Runways are shared between surveys, so a path is built once until its runway changes. */
const runwayPath = (
  runway: Runway,
  end: EndIndex,
  kind: RunwayPathKind,
  subject: Subject,
  elevation: number,
): readonly Path[] =>
  kept.get([runway, end, kind, subject, elevation], () => {
    const geometry = endGeometry(runway, end, elevation);
    if (!geometry) return [];
    const build = {
      arrival: arrivalSamples,
      departure: departureSamples,
      circuit: (g: typeof geometry, s: Subject) => circuitSamples(g, s, elevation),
    };
    const samples = build[kind](geometry, subject);
    return [{ ref: runwayRef(runway, end, kind), name: `${endName(runway, end)} ${kind}`, samples }];
  });

/** What the path of a runway's end is called (`PathRef.path`), known before it is built. */
export const runwayPathRef = (runway: Runway, end: EndIndex, kind: PathKind): string =>
  `${endPath(runway, end)}/${kind}`;

function runwayRef(runway: Runway, end: EndIndex, kind: RunwayPathKind): PathRef {
  return { path: runwayPathRef(runway, end, kind), kind, runway: runway.id, end };
}

/** A drawn or recorded path, built once until it, the subject or the field's elevation changes. */
const flightPath = (flight: FlightPath, subject: Subject, elevation: number): readonly Path[] =>
  kept.get([flight, subject, elevation], () => {
    const samples = flightPathSamples(flight, subject, elevation);
    const ref: PathRef = { path: flight.id, kind: 'flight-path', runway: null, end: null };
    return samples ? [{ ref, name: flight.name || 'flight path', samples }] : [];
  });

/** The two ways along a taxi route, built once until it, the subject or the ground under it changes. */
const taxiPaths = (
  route: TaxiRoute,
  subject: Subject,
  runways: readonly Runway[],
  elevation: number,
  terrain: Terrain | null,
): readonly Path[] =>
  kept.get([route, subject, runways, elevation, terrain], () =>
    (['forward', 'backward'] as const).flatMap((direction): Path[] => {
      const samples = taxiSamples(route, direction, subject, runways, elevation, terrain);
      const ref: PathRef = { path: `${route.id}/${direction}`, kind: 'taxi', runway: null, end: null };
      return samples ? [{ ref, name: taxiName(route, direction), samples }] : [];
    }),
  );

/** "Taxiway A to the south-east": where the far end lies tells the two ways apart. */
function taxiName({ name, line }: TaxiRoute, direction: 'forward' | 'backward'): string {
  const ends = [line[0], line[line.length - 1]] as [Position, Position];
  const { azimuth } = groundLine(...(direction === 'forward' ? ends : ([ends[1], ends[0]] as const)));
  const way =
    azimuth === null
      ? direction === 'forward'
        ? 'as drawn'
        : 'the other way round'
      : `to the ${compassPoint(azimuth)}`;
  return `${name || 'Taxi route'} ${way}`;
}

const parkedPath = (
  apron: Apron,
  subject: Subject,
  runways: readonly Runway[],
  elevation: number,
  terrain: Terrain | null,
): readonly Path[] =>
  kept.get([apron, subject, runways, elevation, terrain], () => {
    const samples = parkedSamples(apron, subject, runways, elevation, terrain);
    const ref: PathRef = { path: apron.id, kind: 'parked', runway: null, end: null };
    return samples ? [{ ref, name: `Parked on ${apron.name || 'the apron'}`, samples }] : [];
  });

/** Whether a path is flown by its waypoints, rounded by bank and speed: `otherPaths` builds it. */
export const isRounded = ({ source, turnBank }: FlightPath): boolean =>
  source === 'drawn' && turnBank !== null;

/**
 * The survey's paths in order: arrival, departure and circuit of every end that is not closed, then the flight paths,
 * the taxi routes both ways, the aprons. `grid`: the terrain, which what states no height lies on. `others` builds what else is
 * flown, behind them: few surveys have such, so the page loads it when one does. Who has no page to start asks `everyPath`.
 */
export const pathsOf = (
  survey: Contents,
  wanted: PathFilter,
  grid: ElevationGrid | null,
  others: OtherPaths = noOthers,
): Path[] => atOnce(buildingPaths(survey, wanted, grid, others));

/** The same path by path: what has been recorded takes some milliseconds each. */
export function* buildingPaths(
  survey: Contents,
  wanted: PathFilter,
  grid: ElevationGrid | null,
  others: OtherPaths = noOthers,
): Generator<void, Path[]> {
  const contents = grounded(survey, grid);
  const elevation = fieldElevation(contents);
  const paths: Path[] = [];
  for (const runway of contents.runways) {
    for (const end of [0, 1] as const) {
      if (runway.ends[end].closed) continue;
      for (const kind of runwayPathKinds) {
        if (!wanted(kind, runway.id, end)) continue;
        paths.push(...runwayPath(runway, end, kind, contents.subject, elevation));
      }
    }
  }
  for (const flight of lookedAt(contents.flightPaths)) {
    if (isRounded(flight) || !wanted('flight-path', null, null)) continue;
    paths.push(...flightPath(flight, contents.subject, elevation));
    yield;
  }
  const { subject, runways } = contents;
  const terrain = terrainOf(contents, grid);
  if (wanted('taxi', null, null))
    for (const route of contents.taxiRoutes)
      paths.push(...taxiPaths(route, subject, runways, elevation, terrain));
  if (wanted('parked', null, null))
    for (const apron of contents.aprons)
      paths.push(...parkedPath(apron, subject, runways, elevation, terrain));
  paths.push(...others(contents, wanted, elevation, terrain));
  kept.keepOnly([...runways, ...contents.flightPaths, ...contents.taxiRoutes, ...contents.aprons]);
  return paths;
}
