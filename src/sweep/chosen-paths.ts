import type { Contents } from '../survey/contents';
import type { EndRef } from '../survey/schema/site';
import { flowFor } from '../figures/traffic/flow/flow-for';
import { everyPath } from '../figures/traffic/every-path';
import { runwayPathKinds, runwayPathRef, type Path, type PathFilter } from '../figures/traffic/paths';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { Wind } from '../figures/traffic/wind/wind';

/** What decides which paths are looked for: names of paths, else a wind, else the configuration at hand. */
export interface PathsAsked {
  readonly names: readonly string[] | null;
  readonly wind: Wind | null;
  /** Index of the current configuration. */
  readonly configuration: number;
  readonly at: number;
}

/**
 * The paths named; else those of the flow where a wind is given; else those of the current configuration; else all
 * arrivals and departures of open ends; and what else is flown there. `missing`: names that the survey does not have.
 */
export function chosenPaths(
  contents: Contents,
  { names, wind, configuration, at }: PathsAsked,
  terrain: ElevationGrid | null,
): { readonly paths: readonly Path[]; readonly missing: readonly string[] } {
  if (names) return namedPaths(contents, names, terrain);
  const inUse = wind
    ? flowFor(contents, wind, at)
    : (contents.configurations[configuration] ?? contents.configurations[0] ?? null);
  const has = (list: readonly EndRef[], runway: string | null, end: number | null) =>
    list.some((ref) => ref.runway === runway && ref.end === end);
  const flown: PathFilter = (kind, runway, end) => {
    if (kind !== 'arrival' && kind !== 'departure' && kind !== 'pattern' && kind !== 'pass') return false;
    // Displays and helicopters with a course of their own belong to no flow.
    if (!inUse || runway === null) return true;
    return has(kind === 'departure' ? inUse.departures : inUse.arrivals, runway, end);
  };
  return { paths: everyPath(contents, flown, terrain), missing: [] };
}

/** Paths are built one by one, and few are asked for: nothing else is built unless a name is not a runway's. */
function namedPaths(
  contents: Contents,
  names: readonly string[],
  terrain: ElevationGrid | null,
): ReturnType<typeof chosenPaths> {
  const runways = new Map(contents.runways.map((runway) => [runway.id, runway]));
  const ofRunways: PathFilter = (kind, id, end) => {
    const runway = id === null ? undefined : runways.get(id);
    if (!runway || end === null || !runwayPathKinds.some((each) => each === kind)) return false;
    return names.includes(runwayPathRef(runway, end, kind));
  };
  const among = (paths: readonly Path[]) => ({
    paths: paths.filter(({ ref }) => names.includes(ref.path)),
    missing: names.filter((name) => !paths.some(({ ref }) => ref.path === name)),
  });
  const first = among(everyPath(contents, ofRunways, terrain));
  return first.missing.length === 0 ? first : among(everyPath(contents, () => true, terrain));
}
