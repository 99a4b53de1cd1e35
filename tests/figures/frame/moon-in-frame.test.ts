import { describe, expect, test } from 'vitest';
import { moonInFrame } from '../../../src/figures/frame/moon-in-frame';
import { moonInPicture } from '../../../src/figures/frame/moon-in-picture';
import { cameraOn } from '../../../src/figures/frame/pose';
import { destination } from '../../../src/figures/geometry/earth';
import { directionOf } from '../../../src/figures/light/direction-of';
import { moonAt } from '../../../src/figures/light/moon';
import type { Sky } from '../../../src/figures/optics/exposure';
import { outlookOf } from '../../../src/figures/outlook';
import { contentsOf, feature, spotFeature } from '../../support/contents';

const place = [8.56, 47.45] as const;
/** The full moon in the east, 27 degrees up. */
const evening = Date.parse('2026-10-26T19:00:00Z');
const { azimuth, altitude } = moonAt(place, evening);

interface Wanted {
  readonly beside?: number;
  readonly wall?: number;
  readonly sky?: Sky;
  readonly instant?: number;
  /** Degrees to the moon's left at which an aircraft flies past, 400 m away. */
  readonly aircraft?: number;
}

/** Looked for past a wall across the moon's direction, 30 m away; the camera `beside` degrees to the moon's left. */
function seen({ beside = 0, wall = 0, sky = 'clear', instant = evening, aircraft = 90 }: Wanted = {}) {
  const foot = destination(place, azimuth, 30);
  const ends = [-20, 20].map((right) => destination(foot, azimuth + 90, right));
  const walls =
    wall > 0 ? [feature('w', 'obstacle', 'LineString', ends, { height: wall, sight: 'solid' })] : [];
  const contents = contentsOf([spotFeature('s', place, { ground: 0, eyeHeight: 2 }), ...walls]);
  const [spot] = contents.spots;
  if (!spot) throw new Error('expected a spot');
  const forward = directionOf(azimuth - beside, altitude);
  const camera = cameraOn({
    at: forward,
    forward,
    left: forward,
    up: forward,
    range: 1,
    headingKnown: false,
  });
  const lens = { focalLength: 300, sensorWidth: 36, sensorHeight: 24, aperture: 8 };
  const moon = moonInPicture(place, instant, directionOf(270, -20));
  const [east, north, up] = directionOf(azimuth - aircraft, altitude);
  const pose = {
    at: [400 * east, 400 * north, 400 * up] as const,
    forward: [north, -east, 0] as const,
    left: [east, north, 0] as const,
    up: [0, 0, 1] as const,
    range: 400,
    headingKnown: true,
  };
  const { subject } = contents;
  const places = [[0, 0, 0] as const];
  return moonInFrame(
    { moon, camera, lens, sky, pose, subject, places },
    spot,
    0,
    outlookOf(contents, null),
    instant,
  );
}

describe('whether the moon stands in the frame', () => {
  test('[F1084] within half the field of 300 mm, 3.4 degrees, and not beyond', () => {
    const level = Math.cos((altitude * Math.PI) / 180);
    expect(seen({ beside: 3.2 / level })?.phase).toBe('full');
    expect(seen({ beside: 3.7 / level })).toBeNull();
  });

  test('[F1085] arguable: behind a wall it is said to be there, and what hides it; over its top it is free', () => {
    expect(seen({ wall: 40 })?.hiddenBy).toBe('w');
    // 15.3 m over the eye at 30 m is 27 degrees.
    const grazing = 2 + 30 * Math.tan((altitude * Math.PI) / 180);
    expect(seen({ wall: grazing - 0.5 })?.hiddenBy).toBeNull();
    expect(seen({ wall: grazing + 0.5 })?.hiddenBy).toBe('w');
  });

  test('[F1086] arguable: under closed cloud nobody is promised a moon, through haze one is', () => {
    expect(seen({ sky: 'overcast' })).toBeNull();
    expect(seen({ sky: 'hazy' })).not.toBeNull();
  });

  test('[F1280] arguable: behind the aircraft it is said that it may be covered, beside it not', () => {
    expect(seen({ aircraft: 0 })?.atAircraft).toBe(true);
    expect(seen({ aircraft: 0, beside: 2 })?.atAircraft).toBe(true);
    // 38 m at 400 m are 5.4 degrees: its nose is 2.7 degrees away, as azimuths go a little more.
    expect(seen({ aircraft: 5 })?.atAircraft).toBe(false);
    expect(seen({ aircraft: -5 })?.atAircraft).toBe(false);
  });

  test('[F1087] below the horizon it is in no frame', () => {
    expect(seen({ instant: Date.parse('2026-10-26T12:00:00Z') })).toBeNull();
  });
});
