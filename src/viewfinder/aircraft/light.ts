import { CylinderGeometry, SphereGeometry } from 'three';
import type { Subject } from '../../survey/schema/subject';
import { tailSpanOf } from '../../figures/optics/framed-points';
import { discUp } from '../../figures/practice';
import type { Stance } from './airliner';
import { loft, patch, type Section } from './fuselage';
import { wingPlace } from './kinds';
import { fin, leg, nacelle, pair, part, propeller, type Part } from './parts';

const degrees = (d: number) => (d * Math.PI) / 180;

/** Light aircraft with one or two propellers, of one wing or two. Proportions from memory. */
export function lightAircraft(subject: Subject, { arc }: Stance): Part[] {
  const { length: L, span: b, height: H } = subject;
  const place = wingPlace(subject);
  const twin = (subject.engines ?? 1) > 1;
  const ground = -H / 2;
  const axis = ground + (place === 'high' ? 0.45 : 0.42) * H;
  const r = 0.235 * H;
  const spinner = 0.1 * r + 0.14;
  const nose = L / 2 - (twin ? 0 : spinner * 1.3);
  const sections = hull(nose, -L / 2, axis, r, place === 'high');
  const half = b / 2;
  const chord = b / (place === 'two' ? 6.2 : 7.6);
  const rise = Math.tan(degrees(place === 'high' ? 1.7 : 6)) * half;
  const wingAt = (y: number, up: number, share: number, k: number) => ({
    at: [0.085 * L * (1 - share), y + up * share, half * share] as const,
    chord: chord * k,
    thickness: 0.14,
  });
  const wingY = place === 'high' ? axis + 1.02 * r : axis - 0.62 * r;
  const wingOf = (y: number, up: number): Part[] =>
    pair('skin', [wingAt(y, up, 0, 1.08), wingAt(y, up, 0.5, 1.05), wingAt(y, up, 1, 0.74)]);
  const parts: Part[] = [
    part('skin', loft(sections)),
    ...wingOf(wingY, rise),
    ...glass(sections, L, place === 'high'),
    ...tail(subject, axis, r),
  ];
  if (place === 'two') {
    const upper = Math.min(H / 2 - 0.1 * H, axis + 1.5 * r);
    parts.push(...wingOf(upper, 0));
    for (const z of [0.62 * half, -0.62 * half])
      for (const x of [0.03 * L + chord * 0.25, 0.03 * L - chord * 0.3])
        parts.push(part('metal', between([x, wingY + rise * 0.62, z], [x, upper, z], 0.03)));
  }
  if (place === 'high')
    for (const side of [1, -1])
      parts.push(
        part(
          'skin',
          between(
            [0.06 * L, axis - 0.62 * r, side * r * 0.8],
            [0.05 * L, wingY + rise * 0.5, side * 0.5 * half],
            0.035,
          ),
        ),
      );
  const blades = subject.blades ?? 2;
  const radius = Math.min(0.35 * H, 0.95 * (axis - ground) - 0.06);
  if (twin)
    for (const side of [1, -1]) {
      const z = side * 0.29 * half;
      const y = wingY + rise * 0.29 + 0.1 * r;
      const nr = 0.38 * r;
      parts.push(...nacelle(0.085 * L + chord * 0.78, y, z, nr, nr * 6));
      parts.push(
        ...propeller(
          [0.085 * L + chord * 0.78 + spinner, y, z],
          Math.min(radius, 0.2 * half),
          blades,
          arc,
          spinner,
        ),
      );
    }
  else parts.push(...propeller([L / 2, axis - 0.1 * r, 0], radius, blades, arc, spinner));
  const wheel = 0.075 * H;
  const tailwheel = place === 'two';
  parts.push(...leg(tailwheel ? -0.44 * L : 0.33 * L, axis, 0, ground, wheel * (tailwheel ? 0.5 : 0.85), 1));
  for (const z of [0.13 * b, -0.13 * b])
    parts.push(
      ...leg(tailwheel ? 0.16 * L : -0.01 * L, Math.min(axis - 0.4 * r, wingY), z, ground, wheel, 1),
    );
  return parts;
}

/** A cabin behind an engine, and a boom to the tail. */
function hull(nose: number, tail: number, axis: number, r: number, high: boolean): Section[] {
  const long = nose - tail;
  // Share of the length, half width, half height, height of the middle.
  const shape: readonly (readonly [number, number, number, number])[] = [
    [0, 0.42, 0.4, -0.1],
    [0.015, 0.56, 0.5, -0.1],
    [0.08, 0.66, 0.58, -0.1],
    [0.17, 0.76, 0.66, -0.06],
    [0.24, 0.84, high ? 0.94 : 0.86, high ? 0.1 : 0.06],
    [0.32, 0.9, high ? 1.06 : 1, high ? 0.12 : 0.12],
    [0.44, 0.88, high ? 1.04 : 0.98, high ? 0.12 : 0.1],
    [0.55, 0.7, 0.78, 0.08],
    [0.7, 0.44, 0.5, 0.1],
    [0.85, 0.24, 0.33, 0.16],
    [0.97, 0.1, 0.2, 0.2],
    [1, 0.03, 0.08, 0.22],
  ];
  return shape.map(([t, w, h, y]) => ({
    x: nose - long * t,
    y: axis + y * r,
    halfWidth: w * r,
    halfHeight: h * r,
  }));
}

function glass(sections: readonly Section[], L: number, high: boolean): Part[] {
  const front = L / 2 - 0.205 * L;
  const back = L / 2 - (high ? 0.45 : 0.47) * L;
  const sides: readonly (readonly [number, number])[] = high
    ? [
        [degrees(8), degrees(52)],
        [degrees(128), degrees(172)],
      ]
    : [
        [degrees(14), degrees(84)],
        [degrees(96), degrees(166)],
      ];
  return [
    part('glass', patch(sections, front, front - 0.055 * L, [degrees(18), degrees(162)], 0.012)),
    ...sides.map((angles) => part('glass', patch(sections, front - 0.075 * L, back, angles, 0.012))),
  ];
}

function tail({ length: L, span: b, height: H, tailSpan }: Subject, axis: number, r: number): Part[] {
  const foot = axis + 0.2 * r;
  const top = H / 2;
  const chord = 0.62 * (top - foot);
  const half = tailSpanOf({ span: b, tailSpan }) / 2;
  return [
    fin([
      { at: [-0.45 * L + 0.34 * (top - foot), foot, 0], chord: chord * 1.35, thickness: 0.09 },
      { at: [-0.45 * L, top, 0], chord: chord * 0.66, thickness: 0.08 },
    ]),
    ...pair('skin', [
      { at: [-0.43 * L, axis + 0.2 * r, 0], chord: 0.115 * L, thickness: 0.09 },
      { at: [-0.44 * L, axis + 0.2 * r, half], chord: 0.08 * L, thickness: 0.09 },
    ]),
  ];
}

/** A thin strut between two points. */
function between(a: readonly [number, number, number], b: readonly [number, number, number], radius: number) {
  const [dx, dy, dz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const length = Math.hypot(dx, dy, dz);
  const strut = new CylinderGeometry(radius, radius, length, 6).translate(0, length / 2, 0);
  // From straight up to the way it goes.
  strut.rotateX(Math.acos(dy / length)).rotateY(Math.atan2(dx, dz));
  return strut.translate(...a);
}

/** A glider: a long thin wing, a pod and a boom, a tailplane on top of the fin. */
export function glider({ length: L, span: b, height: H }: Subject): Part[] {
  const ground = -H / 2;
  const axis = ground + 0.4 * H;
  const r = 0.27 * H;
  const shape: readonly (readonly [number, number, number])[] = [
    [0, 0.04, 0],
    [0.02, 0.3, 0],
    [0.07, 0.62, 0.02],
    [0.15, 0.88, 0.05],
    [0.25, 1, 0.1],
    [0.36, 0.94, 0.12],
    [0.46, 0.62, 0.14],
    [0.56, 0.36, 0.18],
    [0.8, 0.24, 0.2],
    [0.97, 0.17, 0.22],
    [1, 0.06, 0.22],
  ];
  const sections = shape.map(([t, k, y]) => ({
    x: L / 2 - L * t,
    y: axis + y * r,
    halfWidth: 0.82 * k * r,
    halfHeight: k * r,
  }));
  const half = b / 2;
  const chord = b / 19;
  const wing = (share: number, k: number) => ({
    at: [
      0.075 * L * (1 - share),
      axis + 0.55 * r + Math.tan(degrees(3)) * half * share,
      half * share,
    ] as const,
    chord: chord * k,
    thickness: 0.14,
  });
  const top = H / 2;
  const wheel = 0.13 * H;
  return [
    part('skin', loft(sections)),
    part('glass', patch(sections, L / 2 - 0.07 * L, L / 2 - 0.33 * L, [degrees(20), degrees(160)], 0.01)),
    ...pair('skin', [wing(0, 1.2), wing(0.55, 1.05), wing(1, 0.45)]),
    fin([
      { at: [-0.45 * L + 0.05 * L, axis + 0.2 * r, 0], chord: 0.13 * L, thickness: 0.09 },
      { at: [-0.45 * L, top - 0.02, 0], chord: 0.085 * L, thickness: 0.09 },
    ]),
    ...pair('skin', [
      { at: [-0.45 * L, top - 0.03, 0], chord: 0.08 * L, thickness: 0.09 },
      { at: [-0.455 * L, top - 0.03, 0.075 * b], chord: 0.045 * L, thickness: 0.09 },
    ]),
    part(
      'dark',
      new CylinderGeometry(wheel, wheel, wheel * 0.5, 16)
        .rotateX(Math.PI / 2)
        .translate(0.1 * L, ground + wheel, 0),
    ),
  ];
}

/** A helicopter: the disc of its rotor is over its middle, as it is framed, the tail rotor to the end of the boom. */
export function helicopter(subject: Subject, { arc }: Stance, rotor: (radius: number) => Part[]): Part[] {
  const { length: L, span: b, height: H } = subject;
  const ground = -H / 2;
  const tailRotor = Math.max(0.35, 0.085 * b);
  const axis = ground + 0.46 * H;
  const r = 0.25 * H;
  const nose = L / 2;
  const boom = -0.16 * b;
  const section = (x: number, w: number, h: number, y: number): Section => ({
    x,
    y: axis + y * r,
    halfWidth: w * r,
    halfHeight: h * r,
  });
  const end = -L / 2 + tailRotor * 0.9;
  const cabin = (t: number) => nose + (boom - nose) * t;
  const sections = [
    section(cabin(0), 0.05, 0.05, -0.35),
    section(cabin(0.04), 0.42, 0.38, -0.32),
    section(cabin(0.14), 0.76, 0.74, -0.2),
    section(cabin(0.3), 0.98, 1.04, 0),
    section(cabin(0.52), 1, 1.16, 0.08),
    section(cabin(0.74), 0.82, 0.98, 0.18),
    section(cabin(0.9), 0.48, 0.62, 0.4),
    section(boom, 0.28, 0.36, 0.56),
    section((boom + end) / 2, 0.2, 0.24, 0.66),
    section(end, 0.12, 0.16, 0.78),
    section(end - 0.2, 0.04, 0.05, 0.8),
  ];
  const skid = 0.42 * r + 0.035 * b;
  const rotorY = discUp * H;
  const finChord = 0.055 * L;
  const parts: Part[] = [
    part('skin', loft(sections)),
    part('glass', patch(sections, cabin(0.06), cabin(0.3), [degrees(8), degrees(172)], 0.012)),
    ...[
      [degrees(4), degrees(52)],
      [degrees(128), degrees(176)],
    ].map(([from = 0, to = 0]) => part('glass', patch(sections, cabin(0.34), cabin(0.6), [from, to], 0.012))),
    part(
      'metal',
      new CylinderGeometry(0.05 * r + 0.05, 0.14 * r + 0.06, rotorY - (axis + r), 10).translate(
        0,
        (rotorY + axis + r) / 2,
        0,
      ),
    ),
    part(
      'skin',
      new SphereGeometry(0.5 * r, 18, 12).scale(1.9, 0.72, 1).translate(-0.02 * b, axis + 1.18 * r, 0),
    ),
    fin([
      { at: [end + 0.2, axis + 0.5 * r, 0], chord: finChord, thickness: 0.12 },
      {
        at: [-0.45 * L, Math.min(H / 2 - 0.06 * H, axis + 2 * r), 0],
        chord: finChord * 0.7,
        thickness: 0.12,
      },
    ]),
    ...pair('skin', [
      { at: [end + 0.12 * L, axis + 0.7 * r, 0], chord: finChord * 0.9, thickness: 0.1 },
      { at: [end + 0.12 * L, axis + 0.7 * r, 0.1 * b], chord: finChord * 0.8, thickness: 0.1 },
    ]),
    ...rotor(b / 2).map(({ stuff, geometry }) =>
      part(stuff, geometry.rotateZ(Math.PI / 2).translate(0, rotorY, 0)),
    ),
    ...tailBlades(tailRotor, arc).map(({ stuff, geometry }) =>
      part(
        stuff,
        geometry.rotateY(Math.PI / 2).translate(-L / 2 + tailRotor, axis + 0.8 * r, 0.16 * r + 0.06),
      ),
    ),
  ];
  const bar = 0.034 * r + 0.025;
  for (const side of [1, -1]) {
    parts.push(
      part(
        'metal',
        new CylinderGeometry(bar, bar, 0.34 * b, 8)
          .rotateZ(Math.PI / 2)
          .translate(0.06 * b, ground + bar, side * skid),
      ),
    );
    for (const x of [0.14 * b, -0.03 * b])
      parts.push(
        part(
          'metal',
          between([x, ground + bar, side * skid], [x, axis - 0.45 * r, side * 0.35 * r], bar * 0.8),
        ),
      );
  }
  return parts;
}

/** The tail rotor's disc, seen as a blur: it turns some five times as fast as the main one. From memory. */
function tailBlades(radius: number, arc: number | null): Part[] {
  return propeller([0, 0, 0], radius, 2, arc === null ? null : Math.min(170, arc * 5), 0.05);
}
