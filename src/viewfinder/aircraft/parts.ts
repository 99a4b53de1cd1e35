import { CylinderGeometry, LatheGeometry, Vector2, type BufferGeometry } from 'three';
import { blades } from './turning';
import { mirrored, surface, type Rib } from './surfaces';
import type { BodyPoint } from './mesh';

/** What a part is made of: each is one material of the drawing. */
export type Stuff = 'skin' | 'accent' | 'glass' | 'metal' | 'dark' | 'blade' | 'disc';
export interface Part {
  readonly stuff: Stuff;
  readonly geometry: BufferGeometry;
}

export const part = (stuff: Stuff, geometry: BufferGeometry): Part => ({ stuff, geometry });

const upward: BodyPoint = [0, 1, 0];
const sideways: BodyPoint = [0, 0, 1];

/** A wing or tailplane on both sides. */
export const pair = (stuff: Stuff, ribs: readonly Rib[]): Part[] => [
  part(stuff, surface(ribs, upward)),
  part(stuff, surface(mirrored(ribs), upward)),
];

export const fin = (ribs: readonly Rib[]): Part => part('accent', surface(ribs, sideways));

/** A nacelle along x, its intake at `x`; `radius` and `length` in m. */
export function nacelle(x: number, y: number, z: number, radius: number, length: number): Part[] {
  const profile = [
    [0.8, 0],
    [0.98, 0.03],
    [1, 0.12],
    [1, 0.45],
    [0.86, 0.78],
    [0.62, 1],
  ].map(([r = 0, t = 0]) => new Vector2(radius * r, -length * t));
  const cowl = new LatheGeometry(profile, 24).rotateZ(-Math.PI / 2).translate(x, y, z);
  const intake = new CylinderGeometry(radius * 0.82, radius * 0.82, 0.02, 24)
    .rotateZ(-Math.PI / 2)
    .translate(x - 0.12 * length, y, z);
  const cone = new CylinderGeometry(radius * 0.05, radius * 0.44, length * 0.42, 16)
    .rotateZ(Math.PI / 2)
    .translate(x - length * 1.02, y, z);
  return [part('skin', cowl), part('dark', intake), part('metal', cone)];
}

/** A propeller about an axis along x at a point, with its spinner in front. Blades flap: their disc has some depth. */
export function propeller(
  at: BodyPoint,
  radius: number,
  count: number,
  arc: number | null,
  spinner: number,
  phase = 0.35,
): Part[] {
  const [x, y, z] = at;
  const cone = new CylinderGeometry(0.02, spinner, spinner * 1.6, 16)
    .rotateZ(-Math.PI / 2)
    .translate(x - spinner * 0.8, y, z);
  const disc = new CylinderGeometry(radius, radius, 0.025 * radius, 40)
    .rotateZ(Math.PI / 2)
    .translate(x - spinner, y, z);
  const turning = blades(radius, count, arc, phase).translate(x - spinner, y, z);
  return [part('metal', cone), part('blade', turning), ...(arc === null ? [] : [part('disc', disc)])];
}

/** A leg with wheels: `top` and the axle's height above the ground at `ground`, m. */
export function leg(
  x: number,
  top: number,
  z: number,
  ground: number,
  wheel: number,
  wheels: number,
): Part[] {
  const axle = ground + wheel;
  const strut = new CylinderGeometry(wheel * 0.16, wheel * 0.2, Math.max(0.05, top - axle), 8).translate(
    x,
    (top + axle) / 2,
    z,
  );
  const parts = [part('metal', strut)];
  for (let i = 0; i < wheels; i++) {
    const across = wheels === 1 ? 0 : (i - (wheels - 1) / 2) * wheel * 0.9;
    parts.push(
      part(
        'dark',
        new CylinderGeometry(wheel, wheel, wheel * 0.55, 18)
          .rotateX(Math.PI / 2)
          .translate(x, axle, z + across),
      ),
    );
  }
  return parts;
}
