import type { Contents } from '../../survey/contents';
import { Memo } from '../../survey/memo';
import type { Body, Lens } from '../../survey/schema/kit';
import { isLeafy } from '../../survey/schema/sights';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { Subject } from '../../survey/schema/subject';
import { along, minus, positionOf, type Vec3 } from '../geometry/earth';
import { directionOf } from '../light/direction-of';
import { sunAt } from '../light/sun';
import { skyWord } from '../optics/exposure';
import { framingOf, type Hold } from '../optics/framing';
import type { Pinned } from '../optics/settings';
import { settingsCard, type SettingsCard } from '../optics/settings-card';
import { inspectPath } from '../spot/inspect-path';
import type { Outlook } from '../outlook';
import { groundUnderFlight } from '../sight/ground-under-aircraft';
import { monthsInLeaf } from '../sight/surroundings';
import { monthAt } from '../../time/local-time';
import type { Path } from '../traffic/paths';
import { formationAt, formationPlaces, type FormationPlace } from '../traffic/formation';
import type { Sample } from '../types';
import { placeFrom, turned, viewPoint } from './from-eye';
import { endsHidden, type EndsHidden } from './ends-hidden';
import { cameraOn, poseAt, type CameraAxes, type Pose } from './pose';
import { formationFigures, type FormationFigures } from './formation-figures';
import { moonInFrame, type MoonInFrame } from './moon-in-frame';
import { moonInPicture } from './moon-in-picture';
import type { Picture } from './picture';
import { middleSeen, pointsSeen } from './points-seen';
import { sceneryRound, type Scenery } from './scenery';
import { Scratch } from '../scratch';

/** What is looked through, and how. */
export interface FrameChoice {
  readonly lens: Lens;
  readonly hold: Hold;
  readonly pinned: Pinned;
}

/** A picture through the viewfinder with the figures that belong to it. */
export interface ViewfinderFrame {
  readonly sample: Sample;
  readonly card: SettingsCard;
  readonly picture: Picture;
  /** mm that frame the subject as it is held; null inside the aircraft. */
  readonly needed: number | null;
  /** Share of the frame's width that is left when the subject is cropped to the wanted fill; 1 when the lens reaches. */
  readonly crop: number;
  readonly ends: EndsHidden;
  /** Null where it is not in the frame. */
  readonly moon: MoonInFrame | null;
  /** What flies together here; null for one alone. */
  readonly formation: FormationFigures | null;
}

/** A body held upright has its long side up. */
const held = (body: Body, { portrait }: Hold): Body =>
  portrait
    ? {
        ...body,
        sensorWidth: body.sensorHeight,
        sensorHeight: body.sensorWidth,
        pixelsWide: body.pixelsHigh,
        pixelsHigh: body.pixelsWide,
      }
    : body;

const kept = new Memo<Scenery>();

/** The scenery of a spot on ground at a height in m above mean sea level; built once until something of it changes. */
function sceneryOf(
  spot: StandingSpot,
  ground: number,
  contents: Contents,
  { runways, fieldElevation, around }: Outlook,
): Scenery {
  const { aprons, taxiRoutes, obstacles } = contents;
  const terrain = around?.terrain ?? null;
  kept.keepOnly(contents.spots);
  return kept.get([spot, ground, runways, aprons, taxiRoutes, obstacles, fieldElevation, terrain], () =>
    sceneryRound(
      viewPoint(spot, ground),
      { runways, aprons, taxiRoutes, obstacles },
      fieldElevation,
      terrain,
    ),
  );
}

/** The places of what flies together at a station; null for one alone, and where the spacing is not known. */
function placesAt(path: Path, station: number): readonly FormationPlace[] | null {
  const formation = formationAt(path, station);
  return formation && formationPlaces(formation);
}

/** Figures and settings of the sample nearest to a station, as the camera is held. `instant`: ms since 1970, UTC. */
export function framed(
  spot: StandingSpot,
  path: Path,
  station: number,
  contents: Contents,
  outlook: Outlook,
  instant: number,
  { lens, hold, pinned }: FrameChoice,
  scratch: Scratch = new Scratch(),
): { readonly sample: Sample; readonly card: SettingsCard } {
  const { subject, body, kit } = contents;
  const framing = framingOf(subject, body, kit.fill, hold, placesAt(path, station));
  const sample = inspectPath(spot, path, station, { ...outlook, framing }, instant, scratch);
  const { geometricAltitude } = sunAt(spot.position, instant);
  const card = settingsCard(sample, geometricAltitude, { subject, body: held(body, hold), lens }, pinned);
  return { sample, card };
}

/**
 * What the camera sees from a spot at a place on a path: `at` 2.5 is half-way between samples 2 and 3. `ground`: m
 * above mean sea level under the spot.
 */
export function frameFor(
  spot: StandingSpot,
  ground: number,
  path: Path,
  at: number,
  contents: Contents,
  outlook: Outlook,
  instant: number,
  choice: FrameChoice,
  scratch: Scratch = new Scratch(),
): ViewfinderFrame {
  const { samples } = path;
  const station = samples.station[Math.round(at)] ?? 0;
  const { sample, card } = framed(spot, path, station, contents, outlook, instant, choice, scratch);
  const { subject, body } = contents;
  const view = viewPoint(spot, ground);
  const pose = poseAt(samples, at, view);
  const { focalLength } = card.exact;
  const { hold } = choice;
  const { sensorWidth, sensorHeight } = held(body, hold);
  const sun = sunAt(spot.position, instant);
  const towardsSun = directionOf(sun.azimuth, sun.altitude);
  const needed = sample.focalLength;
  const places = placesAt(path, station) ?? alone;
  const picture: Picture = {
    scenery: sceneryOf(spot, ground, contents, outlook),
    subject,
    pose,
    camera: aimed(pose, subject, hold.part, places),
    lens: { focalLength, sensorWidth, sensorHeight, aperture: card.aperture },
    sun: { direction: towardsSun, altitude: sun.geometricAltitude },
    moon: moonInPicture(spot.position, instant, towardsSun),
    sky: skyWord(choice.pinned.sky),
    places,
    gearDown: gearDown(path, at, subject),
    arc: card.shown.propellerArc,
    bare: bareTrees(contents, instant),
    groundBelow: groundBelow(path, at, contents.subject.height, outlook, view),
  };
  return {
    sample,
    card,
    needed,
    crop: needed === null || needed <= focalLength ? 1 : focalLength / needed,
    ends: endsHidden(spot, ground, path, Math.round(at), outlook, instant, scratch.lines),
    picture,
    formation: formationFigures(spot, path, station, contents, outlook, instant, hold.portrait, scratch),
    moon: moonInFrame(picture, spot, ground, outlook, instant, scratch.lines),
  };
}

/** Trees out of leaf, by the month at the airfield, as the sight lines have it. */
function bareTrees({ obstacles, site }: Contents, instant: number): string[] {
  const trees = obstacles.filter(({ sight }) => isLeafy(sight));
  if (trees.length === 0) return [];
  const month = monthAt(instant, site.timeZone);
  return trees.filter((tree) => !monthsInLeaf(tree, site.reference).includes(month)).map(({ id }) => id);
}

const alone: readonly FormationPlace[] = [[0, 0, 0]];

/** Times that the middle of a formation is looked for: each leaves a hundredth of what the camera was beside it. */
const aimings = 2;

/** Of half an aircraft the camera looks at the middle of that half, of a formation at the middle of what all take of the picture. */
function aimed(
  pose: Pose,
  subject: Subject,
  part: Hold['part'],
  places: readonly FormationPlace[],
): CameraAxes {
  if (part !== 'formation') {
    const share = part === 'whole' ? 0 : part === 'nose' ? 0.25 : -0.25;
    return cameraOn({ ...pose, at: along(pose.at, pose.forward, share * subject.length) });
  }
  let camera = cameraOn(pose);
  // Near ones look larger than far ones: the middle of the picture is not that of the places.
  for (let i = 0; i < aimings; i++) {
    const { forward, right, top } = camera;
    const seen = places.flatMap((place) => pointsSeen(subject, pose, place, camera));
    const [aside, above] = middleSeen(seen);
    camera = cameraOn({ ...pose, at: along(along(forward, right, aside), top, above) });
  }
  return camera;
}

/**
 * Wheels come up after lift-off; whoever lands or stays low has them down, but not at the speed of a display or of the
 * run-in to a break. Drawing only.
 */
const gearUpFrom = 60;
const gearDownTo = 1.35;
function gearDown({ samples, ref }: Path, at: number, { approachSpeed }: Subject): boolean {
  const i = Math.round(at);
  const fast = (samples.speed[i] ?? 0) > gearDownTo * approachSpeed;
  if ((ref.kind === 'pass' || ref.kind === 'pattern') && fast) return (samples.height[i] ?? 0) <= gearUpFrom;
  const climbing = (samples.slope[i] ?? 0) > 0 && ref.kind !== 'arrival';
  return !(climbing && (samples.height[i] ?? 0) > gearUpFrom);
}

/** m from the eye up to the ground under the aircraft, along the eye's vertical. */
function groundBelow(
  { samples }: Path,
  at: number,
  height: number,
  { runways, fieldElevation, around }: Outlook,
  view: ReturnType<typeof viewPoint>,
): number {
  const i = Math.round(at);
  const [x, y, z] = samples.centre.subarray(3 * i, 3 * i + 3) as unknown as Vec3;
  // What its wheels are on.
  if (samples.onGround[i] === 1) return turned(view, minus([x, y, z], view.point))[2] - height / 2;
  const position = positionOf([x, y, z]);
  return placeFrom(
    view,
    position,
    groundUnderFlight(position, runways, fieldElevation, around?.terrain ?? null),
  )[2];
}
