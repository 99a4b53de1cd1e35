import type { Contents } from '../survey/contents';
import type { Body, Kit } from '../survey/schema/kit';
import type { Runway } from '../survey/schema/runway';
import type { StandingSpot } from '../survey/schema/standing-spot';
import type { Subject } from '../survey/schema/subject';
import { isTimeZone, monthAt, withinMonth } from '../time/local-time';
import { acosDeg, DEG, wrap360 } from './geometry/angles';
import { alongRunway } from './geometry/along-runway';
import { compassPoint } from './geometry/compass';
import { along, frameAt, radiusAlong } from './geometry/earth';
import { sunAt } from './light/sun';
import {
  aspectAt,
  bestIndex,
  closestIndex,
  cosPhaseAt,
  elevationAt,
  flankLitAt,
  glareAt,
  lightAngleAt,
  lightClassAt,
  scoreAt,
  sunNearAt,
  sunThere,
  type SunThere,
} from './light-on-view';
import { equivalent35, framingOf, type Framing } from './optics/framing';
import { reachOf, type Reach } from './optics/reach';
import { groundUnder } from './sight/ground';
import { grounded, terrainOf } from './sight/grounded';
import { inTheWay, openGround, type InTheWay } from './sight/hidden';
import type { SightLines } from './sight/sight-lines';
import { siteFrame } from './sight/site-frame';
import { seasons, sightFrom, sunBehind, targetsAlong } from './sight/spot-sight';
import { surroundings, type Surroundings } from './sight/surroundings';
import type { ElevationGrid } from './sight/terrain';
import { remembered } from './remembered';
import { fieldElevation, type Path } from './traffic/paths';
import type { PathFromSpot, RunwayFromSpot, Sample, Sector, SpotFigures, Sun } from './types';
import { View, type Eye } from './view';
import { stillView, type StillView } from './when/still-view';

/** What a spot is looked at with, and the runways round it: the same for every spot of a survey. */
export interface Outlook {
  readonly runways: readonly Runway[];
  /** m above mean sea level. */
  readonly fieldElevation: number;
  readonly framing: Framing;
  readonly reach: Reach;
  /** What can stand in the way; null on open ground. */
  readonly around: Surroundings | null;
  /** IANA zone whose months leaves follow. */
  readonly timeZone: string;
}

const rememberedOutlook = remembered(
  (
    subject: Subject,
    runways: readonly Runway[],
    elevation: number,
    body: Body,
    kit: Kit,
    around: Surroundings | null,
    timeZone: string,
  ): Outlook => ({
    runways,
    fieldElevation: elevation,
    framing: framingOf(subject, body, kit.fill),
    reach: reachOf(kit),
    around,
    timeZone,
  }),
);

/**
 * `terrain`: the ground's heights, null where only the runways' are known. The same object as long as nothing of it has
 * changed, each subject for itself: what is due may be another one.
 */
export function outlookOf(contents: Contents, terrain: ElevationGrid | null = null): Outlook {
  const { subject, body, kit } = contents;
  const { runways, site } = grounded(contents, terrain);
  const elevation = fieldElevation({ runways, site });
  const frame = siteFrame(site.reference);
  const ground = terrainOf(contents, terrain);
  const around = surroundings(contents.obstacles, runways, elevation, frame, ground);
  return rememberedOutlook(subject, runways, elevation, body, kit, around, site.timeZone);
}

/** The eye of somebody at a spot. `elevation`: m above mean sea level of the eye. */
interface EyeThere extends Eye {
  readonly elevation: number;
}

function eyeAt(spot: StandingSpot, ground: number): EyeThere {
  const frame = frameAt(spot.position);
  const elevation = ground + spot.eyeHeight;
  return { frame, elevation, point: along(frame.origin, frame.up, elevation) };
}

/** Scratch space of the view under work: nothing of it outlives a call. */
const scratch = new View();

/**
 * All figures of a spot for some paths, once for each instant (ms since 1970, UTC). What does not depend on the
 * sun is computed once.
 */
export function spotFigures(
  spot: StandingSpot,
  paths: readonly Path[],
  outlook: Outlook,
  instants: readonly number[],
): SpotFigures[] {
  const { around } = outlook;
  const ground = groundUnder(spot, outlook.runways, outlook.fieldElevation, around?.terrain);
  const eye = eyeAt(spot, ground.elevation);
  const suns = instants.map((instant) => sunAt(spot.position, instant));
  const hiders = suns.map((): string | null => null);
  const runways = runwaysFrom(spot, outlook.runways);
  const seen = suns.map((): PathFromSpot[] => []);
  const look = (sight: SightLines | null, which: readonly number[]) => {
    const there = which.map((i) => [i, sunThere(suns[i] as Sun, hiders[i] !== null)] as const);
    for (const path of paths) {
      if (around) sight?.look(targetsAlong(path, outlook.framing, around));
      scratch.look(path.samples, eye, outlook.framing, sight);
      const closest = closestIndex(scratch);
      const usable = usableRuns(scratch, outlook.reach);
      const way = sight && around ? inTheWay(path.samples, sight, around) : openGround;
      for (const [i, sun] of there)
        seen[i]?.push(pathFromSpot(path, closest, usable, way, sun, eye, outlook));
    }
  };
  if (!around) look(null, [...suns.keys()]);
  else
    for (const { does, instants: which } of seasons(around, outlook.timeZone, instants)) {
      const up = which.map((i) => suns[i] as Sun);
      const sight = sightFrom(around, does, spot.position, eye, paths, outlook.framing, up);
      for (const i of which) hiders[i] = sunBehind(sight, suns[i] as Sun, eye, around);
      look(sight, which);
    }
  return suns.map((sun, i) => ({
    id: spot.id,
    name: spot.name,
    sun,
    ground: ground.elevation,
    groundFrom: ground.from,
    sunHiddenBy: hiders[i] ?? null,
    runways,
    paths: seen[i] ?? [],
  }));
}

const rememberedFigures = remembered(spotFigures);

/** `spotFigures` of every spot, computed only for those that something has changed for. */
export function allSpotFigures(
  contents: Contents,
  paths: readonly Path[],
  instants: readonly number[],
  terrain: ElevationGrid | null = null,
): SpotFigures[][] {
  const outlook = outlookOf(contents, terrain);
  return contents.spots.map((spot) => rememberedFigures(spot, paths, outlook, instants));
}

/**
 * The paths as seen from a spot, kept to be asked about many suns: light through a day and a year. Leaves hide as in the
 * month of `instant`.
 */
export function stillViewsOf(
  spot: StandingSpot,
  paths: readonly Path[],
  outlook: Outlook,
  instant: number,
): StillView[] {
  const { framing, reach } = outlook;
  const { eye, look } = lookingFrom(spot, paths, outlook, instant);
  return paths.map((path) => {
    scratch.look(path.samples, eye, framing, look(path).sight);
    return stillView(scratch, framing, reach);
  });
}

const rememberedViews = remembered(stillViewsOf);

/** `stillViewsOf` a spot of the survey, computed only when something has changed for it. */
export function keptViews(
  spot: StandingSpot,
  paths: readonly Path[],
  contents: Contents,
  instant: number,
  terrain: ElevationGrid | null = null,
): StillView[] {
  const outlook = outlookOf(contents, terrain);
  const { around, timeZone } = outlook;
  // Leaves go by the month; without any all instants are alike.
  const zone = isTimeZone(timeZone) ? timeZone : 'UTC';
  const at = around?.leafy ? withinMonth(monthAt(instant, zone)) : 0;
  return rememberedViews(spot, paths, outlook, at);
}

/** One path from a spot in each of the twelve months: the same twelve times where no leaves come and go. */
export function viewsByMonth(spot: StandingSpot, path: Path, outlook: Outlook): StillView[] {
  const of = (month: number) => stillViewsOf(spot, [path], outlook, withinMonth(month))[0] as StillView;
  const months = Array.from({ length: 12 }, (_, i) => i + 1);
  if (outlook.around?.leafy) return months.map(of);
  const one = of(1);
  return months.map(() => one);
}

/** An eye at a spot, and how to look from there along one of these paths at an instant. */
function lookingFrom(spot: StandingSpot, paths: readonly Path[], outlook: Outlook, instant: number) {
  const { around, framing, timeZone } = outlook;
  const ground = groundUnder(spot, outlook.runways, outlook.fieldElevation, around?.terrain);
  const eye = eyeAt(spot, ground.elevation);
  const sun = sunAt(spot.position, instant);
  const [season] = around ? seasons(around, timeZone, [instant]) : [];
  if (!around || !season) return { eye, sun: sunThere(sun), look: () => ({ sight: null, way: openGround }) };
  const sight = sightFrom(around, season.does, spot.position, eye, paths, framing, [sun]);
  const look = (path: Path) => {
    sight.look(targetsAlong(path, framing, around));
    return { sight, way: inTheWay(path.samples, sight, around) };
  };
  return { eye, sun: sunThere(sun, sunBehind(sight, sun, eye, around) !== null), look };
}

/** Needed focal length in mm at every sample of a path, infinite where it is out of the kit's reach, NaN where it is hidden. */
export function focalLengthsAlong(path: Path, seen: PathFromSpot | undefined): Float64Array {
  const focal = new Float64Array(path.samples.count).fill(Infinity);
  for (const run of seen?.sector.runs ?? []) focal.set(run.focalLengths, run.from);
  for (const { first, last } of seen?.hidden ?? []) focal.fill(NaN, first, last + 1);
  return focal;
}

/** The sample of a path nearest to a station, as seen from a spot. */
export function inspectPath(
  spot: StandingSpot,
  path: Path,
  station: number,
  outlook: Outlook,
  instant: number,
): Sample {
  const { eye, sun, look } = lookingFrom(spot, [path], outlook, instant);
  const { sight, way } = look(path);
  scratch.look(path.samples, eye, outlook.framing, sight);
  const { station: stations, count } = path.samples;
  let index = 0;
  for (let i = 1; i < count; i++) {
    if (Math.abs((stations[i] as number) - station) < Math.abs((stations[index] as number) - station))
      index = i;
  }
  return sampleAt(path, index, sun, way, eye, outlook);
}

/** First and last index of each run of neighbouring usable samples. */
type Runs = readonly (readonly [from: number, to: number])[];

function usableRuns(view: View, reach: Reach): Runs {
  const runs: [number, number][] = [];
  for (let i = 0; i < view.count; i++) {
    if (view.leastFocalAt(i) > reach.usableTo || !(view.focalAt(i) <= reach.usableTo)) continue;
    const last = runs[runs.length - 1];
    if (last && last[1] === i - 1) last[1] = i;
    else runs.push([i, i]);
  }
  return runs;
}

function pathFromSpot(
  path: Path,
  closest: number,
  runs: Runs,
  way: InTheWay,
  sun: SunThere,
  eye: EyeThere,
  outlook: Outlook,
): PathFromSpot {
  const { share } = path.samples;
  let usable = 0;
  let visible = 0;
  let glaring = 0;
  const through = new Set<string>();
  const sector: ReturnType<typeof emptyRun>[] = [];
  for (const [from, to] of runs) {
    let run: ReturnType<typeof emptyRun> | null = null;
    for (let i = from; i <= to; i++) {
      const inSight = scratch.sightAt(i);
      usable += share[i] as number;
      if (inSight === 0) {
        run = null;
        continue;
      }
      if (!run) sector.push((run = emptyRun(i)));
      const glare = glareAt(scratch, i, sun, outlook.framing, outlook.reach);
      visible += inSight * (share[i] as number);
      if (glare) glaring += share[i] as number;
      run.bearings.push(bearingAt(scratch, i));
      run.lightAngles.push(lightAngleAt(scratch, i, sun));
      run.glare.push(glare);
      run.focalLengths.push(scratch.focalAt(i));
      const mesh = way.throughAt(i);
      if (mesh !== null) through.add(mesh);
    }
  }
  return {
    ref: path.ref,
    closest: sampleAt(path, closest, sun, way, eye, outlook),
    best: sampleAt(path, bestIndex(scratch, sun, outlook.reach), sun, way, eye, outlook),
    visibleShare: usable > 0 ? visible / usable : null,
    glareShare: usable > 0 ? glaring / usable : null,
    hidden: way.stretches,
    through: [...through],
    sector: { runs: sector } satisfies Sector,
  };
}

const emptyRun = (from: number) => ({
  from,
  bearings: [] as number[],
  lightAngles: [] as number[],
  glare: [] as boolean[],
  focalLengths: [] as number[],
});

const bearingAt = (view: View, i: number): number =>
  wrap360(Math.atan2(view.east[i] as number, view.north[i] as number) * DEG);

/** Arrays have NaN for what is not known. */
const known = (value: number): number | null => (Number.isNaN(value) ? null : value);

/** Every figure of the sample `i` of the view at hand. */
function sampleAt(
  path: Path,
  i: number,
  sun: SunThere,
  way: InTheWay,
  eye: EyeThere,
  { framing, reach }: Outlook,
): Sample {
  const [east, north, up] = [scratch.east[i] as number, scratch.north[i] as number, scratch.up[i] as number];
  const out = Math.hypot(east, north);
  const radius = out > 0 ? radiusAlong(eye.frame, east / out, north / out) : eye.frame.normalRadius;
  const focal = scratch.focalAt(i);
  const focalLength = Number.isNaN(focal) ? null : focal;
  return {
    station: path.samples.station[i] as number,
    height: path.samples.height[i] as number,
    groundRange: radius * Math.atan2(out, radius + eye.elevation + up),
    slantRange: scratch.range[i] as number,
    bearing: bearingAt(scratch, i),
    elevation: elevationAt(scratch, i),
    aspect: aspectAt(scratch, i),
    speed: known(path.samples.speed[i] as number),
    focalLength,
    focalLength35: focalLength === null ? null : equivalent35(focalLength, framing),
    lightAngle: lightAngleAt(scratch, i, sun),
    phaseAngle: acosDeg(cosPhaseAt(scratch, i, sun)),
    flankLit: flankLitAt(scratch, i, sun),
    light: lightClassAt(scratch, i, sun),
    glare: glareAt(scratch, i, sun, framing, reach),
    sunNear: sunNearAt(scratch, i, sun, framing, reach),
    hiddenBy: way.byAt(i),
    score: scoreAt(scratch, i, sun, reach),
  };
}

/** m off a centreline under which a spot is on neither side. */
const onTheLine = 0.5;

function runwaysFrom(spot: StandingSpot, runways: readonly Runway[]): RunwayFromSpot[] {
  const out: RunwayFromSpot[] = [];
  for (const runway of runways) {
    const place = alongRunway(runway, spot.position);
    if (!place) continue;
    const side = Math.abs(place.offset) < onTheLine ? null : place.offset > 0 ? 'right' : 'left';
    out.push({
      id: runway.id,
      centrelineDistance: Math.abs(place.offset),
      side,
      compassSide: side === null ? null : compassPoint(place.azimuth + (side === 'right' ? 90 : -90)),
      station: place.station,
    });
  }
  return out;
}
