import { describe, expect, test } from 'vitest';
import { earthCentred, frameAt, placed } from '../../src/figures/geometry/earth';
import { viewPoint } from '../../src/figures/frame/from-eye';
import { poseAt } from '../../src/figures/frame/pose';
import { framingOf } from '../../src/figures/optics/framing';
import { PathInView } from '../../src/figures/path-in-view';
import { sampled, type PathSamples } from '../../src/figures/traffic/samples';
import { contentsOf, plainSubject, spotFeature } from '../support/contents';

const here = [7.3, 46.6] as const;
const frame = frameAt(here);
const contents = contentsOf([spotFeature('s', here, { ground: 500, eyeHeight: 2 })], {
  subjects: [{ ...plainSubject, length: 15, span: 10, height: 4.9, propulsion: 'jet' }],
});
const { subject, body, kit } = contents;
const [spot] = contents.spots;
if (!spot) throw new Error('expected a spot');
const eye = { frame, point: earthCentred(here, 502) };

interface Banked {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly track: number;
  readonly attitude: number;
  readonly bank: number;
}

function oneSample({ x, y, z, track, attitude, bank }: Banked): PathSamples {
  const t = (track * Math.PI) / 180;
  const forward = [0, 1, 2].map(
    (k) => Math.sin(t) * (frame.east[k] ?? 0) + Math.cos(t) * (frame.north[k] ?? 0),
  ) as [number, number, number];
  return sampled([0], () => ({
    centre: placed(frame, x, y, 502 + z),
    forward,
    up: frame.up,
    slope: 0,
    attitude,
    bank,
    height: z,
    speed: 130,
    onGround: false,
  }));
}

type Vector = readonly [number, number, number];
/** Turns a vector about an axis by Rodrigues' formula: no line of it is the program's. */
function about(axis: Vector, degrees: number, v: Vector): Vector {
  const t = (degrees * Math.PI) / 180;
  const [a, b, c] = axis;
  const d = a * v[0] + b * v[1] + c * v[2];
  const cross: Vector = [b * v[2] - c * v[1], c * v[0] - a * v[2], a * v[1] - b * v[0]];
  return [0, 1, 2].map(
    (k) => (v[k] ?? 0) * Math.cos(t) + (cross[k] ?? 0) * Math.sin(t) + (axis[k] ?? 0) * d * (1 - Math.cos(t)),
  ) as unknown as Vector;
}

/** The needed focal length by projecting every framed point through a pinhole, in east, north and up from the eye. */
function projected({ x, y, z, track, attitude, bank }: Banked): number {
  // An aircraft that flies north, turned about its own axes: bank about the nose, then pitch, then heading.
  const turn = (v: Vector): Vector =>
    about([0, 0, 1], -track, about([1, 0, 0], attitude, about([0, 1, 0], bank, v)));
  const { length: l, span: b, height: h } = subject;
  const tail = 0.34 * b;
  // Right, ahead, up.
  const points: Vector[] = [
    [0, l / 2, 0],
    [0, -l / 2, 0],
    [0, -0.45 * l, h / 2],
    [0, 0, -h / 2],
    [b / 2, 0, 0],
    [-b / 2, 0, 0],
    [tail / 2, -0.45 * l, 0.1 * h],
    [-tail / 2, -0.45 * l, 0.1 * h],
  ];
  const azimuth = (Math.atan2(x, y) * 180) / Math.PI;
  const elevation = (Math.atan2(z, Math.hypot(x, y)) * 180) / Math.PI;
  const seen = points.map((p) => {
    const [px, py, pz] = turn(p);
    // Into the camera: heading out, elevation out.
    const level = about([0, 0, 1], azimuth, [x + px, y + py, z + pz]);
    const [right, depth, top] = about([1, 0, 0], -elevation, level);
    return [right / depth, top / depth] as const;
  });
  const extent = (k: 0 | 1) => Math.max(...seen.map((p) => p[k])) - Math.min(...seen.map((p) => p[k]));
  return kit.fill * Math.min(body.sensorWidth / extent(0), body.sensorHeight / extent(1));
}

const flying = { x: 310, y: 420, z: 95, track: 110, attitude: 4 };

describe('banked aircraft', () => {
  test.each([0, 25, 60, -60, 75])(
    '[F1003] banked %s degrees it is framed as an independent projection has it',
    (bank) => {
      const view = new PathInView();
      view.look(oneSample({ ...flying, bank }), eye, framingOf(subject, body, kit.fill));
      expect(view.focalAt(0) / projected({ ...flying, bank })).toBeCloseTo(1, 3);
    },
  );

  test('[F1004] at 60 degrees towards the eye the wings fill more of the height: a shorter lens than level', () => {
    const focal = (bank: number) => {
      const view = new PathInView();
      // Straight past: nose to tail across the frame, so that the wings decide.
      view.look(
        oneSample({ ...flying, x: 0, y: 400, z: 60, track: 90, bank }),
        eye,
        framingOf({ ...subject, span: 30 }, body, kit.fill),
      );
      return view.focalAt(0);
    };
    // Flying east, north of the eye: the eye is on the right. The right wing down shows the top.
    expect(focal(60)).toBeLessThan(0.5 * focal(0));
  });

  test('[F1005] what is seen of it is lit by the top it shows or the underside, not by its flank', () => {
    const view = new PathInView();
    const toSun = (bank: number) => {
      view.look(
        oneSample({ ...flying, x: 0, y: 400, z: 60, track: 90, bank }),
        eye,
        framingOf(subject, body, kit.fill),
      );
      const sign = Math.sign(view.leftwardsAt(0, 0, -400, -60));
      // The sun low behind the aircraft, 20 degrees up in the north.
      return sign * view.leftwardsAt(0, 0, Math.cos((20 * Math.PI) / 180), Math.sin((20 * Math.PI) / 180));
    };
    expect(toSun(0)).toBeLessThan(0);
    // Topside: the upper surface leans to the eye and away from the sun; steeply enough it is still grazed.
    expect(toSun(60)).toBeGreaterThan(toSun(0));
    // A sun high enough lights a top that leans towards the eye though it stands behind the aircraft.
    view.look(
      oneSample({ ...flying, x: 0, y: 400, z: 60, track: 90, bank: 35 }),
      eye,
      framingOf(subject, body, kit.fill),
    );
    expect(view.leftwardsAt(0, 0, Math.cos(1), Math.sin(1))).toBeGreaterThan(0);
  });

  test('[F1006] the pose for the viewfinder has the right wing down, axes square to each other', () => {
    const pose = poseAt(oneSample({ ...flying, bank: 60 }), 0, viewPoint(spot, 500));
    const dot = (p: readonly number[], q: readonly number[]) =>
      p.reduce((sum, v, i) => sum + v * (q[i] ?? 0), 0);
    expect(pose.left[2]).toBeGreaterThan(0.8);
    for (const [p, q] of [
      [pose.left, pose.up],
      [pose.left, pose.forward],
      [pose.up, pose.forward],
    ] as const)
      expect(dot(p, q)).toBeCloseTo(0, 9);
    expect(dot(pose.up, [0, 0, 1])).toBeCloseTo(0.5 * Math.cos((4 * Math.PI) / 180), 3);
  });
});
