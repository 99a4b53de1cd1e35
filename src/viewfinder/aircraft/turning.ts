import { BufferAttribute, BufferGeometry } from 'three';
import { DEG, RAD } from '../../survey/angles';

/**
 * Blades of a propeller or rotor in the plane of y and z about the x axis, each smeared over the `arc` in degrees that
 * it sweeps while the shutter is open; they thin out towards the root. `arc` null: they stand still.
 */
export function blades(radius: number, count: number, arc: number | null, phase: number): BufferGeometry {
  const positions: number[] = [];
  const width = 0.09 * radius;
  // A blade is as wide as it is, and its arc beside it.
  const smeared = Math.min(2 * Math.PI, (arc ?? 0) * RAD + width / (0.7 * radius));
  const steps = Math.max(2, Math.ceil(smeared / 0.12));
  const ring = (a: number, r: number) => [0, r * Math.sin(a), r * Math.cos(a)];
  for (let b = 0; b < count; b++) {
    const from = phase + (2 * Math.PI * b) / count - smeared / 2;
    for (let s = 0; s < steps; s++) {
      const [a0, a1] = [from + (smeared * s) / steps, from + (smeared * (s + 1)) / steps];
      const [inner, outer] = [0.08 * radius, radius];
      positions.push(...ring(a0, inner), ...ring(a0, outer), ...ring(a1, outer));
      positions.push(...ring(a0, inner), ...ring(a1, outer), ...ring(a1, inner));
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  geometry.computeVertexNormals();
  return geometry;
}

/** How dense a smeared blade looks: what it covered of its arc while the shutter was open. */
export function bladeOpacity(arc: number | null): number {
  const own = (0.09 / 0.7) * DEG;
  return arc === null ? 1 : Math.max(0.16, Math.min(1, own / (arc * 0.35 + own)));
}
