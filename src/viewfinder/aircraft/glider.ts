import { CylinderGeometry } from 'three';
import { RAD } from '../../survey/angles';
import type { Subject } from '../../survey/schema/subject';
import { loft, patch } from './fuselage';
import { fin, pair, part, type Part } from './parts';

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
    at: [0.075 * L * (1 - share), axis + 0.55 * r + Math.tan(3 * RAD) * half * share, half * share] as const,
    chord: chord * k,
    thickness: 0.14,
  });
  const top = H / 2;
  const wheel = 0.13 * H;
  return [
    part('skin', loft(sections)),
    part('glass', patch(sections, L / 2 - 0.07 * L, L / 2 - 0.33 * L, [20 * RAD, 160 * RAD], 0.01)),
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
