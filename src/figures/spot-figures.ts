import { atOnce } from '../survey/at-once';
import type { Contents } from '../survey/contents';
import { Memo } from '../survey/memo';
import type { StandingSpot } from '../survey/schema/standing-spot';
import { closestIndex } from './best-in-view';
import { clearSky } from './light/sky';
import { sunAt } from './light/sun';
import { sunThere } from './light/sun-there';
import { outlookOf, type Outlook } from './outlook';
import { Scratch } from './scratch';
import { groundUnder } from './sight/ground';
import { inTheWay, openGround } from './sight/hidden';
import type { SightLines } from './sight/sight-lines';
import { seasons, sightFrom, sunBehind, targetsAlong } from './sight/spot-sight';
import type { ElevationGrid } from './sight/terrain';
import { eyeAt } from './spot/eye-at';
import { partInSight } from './spot/part-in-sight';
import { pathFromSpot } from './spot/path-from-spot';
import { runwaysFrom } from './spot/runways-from';
import { usableRuns } from './spot/usable-runs';
import type { Path } from './traffic/paths';
import type { PathFromSpot, SpotFigures, Sun } from './types';

/**
 * All figures of a spot for some paths, once for each instant (ms since 1970, UTC). What does not depend on the
 * sun is computed once.
 */
export function spotFigures(
  spot: StandingSpot,
  paths: readonly Path[],
  outlook: Outlook,
  instants: readonly number[],
  { view, worth, lines }: Scratch = new Scratch(),
): SpotFigures[] {
  const { around } = outlook;
  const ground = groundUnder(spot, outlook.runways, outlook.fieldElevation, around?.terrain);
  const eye = eyeAt(spot, ground.elevation);
  const suns = instants.map((instant) => sunAt(spot.position, instant));
  const skies = instants.map(outlook.skyAt);
  const hiders = suns.map((): string | null => null);
  const runways = runwaysFrom(spot, outlook.runways);
  const seen = suns.map((): PathFromSpot[] => []);
  const look = (sight: SightLines | null, which: readonly number[]) => {
    const there = which.map((i) => [i, sunThere(suns[i] as Sun, hiders[i] !== null, skies[i])] as const);
    for (const path of paths) {
      if (around) sight?.look(targetsAlong(path, outlook.framing, around));
      view.look(path.samples, eye, outlook.framing, sight);
      worth.look(outlook.reach);
      const closest = closestIndex(view);
      const way = sight && around ? inTheWay(path.samples, sight, around) : openGround;
      const part = partInSight(view, path, usableRuns(view, outlook.reach), way);
      for (const [i, sun] of there)
        seen[i]?.push(pathFromSpot(worth, path, closest, part, way, sun, eye, outlook));
    }
  };
  if (!around) look(null, [...suns.keys()]);
  else
    for (const { does, instants: which } of seasons(around, outlook.timeZone, instants)) {
      const up = which.map((i) => suns[i] as Sun);
      const sight = sightFrom(lines, around, does, spot.position, eye, paths, outlook.framing, up);
      for (const i of which) hiders[i] = sunBehind(sight, suns[i] as Sun, eye, around);
      look(sight, which);
    }
  return suns.map((sun, i) => ({
    id: spot.id,
    name: spot.name,
    sun,
    sky: skies[i] ?? clearSky,
    ground: ground.elevation,
    groundFrom: ground.from,
    sunHiddenBy: hiders[i] ?? null,
    runways,
    paths: seen[i] ?? [],
  }));
}

const kept = new Memo<SpotFigures[]>();

/** `spotFigures` of every spot, computed only for those that something has changed for. */
export const allSpotFigures = (
  contents: Contents,
  paths: readonly Path[],
  instants: readonly number[],
  terrain: ElevationGrid | null,
  scratch: Scratch = new Scratch(),
): SpotFigures[][] => atOnce(lookingFromSpots(contents, paths, instants, terrain, scratch));

/** The same spot by spot. */
export function* lookingFromSpots(
  contents: Contents,
  paths: readonly Path[],
  instants: readonly number[],
  terrain: ElevationGrid | null,
  scratch: Scratch,
): Generator<void, SpotFigures[][]> {
  const outlook = outlookOf(contents, terrain);
  const figures: SpotFigures[][] = [];
  for (const spot of contents.spots) {
    figures.push(
      kept.get([spot, paths, outlook, instants], () => spotFigures(spot, paths, outlook, instants, scratch)),
    );
    yield;
  }
  kept.keepOnly(contents.spots);
  return figures;
}
