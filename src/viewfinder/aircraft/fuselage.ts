import type { BufferGeometry } from 'three';
import { MeshBuilder, type BodyPoint } from './mesh';

/** One cross-section: an ellipse at `x`, its centre `y` up, its half width and half height in m. */
export interface Section {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
}

const around = 28;

/** The point of a section at an angle in radians: 0 to the right, a quarter turn up. */
function onSection({ x, y, halfWidth, halfHeight }: Section, angle: number, out = 0): BodyPoint {
  return [x, y + (halfHeight + out) * Math.sin(angle), (halfWidth + out) * Math.cos(angle)];
}

/** A body lofted through sections from the nose to the tail. */
export function loft(sections: readonly Section[]): BufferGeometry {
  const mesh = new MeshBuilder();
  mesh.grid(
    sections.map((s) => Array.from({ length: around }, (_, i) => onSection(s, (2 * Math.PI * i) / around))),
    true,
  );
  return mesh.build();
}

/** Between two sections of a body: what lies at `x`. Sections run from the nose (large x) to the tail. */
function sectionAt(sections: readonly Section[], x: number): Section {
  const after = sections.findIndex((s) => s.x <= x);
  const [a, b] = [sections[Math.max(0, after - 1)] as Section, sections[Math.max(0, after)] as Section];
  const t = a.x === b.x ? 0 : (a.x - x) / (a.x - b.x);
  const mix = (p: number, q: number) => p + (q - p) * t;
  return {
    x,
    y: mix(a.y, b.y),
    halfWidth: mix(a.halfWidth, b.halfWidth),
    halfHeight: mix(a.halfHeight, b.halfHeight),
  };
}

/** A patch of the body's skin, a little proud of it: glass. `from`, `to`: m along x; angles in radians. */
export function patch(
  sections: readonly Section[],
  from: number,
  to: number,
  angles: readonly [number, number],
  out: number,
): BufferGeometry {
  const mesh = new MeshBuilder();
  const columns = 18;
  // With the bends of the skin among them: a pane that passes one by would sink below it.
  const bends = sections.flatMap(({ x }) => (x < from && x > to ? [x] : []));
  mesh.grid(
    [from, ...bends, to].map((x) => {
      const section = sectionAt(sections, x);
      return Array.from({ length: columns + 1 }, (_, c) =>
        onSection(section, angles[0] + ((angles[1] - angles[0]) * c) / columns, out),
      );
    }),
    false,
  );
  return mesh.build();
}

/** A row of cabin windows on both sides. `pitch`, `size`: m along the body. */
export function windows(
  sections: readonly Section[],
  from: number,
  to: number,
  pitch: number,
  size: number,
  angle: number,
): BufferGeometry {
  const mesh = new MeshBuilder();
  for (let x = from; x > to; x -= pitch) {
    const section = sectionAt(sections, x);
    const half = (0.62 * size) / section.halfHeight;
    // A flat pane must not sink into the round skin.
    const proud = 0.012 + section.halfHeight * (1 - Math.cos(half));
    for (const side of [angle, Math.PI - angle]) {
      const low = (dx: number, da: number) =>
        mesh.point(onSection({ ...section, x: x + dx }, side + (side === angle ? da : -da), proud));
      const [a, b, c, d] = [
        low(size / 2, -half),
        low(size / 2, half),
        low(-size / 2, half),
        low(-size / 2, -half),
      ];
      if (side === angle) mesh.quad(a, b, c, d);
      else mesh.quad(d, c, b, a);
    }
  }
  return mesh.build();
}
