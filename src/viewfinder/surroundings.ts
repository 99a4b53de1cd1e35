import {
  BufferAttribute,
  BufferGeometry,
  CanvasTexture,
  DoubleSide,
  FrontSide,
  Group,
  Mesh,
  MeshLambertMaterial,
  RepeatWrapping,
  ShapeUtils,
  SRGBColorSpace,
  Vector2,
  type Material,
  type Vector3,
} from 'three';
import type { EastNorthUp } from '../figures/frame/from-eye';
import type { Block, RunwayStrip, Scenery, Strip } from '../figures/frame/scenery';
import { toDrawing } from './axes';
import { meshTexture, wireSpacing } from './fence';
import { nearestWall } from './near-plane';
import { speckles } from './speckles';

/** Painted from the back to the front without depth: sky, ground, pavements, paint on them; then what stands up. */
const order = { ground: -8, pavement: -6, paint: -4, standing: 0, fence: 10 } as const;

/** The ground and all that stands on it, built once for an eye. */
export class Surroundings {
  readonly group = new Group();
  /** m to the nearest wall of what stands about the eye. */
  readonly nearest: number;
  readonly #materials: Material[] = [];
  readonly #textures: CanvasTexture[] = [];
  readonly #fences: { readonly material: MeshLambertMaterial; texture: CanvasTexture }[] = [];
  readonly #trees: {
    readonly id: string;
    readonly material: MeshLambertMaterial;
    readonly meshes: readonly Mesh[];
  }[] = [];
  #contrast = -1;

  constructor(scenery: Scenery) {
    this.nearest = nearestWall(scenery.blocks);
    const grass = new CanvasTexture(speckles());
    grass.wrapS = grass.wrapT = RepeatWrapping;
    grass.anisotropy = 8;
    grass.colorSpace = SRGBColorSpace;
    this.#textures.push(grass);
    this.#add(
      blades(groundMesh(scenery.ground)),
      this.#material({ map: grass, color: 0xffffff }, false),
      order.ground,
    );
    const tarmac = this.#material({ color: 0x84857f }, false);
    const asphalt = this.#material({ color: 0x6d6f6c }, false);
    const mown = this.#material({ color: 0x8f9a63 }, false);
    const paint = this.#material({ color: 0xe8e6dc }, false);
    for (const outline of scenery.aprons) this.#add(flat(outline), tarmac, order.pavement);
    for (const strip of scenery.taxiRoutes) this.#add(stripMesh(strip), tarmac, order.pavement);
    for (const runway of scenery.runways) {
      const strip = stripMesh(runway);
      this.#add(runway.paved ? strip : blades(strip), runway.paved ? asphalt : mown, order.pavement + 1);
      if (runway.paved) this.#add(markings(runway), paint, order.paint);
    }
    for (const block of scenery.blocks) this.#addBlock(block);
  }

  /** A fence is far out of focus: the wider the lens is open against the mesh, the more of it is a mere veil. */
  focus(focalLength: number, aperture: number): void {
    const contrast = Math.max(0, Math.min(1, 1 - focalLength / 1000 / aperture / wireSpacing));
    if (Math.abs(contrast - this.#contrast) < 0.02) return;
    this.#contrast = contrast;
    for (const fence of this.#fences) {
      fence.texture.dispose();
      fence.texture = meshTexture(contrast);
      fence.material.map = fence.texture;
      fence.material.needsUpdate = true;
    }
  }

  /** Trees out of leaf are seen through. */
  season(bare: readonly string[]): void {
    for (const { id, material, meshes } of this.#trees) {
      const leafless = bare.includes(id);
      if (material.transparent === leafless) continue;
      Object.assign(material, { transparent: leafless, opacity: leafless ? 0.3 : 1, depthWrite: !leafless });
      material.needsUpdate = true;
      for (const mesh of meshes) mesh.renderOrder = leafless ? order.fence : order.standing;
    }
  }

  #material(
    options: ConstructorParameters<typeof MeshLambertMaterial>[0],
    depth: boolean,
  ): MeshLambertMaterial {
    const material = new MeshLambertMaterial({
      side: FrontSide,
      depthWrite: depth,
      depthTest: depth,
      ...options,
    });
    this.#materials.push(material);
    return material;
  }

  #add(geometry: BufferGeometry, material: Material, renderOrder: number): Mesh {
    const mesh = new Mesh(geometry, material);
    mesh.renderOrder = renderOrder;
    mesh.frustumCulled = false;
    this.group.add(mesh);
    return mesh;
  }

  #addBlock(block: Block): void {
    if (block.looks === 'wires') {
      const texture = meshTexture(1);
      const material = this.#material(
        { map: texture, transparent: true, side: DoubleSide, depthTest: true, color: 0xffffff },
        false,
      );
      material.depthTest = true;
      this.#fences.push({ material, texture });
      this.#add(walls(block, false), material, order.fence).userData['fence'] = true;
      return;
    }
    const leaf = block.looks === 'leaves';
    const material = this.#material(
      { color: leaf ? 0x5b6c3d : 0xb0a898, flatShading: true, side: DoubleSide },
      true,
    );
    const meshes = [this.#add(walls(block, leaf), material, order.standing)];
    if (block.closed) {
      const roof = leaf ? material : this.#material({ color: 0x8d8578, side: DoubleSide }, true);
      meshes.push(this.#add(flat(block.top), roof, order.standing));
    }
    if (leaf) this.#trees.push({ id: block.id, material, meshes });
  }

  dispose(): void {
    for (const child of this.group.children)
      if (child instanceof Mesh) (child.geometry as BufferGeometry).dispose();
    for (const material of this.#materials) material.dispose();
    for (const texture of this.#textures) texture.dispose();
    for (const { texture } of this.#fences) texture.dispose();
  }
}

function geometryOf(
  points: readonly Vector3[],
  indices: readonly number[],
  uv?: readonly number[],
): BufferGeometry {
  const geometry = new BufferGeometry();
  const positions = new Float32Array(points.flatMap((p) => [p.x, p.y, p.z]));
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  if (uv) geometry.setAttribute('uv', new BufferAttribute(new Float32Array(uv), 2));
  geometry.setIndex([...indices]);
  geometry.computeVertexNormals();
  return geometry;
}

/** m of ground that one tile of the speckles covers. */
const tile = 60;

/**
 * Grass stands up: from the side one sees its blades, and low sun from behind lights those, not the ground between them.
 * So its surface faces up and, almost as much, towards the eye, at the origin; below the eye it is seen from above.
 */
function blades(geometry: BufferGeometry): BufferGeometry {
  const place = geometry.getAttribute('position');
  const normal = geometry.getAttribute('normal');
  for (let i = 0; i < place.count; i++) {
    const [x, z] = [-place.getX(i), -place.getZ(i)];
    const away = Math.hypot(x, z);
    const lean = away > 0 ? (0.8 * Math.min(1, away / 10)) / away : 0;
    const length = Math.hypot(1, lean * away);
    normal.setXYZ(i, (x * lean) / length, 1 / length, (z * lean) / length);
  }
  return geometry;
}

/** From the outermost ring inwards, so that what is nearer is painted over what is farther away. */
function groundMesh({ points, spokes }: Scenery['ground']): BufferGeometry {
  const places = points.map(toDrawing);
  const rings = (points.length - 1) / spokes;
  const at = (ring: number, i: number) => 1 + ring * spokes + (i % spokes);
  const indices: number[] = [];
  for (let ring = rings - 1; ring > 0; ring--)
    for (let i = 0; i < spokes; i++) {
      const [a, b, c, d] = [at(ring - 1, i), at(ring - 1, i + 1), at(ring, i + 1), at(ring, i)];
      indices.push(a, b, c, a, c, d);
    }
  for (let i = 0; i < spokes; i++) indices.push(0, at(0, i + 1), at(0, i));
  return geometryOf(
    places,
    indices,
    points.flatMap(([e, n]) => [e / tile, n / tile]),
  );
}

function stripMesh({ left, right }: Strip): BufferGeometry {
  const points = left.flatMap((l, i) => [toDrawing(l), toDrawing(right[i] ?? l)]);
  const indices: number[] = [];
  for (let i = 0; i + 1 < left.length; i++) {
    const k = 2 * i;
    indices.push(k, k + 1, k + 2, k + 1, k + 3, k + 2);
  }
  return geometryOf(points, indices);
}

/** A polygon as it lies, seen from above. */
function flat(outline: readonly EastNorthUp[]): BufferGeometry {
  const open = closedTwice(outline) ? outline.slice(0, -1) : outline;
  const contour = open.map(([e, n]) => new Vector2(e, n));
  const faces = ShapeUtils.triangulateShape(contour, []);
  const up = ShapeUtils.isClockWise(contour) ? [0, 2, 1] : [0, 1, 2];
  const indices = faces.flatMap((face) => up.map((k) => face[k] as number));
  return geometryOf(open.map(toDrawing), indices);
}

const closedTwice = (outline: readonly EastNorthUp[]): boolean => {
  const [a, b] = [outline[0], outline[outline.length - 1]];
  return outline.length > 1 && !!a && !!b && Math.hypot(a[0] - b[0], a[1] - b[1]) < 0.01;
};

function walls({ foot, top }: Block, jagged: boolean): BufferGeometry {
  const points: Vector3[] = [];
  const indices: number[] = [];
  const uv: number[] = [];
  let along = 0;
  for (let i = 0; i + 1 < foot.length; i++) {
    const [a, b] = [foot[i] as EastNorthUp, foot[i + 1] as EastNorthUp];
    const [c, d] = [top[i + 1] as EastNorthUp, top[i] as EastNorthUp];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const k = points.length;
    points.push(toDrawing(a), toDrawing(b), toDrawing(c), toDrawing(d));
    const high = jagged ? 1 : c[2] - b[2];
    uv.push(along, 0, along + length, 0, along + length, high, along, high);
    indices.push(k, k + 1, k + 2, k, k + 2, k + 3);
    along += length;
  }
  return geometryOf(points, indices, uv);
}

/** Paint on a runway: edge lines, dashes of the centreline, threshold stripes, aiming points. Sizes after ICAO Annex 14, from memory. */
function markings(runway: RunwayStrip): BufferGeometry {
  const { length, width, displaced } = runway;
  const points: Vector3[] = [];
  const indices: number[] = [];
  const at = (u: number, v: number): Vector3 => {
    const f = (Math.max(0, Math.min(length, u)) / length) * (runway.left.length - 1);
    const i = Math.min(runway.left.length - 2, Math.floor(f));
    const along = (edge: readonly EastNorthUp[]) =>
      toDrawing(edge[i] as EastNorthUp).lerp(toDrawing(edge[i + 1] as EastNorthUp), f - i);
    return along(runway.left).lerp(along(runway.right), v / width + 0.5);
  };
  /** From `u0` to `u1` m along, from `v0` to `v1` m across, both measured from the middle. */
  const box = (u0: number, u1: number, v0: number, v1: number) => {
    const steps = Math.max(1, Math.ceil((u1 - u0) / 100));
    for (let s = 0; s < steps; s++) {
      const [a, b] = [u0 + ((u1 - u0) * s) / steps, u0 + ((u1 - u0) * (s + 1)) / steps];
      const k = points.length;
      points.push(at(a, v0), at(a, v1), at(b, v0), at(b, v1));
      indices.push(k, k + 1, k + 2, k + 1, k + 3, k + 2);
    }
  };
  const half = width / 2;
  box(0, length, -half, -half + 0.9);
  box(0, length, half - 0.9, half);
  for (let u = 60; u < length - 60; u += 50) box(u, u + 30, -0.45, 0.45);
  for (const [from, way] of [
    [displaced[0], 1],
    [length - displaced[1], -1],
  ] as const) {
    const span = (a: number, b: number, v0: number, v1: number) => {
      const [u0, u1] = [from + way * a, from + way * b];
      box(Math.min(u0, u1), Math.max(u0, u1), v0, v1);
    };
    for (let v = 2.2; v < half - 2.5; v += 3.6) {
      span(6, 36, v, v + 1.8);
      span(6, 36, -v - 1.8, -v);
    }
    if (length > 1200)
      for (const side of [1, -1]) span(300, 350, side * half * 0.3 - 3, side * half * 0.3 + 3);
  }
  return geometryOf(points, indices);
}
