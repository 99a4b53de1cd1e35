import type { Body, Lens } from '../../survey/schema/kit';
import type { Subject } from '../../survey/schema/subject';
import { panError, quietIso, sharpWithin, startingAperture, startingShutter } from '../practice';
import type { Sample } from '../types';
import { apertureForDepth, circleOfConfusion, depthOfField } from './depth-of-field';
import {
  apertureFor,
  exposureValue,
  isoFor,
  sceneExposure,
  shutterFor,
  type SceneExposure,
  type Sky,
} from './exposure';
import { RAD } from '../geometry/angles';
import {
  bladeAngle,
  bladeWish,
  panRate,
  pixelsPerSecond,
  secondsAcross,
  slowestShutters,
  type BladeWish,
  type SlowestShutters,
} from './motion';
import { rangesOf } from './reach';
import { widestApertureAt } from './widest-aperture';

/** What is photographed, and with what. */
export interface Setup {
  readonly subject: Subject;
  readonly body: Body;
  readonly lens: Lens;
}

/** What the photographer has decided; null leaves it to the starting points. mm, f-number, s, ISO, px, mm. */
export interface Pinned {
  readonly focalLength: number | null;
  readonly aperture: number | null;
  readonly shutter: number | null;
  readonly iso: number | null;
  /** A word, or the share of direct sun. */
  readonly sky: Sky | number;
  /** Exposure value at ISO 100 of what lights the aircraft, as somebody has measured or typed it; the sun's otherwise. */
  readonly ev100?: number | null;
  /** px of blur that pass for sharp. */
  readonly sharpWithin: number;
  readonly circleOfConfusion: number | null;
}

export const nothingPinned: Pinned = {
  focalLength: null,
  aperture: null,
  shutter: null,
  iso: null,
  sky: 'clear',
  sharpWithin,
  circleOfConfusion: null,
};

/** Where a value is from: pinned, following from the two others, or a starting point and what set it. */
export type ApertureFrom = 'pinned' | 'exposure' | 'depth' | 'widest' | 'practice' | 'dark';
export type ShutterFrom = 'pinned' | 'exposure' | 'blades' | 'blur' | 'practice';

/** Settings for one sample: exact, neither rounded to stops nor kept within what cameras can do. */
export interface Settings {
  /** mm. */
  readonly focalLength: number;
  readonly aperture: number;
  /** s. */
  readonly shutter: number;
  readonly iso: number;
  readonly ev100: number;
  /** m; `far` null for infinity. */
  readonly near: number;
  readonly far: number | null;
  /** Degrees per second; null where the aircraft's speed is not known. */
  readonly panRate: number | null;
  /** px of blur with the camera held still; null where the speed is not known. */
  readonly blurStill: number | null;
  /** Degrees that a blade sweeps; null without blades that turn. */
  readonly propellerArc: number | null;
}

/** The settings with all that led to them. */
export interface SettingsWithReasons extends Settings {
  readonly apertureFrom: ApertureFrom;
  readonly shutterFrom: ShutterFrom;
  readonly isoFrom: 'pinned' | 'exposure';
  readonly scene: SceneExposure;
  /** Stops by which three pinned values miss the exposure: positive is too dark. */
  readonly darkBy: number;
  /** f-number from which nose to tail is sharp, 0 when any will do, null when none does. */
  readonly apertureForDepth: number | null;
  /** f-number that the lens opens to, with its extender. */
  readonly widestAperture: number;
  readonly extender: number | null;
  /** Null where the speed is not known. */
  readonly slowest: SlowestShutters | null;
  readonly blades: BladeWish | null;
  /** s in which the aircraft crosses the frame when the camera is held still; null where it stands, or the speed is not known. */
  readonly secondsAcross: number | null;
  /** px of blur when the camera follows; null where the speed is not known. */
  readonly blurPanned: number | null;
}

/**
 * A lens at a focal length in mm: beyond the lens alone it is with the weakest extender that reaches so far, or with its
 * strongest, and opens less by the factor.
 */
export function lensAt(
  lens: Lens,
  focalLength: number,
): { readonly extender: number | null; readonly widestAperture: number } {
  const alone = { extender: null, widestAperture: widestApertureAt(lens, focalLength) };
  if (focalLength <= lens.longest || lens.extenders.length === 0) return alone;
  const reaching = lens.extenders.filter((x) => focalLength <= lens.longest * x * hair);
  const extender = reaching.length > 0 ? Math.min(...reaching) : Math.max(...lens.extenders);
  return { extender, widestAperture: widestApertureAt(lens, focalLength, extender) };
}

/** What rounding may add: 400 mm with 1.4x is 560 mm. */
const hair = 1 + 1e-9;

/** Whether a lens, alone or with one of its extenders, can be set to a focal length in mm. */
export const reachesTo = (lens: Lens, focalLength: number): boolean =>
  rangesOf(lens).some((r) => focalLength * hair >= r.shortest && focalLength <= r.longest * hair);

/** The needed focal length in mm kept within the lens's range; inside the aircraft only the shortest makes sense. */
export const focalWithin = (lens: Lens, needed: number | null): number =>
  Math.max(lens.shortest, Math.min(lens.longest, needed ?? lens.shortest));

/** m of the subject in front of its centre, nose to tail; of an unknown heading as deep as it could be. */
const depthAhead = ({ length, span }: Subject, aspect: number | null): number =>
  aspect === null ? Math.max(length, span) / 2 : (length / 2) * Math.abs(Math.cos(aspect * RAD));

/** Settings for a sample under a sun at a geometric altitude in degrees. Starting points where nothing is pinned. */
export function settingsFor(
  sample: Sample,
  sunAltitude: number,
  { subject, body, lens }: Setup,
  pinned: Pinned,
): SettingsWithReasons {
  const focalLength = pinned.focalLength ?? focalWithin(lens, sample.focalLength);
  const { extender, widestAperture } = lensAt(lens, focalLength);
  const confusion = pinned.circleOfConfusion ?? circleOfConfusion(body);
  const rate = sample.speed === null ? null : panRate(sample.speed, sample.aspect ?? 90, sample.slantRange);
  const before = depthAhead(subject, sample.aspect);
  const forDepth = apertureForDepth(focalLength, sample.slantRange, before, confusion);
  const slowest = rate === null ? null : slowestShutters(rate, focalLength, body, pinned.sharpWithin);
  // Engines of an aircraft that stands are off; a helicopter at the hover stands in the air.
  const hovers = subject.propulsion === 'rotor' && !sample.onGround;
  const blades = sample.speed === 0 && !hovers ? null : bladeWish(subject);
  const scene = sceneExposure(sunAltitude, sample.light, pinned.sky, pinned.ev100 ?? null);

  const startAperture = Math.max(startingAperture, widestAperture, forDepth ?? 0);
  const startShutter = blades?.shutter ?? Math.min(startingShutter, slowest?.panned ?? startingShutter);
  let aperture = pinned.aperture ?? startAperture;
  let shutter = pinned.shutter ?? startShutter;
  let apertureFrom: ApertureFrom =
    pinned.aperture !== null
      ? 'pinned'
      : startAperture === startingAperture
        ? 'practice'
        : startAperture === widestAperture
          ? 'widest'
          : 'depth';
  let shutterFrom: ShutterFrom =
    pinned.shutter !== null
      ? 'pinned'
      : blades
        ? 'blades'
        : startShutter < startingShutter
          ? 'blur'
          : 'practice';
  const { iso: wantedIso } = pinned;
  if (wantedIso !== null && pinned.shutter === null) {
    shutter = shutterFor(aperture, wantedIso, scene.ev100);
    shutterFrom = 'exposure';
  } else if (wantedIso !== null && pinned.aperture === null) {
    aperture = apertureFor(shutter, wantedIso, scene.ev100);
    apertureFrom = 'exposure';
  }
  if (apertureFrom !== 'pinned' && wantedIso === null) {
    // In poor light the lens opens before the ISO rises, and depth is given up: that is said.
    const quiet = apertureFor(shutter, quietIso, scene.ev100);
    const opened = Math.max(widestAperture, quiet);
    if (quiet < startingAperture && opened < aperture) [aperture, apertureFrom] = [opened, 'dark'];
  }
  const iso = wantedIso ?? isoFor(aperture, shutter, scene.ev100);
  const still = rate === null ? null : pixelsPerSecond(rate, focalLength, body) * shutter;
  return {
    focalLength,
    aperture,
    shutter,
    iso,
    ev100: scene.ev100,
    ...depthOfField(focalLength, aperture, sample.slantRange, confusion),
    panRate: rate,
    blurStill: still,
    propellerArc: blades && bladeAngle(blades.rpm, shutter),
    apertureFrom,
    shutterFrom,
    isoFrom: wantedIso === null ? 'exposure' : 'pinned',
    scene,
    darkBy: exposureValue(aperture, shutter) - scene.ev100 - Math.log2(iso / 100),
    apertureForDepth: forDepth,
    widestAperture,
    extender,
    slowest,
    blades,
    secondsAcross: rate === null ? null : secondsAcross(rate, focalLength, body),
    blurPanned: still === null ? null : still * panError,
  };
}
