import { tailSpanOf } from '../../figures/optics/framed-points';
import { RAD } from '../../survey/angles';
import type { Subject } from '../../survey/schema/subject';
import type { Stance } from './airliner';
import { loft, patch, type Section } from './fuselage';
import { wingPlace } from './kinds';
import { fin, leg, nacelle, pair, part, propeller, type Part } from './parts';
import { strutBetween } from './strut';

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
  const rise = Math.tan((place === 'high' ? 1.7 : 6) * RAD) * half;
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
        parts.push(part('metal', strutBetween([x, wingY + rise * 0.62, z], [x, upper, z], 0.03)));
  }
  if (place === 'high')
    for (const side of [1, -1])
      parts.push(
        part(
          'skin',
          strutBetween(
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
        [8 * RAD, 52 * RAD],
        [128 * RAD, 172 * RAD],
      ]
    : [
        [14 * RAD, 84 * RAD],
        [96 * RAD, 166 * RAD],
      ];
  return [
    part('glass', patch(sections, front, front - 0.055 * L, [18 * RAD, 162 * RAD], 0.012)),
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
