import { BufferAttribute, BufferGeometry } from 'three';

/** Points of a body: m forward, up and to the right of the aircraft's centre. */
export type BodyPoint = readonly [x: number, y: number, z: number];

/** Collects triangles and quads into one geometry; normals come from the faces, smooth where points are shared. */
export class MeshBuilder {
  readonly #positions: number[] = [];
  readonly #indices: number[] = [];

  point([x, y, z]: BodyPoint): number {
    this.#positions.push(x, y, z);
    return this.#positions.length / 3 - 1;
  }

  triangle(a: number, b: number, c: number): void {
    this.#indices.push(a, b, c);
  }

  quad(a: number, b: number, c: number, d: number): void {
    this.#indices.push(a, b, c, a, c, d);
  }

  /** A grid of points, row after row; `wrap` joins the last column to the first. */
  grid(rows: readonly (readonly BodyPoint[])[], wrap: boolean): void {
    const indices = rows.map((row) => row.map((p) => this.point(p)));
    for (let r = 0; r + 1 < indices.length; r++) {
      const [near, far] = [indices[r] as number[], indices[r + 1] as number[]];
      const columns = wrap ? near.length : near.length - 1;
      for (let c = 0; c < columns; c++) {
        const d = (c + 1) % near.length;
        this.quad(near[c] as number, near[d] as number, far[d] as number, far[c] as number);
      }
    }
  }

  /** Closes a row with a fan. */
  cap(row: readonly BodyPoint[], flipped = false): void {
    const [first, ...rest] = row.map((p) => this.point(p)) as [number, ...number[]];
    for (let i = 0; i + 1 < rest.length; i++) {
      const [a, b] = [rest[i] as number, rest[i + 1] as number];
      if (flipped) this.triangle(first, b, a);
      else this.triangle(first, a, b);
    }
  }

  build(): BufferGeometry {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(new Float32Array(this.#positions), 3));
    geometry.setIndex(this.#indices);
    geometry.computeVertexNormals();
    return geometry;
  }
}
