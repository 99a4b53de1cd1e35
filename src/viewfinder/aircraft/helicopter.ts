import { CylinderGeometry, SphereGeometry } from 'three';
import { discUp } from '../../figures/practice';
import { RAD } from '../../survey/angles';
import type { Subject } from '../../survey/schema/subject';
import type { Stance } from './airliner';
import { loft, patch, type Section } from './fuselage';
import { fin, pair, part, propeller, type Part } from './parts';
import { strutBetween } from './strut';

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
    part('glass', patch(sections, cabin(0.06), cabin(0.3), [8 * RAD, 172 * RAD], 0.012)),
    ...[
      [4 * RAD, 52 * RAD],
      [128 * RAD, 176 * RAD],
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
          strutBetween([x, ground + bar, side * skid], [x, axis - 0.45 * r, side * 0.35 * r], bar * 0.8),
        ),
      );
  }
  return parts;
}

/** The tail rotor's disc, seen as a blur: it turns some five times as fast as the main one. From memory. */
function tailBlades(radius: number, arc: number | null): Part[] {
  return propeller([0, 0, 0], radius, 2, arc === null ? null : Math.min(170, arc * 5), 0.05);
}
