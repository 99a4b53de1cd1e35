import { CylinderGeometry } from 'three';
import type { Subject } from '../../survey/schema/subject';
import type { Stance } from './airliner';
import { loft, type Section } from './fuselage';
import { fin, leg, pair, part, type Part } from './parts';

/** A small fast jet: a delta wing, one fin, a bubble canopy, the intakes beside it. Proportions from memory. */
export function fastJet({ length: L, span: b, height: H }: Subject, { gearDown }: Stance): Part[] {
  const ground = -H / 2;
  const axis = ground + 0.4 * H;
  const r = 0.15 * H;
  const shape: readonly (readonly [number, number, number, number])[] = [
    [0, 0.02, 0.02, 0],
    [0.06, 0.34, 0.34, 0],
    [0.16, 0.72, 0.78, 0.05],
    [0.28, 1, 1.12, 0.16],
    [0.36, 1.7, 1.1, 0.1],
    [0.55, 1.8, 1.05, 0.05],
    [0.8, 1.35, 0.95, 0.02],
    [0.97, 0.85, 0.85, 0],
    [1, 0.7, 0.7, 0],
  ];
  const sections: Section[] = shape.map(([t, w, h, y]) => ({
    x: L / 2 - L * t,
    y: axis + y * r,
    halfWidth: w * r,
    halfHeight: h * r,
  }));
  const half = b / 2;
  const canopy: Section[] = [
    [0.13, 0.05, 0.05],
    [0.17, 0.4, 0.5],
    [0.22, 0.5, 0.78],
    [0.3, 0.46, 0.6],
    [0.38, 0.1, 0.1],
  ].map(([t = 0, w = 0, h = 0]) => ({
    x: L / 2 - L * t,
    y: axis + 0.78 * r,
    halfWidth: w * r,
    halfHeight: h * r,
  }));
  const top = H / 2;
  const parts: Part[] = [
    part('skin', loft(sections)),
    part('glass', loft(canopy)),
    part(
      'dark',
      new CylinderGeometry(0.66 * r, 0.66 * r, 0.02 * L, 24)
        .rotateZ(Math.PI / 2)
        .translate(-0.485 * L, axis, 0),
    ),
    ...pair('skin', [
      { at: [-0.02 * L, axis, 0.3 * r], chord: 0.5 * L, thickness: 0.05 },
      { at: [-0.06 * L, axis, half], chord: 0.09 * L, thickness: 0.05 },
    ]),
    ...pair('skin', [
      { at: [-0.4 * L, axis - 0.1 * r, 0.4 * r], chord: 0.15 * L, thickness: 0.05 },
      { at: [-0.45 * L, axis - 0.2 * r, 0.24 * b], chord: 0.06 * L, thickness: 0.05 },
    ]),
    fin([
      { at: [-0.33 * L, axis + 0.7 * r, 0], chord: 0.24 * L, thickness: 0.06 },
      { at: [-0.45 * L, top, 0], chord: 0.075 * L, thickness: 0.06 },
    ]),
  ];
  if (gearDown) {
    parts.push(...leg(0.22 * L, axis, 0, ground, 0.055 * H, 1));
    for (const z of [0.12 * b, -0.12 * b]) parts.push(...leg(-0.06 * L, axis, z, ground, 0.07 * H, 1));
  }
  return parts;
}
