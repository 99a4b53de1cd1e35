import type { Contents } from '../survey/contents';
import type { Body, Kit } from '../survey/schema/kit';
import type { Runway } from '../survey/schema/runway';
import type { StandingSpot } from '../survey/schema/standing-spot';
import type { Subject } from '../survey/schema/subject';
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
  sunThere,
  type SunThere,
} from './light-on-view';
import { equivalent35, framingOf, type Framing } from './optics/framing';
import { reachOf, type Reach } from './optics/reach';
import { groundUnder } from './sight/ground';
import { remembered } from './remembered';
import { fieldElevation, type Path } from './traffic/paths';
import type { PathFromSpot, RunwayFromSpot, Sample, Sector, SectorRun, SpotFigures } from './types';
import { View, type Eye } from './view';
import { stillView, type StillView } from './when/still-view';

/** What a spot is looked at with, and the runways round it: the same for every spot of a survey. */
export interface Outlook {
  readonly runways: readonly Runway[];
  /** m above mean sea level. */
  readonly fieldElevation: number;
  readonly framing: Framing;
  readonly reach: Reach;
}

export const outlookOf = (contents: Contents): Outlook => ({
  runways: contents.runways,
  fieldElevation: fieldElevation(contents),
  framing: framingOf(contents.subject, contents.body, contents.kit.fill),
  reach: reachOf(contents.kit),
});

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
  const ground = groundUnder(spot, outlook.runways, outlook.fieldElevation);
  const eye = eyeAt(spot, ground.elevation);
  const suns = instants.map((instant) => sunThere(sunAt(spot.position, instant)));
  const runways = runwaysFrom(spot, outlook.runways);
  const seen = suns.map((): PathFromSpot[] => []);
  for (const path of paths) {
    scratch.look(path.samples, eye, outlook.framing);
    const closest = closestIndex(scratch);
    const usable = usableRuns(scratch, outlook.reach);
    suns.forEach((sun, i) => seen[i]?.push(pathFromSpot(path, closest, usable, sun, eye, outlook)));
  }
  return suns.map(({ sun }, i) => ({
    id: spot.id,
    name: spot.name,
    sun,
    ground: ground.elevation,
    groundFrom: ground.from,
    runways,
    paths: seen[i] ?? [],
  }));
}

const rememberedFigures = remembered(
  (
    spot: StandingSpot,
    paths: readonly Path[],
    instants: readonly number[],
    runways: readonly Runway[],
    subject: Subject,
    body: Body,
    kit: Kit,
    elevation: number,
  ) => {
    const outlook = {
      runways,
      fieldElevation: elevation,
      framing: framingOf(subject, body, kit.fill),
      reach: reachOf(kit),
    };
    return spotFigures(spot, paths, outlook, instants);
  },
);

/** `spotFigures` of every spot, computed only for those that something has changed for. */
export function allSpotFigures(
  contents: Contents,
  paths: readonly Path[],
  instants: readonly number[],
): SpotFigures[][] {
  const { spots, runways, subject, body, kit } = contents;
  const elevation = fieldElevation(contents);
  return spots.map((spot) =>
    rememberedFigures(spot, paths, instants, runways, subject, body, kit, elevation),
  );
}

/** The paths as seen from a spot, kept to be asked about many suns: light through a day and a year. */
export function stillViewsOf(spot: StandingSpot, paths: readonly Path[], outlook: Outlook): StillView[] {
  const eye = eyeAt(spot, groundUnder(spot, outlook.runways, outlook.fieldElevation).elevation);
  return paths.map((path) => {
    scratch.look(path.samples, eye, outlook.framing);
    return stillView(scratch, outlook.framing, outlook.reach, null);
  });
}

const rememberedViews = remembered(
  (
    spot: StandingSpot,
    paths: readonly Path[],
    runways: readonly Runway[],
    subject: Subject,
    body: Body,
    kit: Kit,
    elevation: number,
  ) =>
    stillViewsOf(spot, paths, {
      runways,
      fieldElevation: elevation,
      framing: framingOf(subject, body, kit.fill),
      reach: reachOf(kit),
    }),
);

/** `stillViewsOf` a spot of the survey, computed only when something has changed for it. */
export function keptViews(spot: StandingSpot, paths: readonly Path[], contents: Contents): StillView[] {
  const { runways, subject, body, kit } = contents;
  return rememberedViews(spot, paths, runways, subject, body, kit, fieldElevation(contents));
}

/** Needed focal length in mm at every sample of a path, infinite where it is out of the kit's reach. */
export function focalLengthsAlong(path: Path, seen: PathFromSpot | undefined): Float64Array {
  const focal = new Float64Array(path.samples.count).fill(Infinity);
  for (const run of seen?.sector.runs ?? []) focal.set(run.focalLengths, run.from);
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
  const eye = eyeAt(spot, groundUnder(spot, outlook.runways, outlook.fieldElevation).elevation);
  scratch.look(path.samples, eye, outlook.framing);
  const { station: stations, count } = path.samples;
  let index = 0;
  for (let i = 1; i < count; i++) {
    if (Math.abs((stations[i] as number) - station) < Math.abs((stations[index] as number) - station))
      index = i;
  }
  return sampleAt(path, index, sunThere(sunAt(spot.position, instant)), eye, outlook);
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
  sun: SunThere,
  eye: EyeThere,
  outlook: Outlook,
): PathFromSpot {
  const { share } = path.samples;
  let usable = 0;
  let glaring = 0;
  const sector: SectorRun[] = [];
  for (const [from, to] of runs) {
    const run = {
      from,
      bearings: [] as number[],
      lightAngles: [] as number[],
      glare: [] as boolean[],
      focalLengths: [] as number[],
    };
    for (let i = from; i <= to; i++) {
      const glare = glareAt(scratch, i, sun, outlook.framing, outlook.reach);
      usable += share[i] as number;
      if (glare) glaring += share[i] as number;
      run.bearings.push(bearingAt(scratch, i));
      run.lightAngles.push(lightAngleAt(scratch, i, sun));
      run.glare.push(glare);
      run.focalLengths.push(scratch.focalAt(i));
    }
    sector.push(run);
  }
  return {
    ref: path.ref,
    closest: sampleAt(path, closest, sun, eye, outlook),
    best: sampleAt(path, bestIndex(scratch, sun, outlook.reach), sun, eye, outlook),
    visibleShare: usable > 0 ? 1 : null,
    glareShare: usable > 0 ? glaring / usable : null,
    sector: { runs: sector } satisfies Sector,
  };
}

const bearingAt = (view: View, i: number): number =>
  wrap360(Math.atan2(view.east[i] as number, view.north[i] as number) * DEG);

/** Every figure of the sample `i` of the view at hand. */
function sampleAt(path: Path, i: number, sun: SunThere, eye: EyeThere, { framing, reach }: Outlook): Sample {
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
    speed: path.samples.speed[i] as number,
    focalLength,
    focalLength35: focalLength === null ? null : equivalent35(focalLength, framing),
    lightAngle: lightAngleAt(scratch, i, sun),
    phaseAngle: acosDeg(cosPhaseAt(scratch, i, sun)),
    flankLit: flankLitAt(scratch, i, sun),
    light: lightClassAt(scratch, i, sun),
    glare: glareAt(scratch, i, sun, framing, reach),
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
