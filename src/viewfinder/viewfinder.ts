import {
  Color,
  DoubleSide,
  Group,
  LinearToneMapping,
  Mesh,
  MeshBasicMaterial,
  PCFShadowMap,
  PerspectiveCamera,
  Scene,
  WebGLRenderer,
  WebGLRenderTarget,
  type Material,
} from 'three';
import type { Picture } from '../figures/frame/picture';
import { aim, straight, type Pan } from './aim';
import type { Stuff } from './aircraft/parts';
import { shapeOf } from './aircraft/shape';
import { bladeOpacity } from './aircraft/turning';
import { placedBy, toDrawing } from './axes';
import { Lighting } from './lighting';
import { materials } from './materials';
import { measured, type Measured } from './measured';
import { Surroundings } from './surroundings';

/** Whether the browser can draw it at all. */
export function canDraw(): boolean {
  const gl = document.createElement('canvas').getContext('webgl2');
  gl?.getExtension('WEBGL_lose_context')?.loseContext();
  return gl !== null;
}

/** Draws what a camera sees: one hidden WebGL canvas, copied to the canvases of the page. */
export class Viewfinder {
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #camera = new PerspectiveCamera();
  readonly #lighting = new Lighting();
  readonly #aircraft = new Group();
  readonly #materials: Readonly<Record<Stuff, Material>> = materials();
  #surroundings: { readonly of: Picture['scenery']; readonly drawn: Surroundings } | null = null;
  #built: {
    readonly subject: Picture['subject'];
    readonly gearDown: boolean;
    readonly arc: number | null;
    readonly places: Picture['places'];
  } | null = null;

  constructor() {
    this.#renderer = new WebGLRenderer({ antialias: true, alpha: false, powerPreference: 'low-power' });
    this.#renderer.toneMapping = LinearToneMapping;
    this.#renderer.shadowMap.enabled = true;
    this.#renderer.shadowMap.type = PCFShadowMap;
    this.#scene.add(...this.#lighting.things, this.#aircraft);
    this.#scene.fog = this.#lighting.fog;
  }

  /** Draws a picture on a canvas of the page, as large as that is. */
  draw(picture: Picture, canvas: HTMLCanvasElement, pan: Pan = straight): void {
    const { width, height } = canvas;
    if (width === 0 || height === 0) return;
    this.#set(picture, pan, width, height);
    this.#renderer.render(this.#scene, this.#camera);
    canvas.getContext('2d')?.drawImage(this.#renderer.domElement, 0, 0, width, height);
  }

  /**
   * Draws the aircraft alone in one colour and counts: the picture must agree with the figures. What it costs most,
   * brightness, is left out unless it is asked for.
   */
  measure(
    picture: Picture,
    width: number,
    height: number,
    withBrightness = false,
    pan: Pan = straight,
  ): Measured {
    this.#set(picture, pan, width, height);
    const target = new WebGLRenderTarget(width, height);
    const all = this.#mask(target, false);
    const visible = this.#mask(target, true);
    if (withBrightness) {
      this.#renderer.setRenderTarget(target);
      this.#renderer.render(this.#scene, this.#camera);
    }
    const shown = withBrightness ? this.#pixels(target) : null;
    this.#renderer.setRenderTarget(null);
    target.dispose();
    return measured(all, visible, shown, width, height);
  }

  /** Triangles and calls of the last frame, and what the graphics memory holds: for benchmarks. */
  get cost(): {
    readonly triangles: number;
    readonly calls: number;
    readonly geometries: number;
    readonly textures: number;
  } {
    const { render, memory } = this.#renderer.info;
    return {
      triangles: render.triangles,
      calls: render.calls,
      geometries: memory.geometries,
      textures: memory.textures,
    };
  }

  /** Gives everything back to the graphics card. The viewfinder is of no use afterwards. */
  dispose(): void {
    this.#clearAircraft();
    this.#surroundings?.drawn.dispose();
    this.#lighting.dispose();
    for (const material of Object.values(this.#materials)) material.dispose();
    this.#renderer.dispose();
    this.#renderer.forceContextLoss();
  }

  #set(picture: Picture, pan: Pan, width: number, height: number): void {
    this.#renderer.setPixelRatio(1);
    this.#renderer.setSize(width, height, false);
    this.#setSurroundings(picture);
    this.#setAircraft(picture);
    aim(this.#camera, picture, pan, width / height, this.#surroundings?.drawn.nearest ?? Infinity);
    this.#renderer.toneMappingExposure = this.#lighting.shine(picture);
  }

  #setSurroundings({ scenery, lens, bare }: Picture): void {
    if (this.#surroundings?.of !== scenery) {
      if (this.#surroundings) {
        this.#scene.remove(this.#surroundings.drawn.group);
        this.#surroundings.drawn.dispose();
      }
      const drawn = new Surroundings(scenery);
      this.#surroundings = { of: scenery, drawn };
      this.#scene.add(drawn.group);
    }
    this.#surroundings.drawn.season(bare);
    this.#surroundings.drawn.focus(lens.focalLength, lens.aperture);
  }

  #setAircraft({ subject, gearDown, arc, pose, places }: Picture): void {
    const built = this.#built;
    const asBuilt = built?.subject === subject && built.gearDown === gearDown && built.arc === arc;
    if (!asBuilt || !samePlaces(built.places, places)) {
      this.#clearAircraft();
      for (const { stuff, geometry } of shapeOf(subject, { gearDown, arc })) {
        const solid = stuff !== 'disc' && stuff !== 'blade';
        for (const [ahead, left, up] of places) {
          const mesh = new Mesh(geometry, this.#materials[stuff]);
          mesh.position.set(ahead, up, -left);
          mesh.castShadow = solid;
          mesh.receiveShadow = solid;
          if (!solid) mesh.renderOrder = 5;
          this.#aircraft.add(mesh);
        }
      }
      const opacity = bladeOpacity(arc);
      Object.assign(this.#materials.blade, { opacity, transparent: opacity < 1, depthWrite: opacity === 1 });
      this.#materials.blade.needsUpdate = true;
      this.#built = { subject, gearDown, arc, places };
    }
    const right = toDrawing(pose.left).negate();
    this.#aircraft.matrixAutoUpdate = false;
    this.#aircraft.matrix.copy(
      placedBy(toDrawing(pose.forward), toDrawing(pose.up), right, toDrawing(pose.at)),
    );
    this.#aircraft.matrixWorldNeedsUpdate = true;
  }

  #clearAircraft(): void {
    for (const child of this.#aircraft.children)
      if (child instanceof Mesh) (child as Mesh).geometry.dispose();
    this.#aircraft.clear();
    this.#built = null;
  }

  /** The aircraft in white on black; `hidden` lets what stands in front of it hide it. */
  #mask(target: WebGLRenderTarget, hidden: boolean): Uint8Array {
    const white = new MeshBasicMaterial({ color: 0xffffff, side: DoubleSide, fog: false, toneMapped: false });
    const black = new MeshBasicMaterial({ color: 0x000000, side: DoubleSide, fog: false, toneMapped: false });
    const swapped: [Mesh, Mesh['material']][] = [];
    const swap = (mesh: Mesh, material: Material) => {
      swapped.push([mesh, mesh.material]);
      mesh.material = material;
    };
    const around = this.#surroundings?.drawn.group;
    for (const child of this.#aircraft.children) if (child instanceof Mesh) swap(child as Mesh, white);
    const away: { visible: boolean }[] = [this.#lighting.sky.mesh, this.#lighting.shadow];
    for (const child of around?.children ?? []) {
      if (!(child instanceof Mesh)) continue;
      // What stands solid hides; the ground, paint and mesh fences do not.
      if (hidden && child.renderOrder === 0) swap(child as Mesh, black);
      else away.push(child);
    }
    const before = away.map((thing) => thing.visible);
    for (const thing of away) thing.visible = false;
    const { sun } = this.#lighting;
    const { castShadow } = sun;
    sun.castShadow = false;
    this.#renderer.setRenderTarget(target);
    this.#renderer.setClearColor(new Color(0, 0, 0), 0);
    this.#renderer.clear();
    this.#renderer.render(this.#scene, this.#camera);
    const pixels = this.#pixels(target);
    sun.castShadow = castShadow;
    for (const [mesh, material] of swapped) mesh.material = material;
    away.forEach((thing, i) => (thing.visible = before[i] ?? true));
    white.dispose();
    black.dispose();
    return pixels;
  }

  #pixels(target: WebGLRenderTarget): Uint8Array {
    const pixels = new Uint8Array(target.width * target.height * 4);
    this.#renderer.readRenderTargetPixels(target, 0, 0, target.width, target.height, pixels);
    return pixels;
  }
}

const samePlaces = (a: Picture['places'], b: Picture['places']): boolean =>
  a.length === b.length && a.every((place, i) => place.every((c, k) => c === b[i]?.[k]));
