import {
  AmbientLight,
  Color,
  DirectionalLight,
  DoubleSide,
  FogExp2,
  Group,
  HemisphereLight,
  LinearToneMapping,
  Mesh,
  MeshBasicMaterial,
  MeshStandardMaterial,
  PCFShadowMap,
  PerspectiveCamera,
  PlaneGeometry,
  Scene,
  ShadowMaterial,
  Vector3,
  WebGLRenderer,
  WebGLRenderTarget,
  type Material,
} from 'three';
import type { Picture } from '../figures/frame/picture';
import { placedBy, toDrawing } from './axes';
import { shapeOf } from './aircraft/shape';
import type { Stuff } from './aircraft/parts';
import { bladeOpacity } from './aircraft/turning';
import { daylight, skyTowards } from './daylight';
import { SkyDome } from './sky';
import { nearPlane } from './near-plane';
import { Surroundings } from './surroundings';

/** Degrees by which the camera is turned away from the aircraft: to the right, and up. */
export interface Pan {
  readonly right: number;
  readonly up: number;
}
export const straight: Pan = { right: 0, up: 0 };

/** What the drawn picture holds, in px from its upper left corner: for tests, and for saying what is to be seen. */
export interface Measured {
  /** Where the aircraft would be with nothing in front of it; null outside the frame. */
  readonly box: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  } | null;
  /** px of the aircraft, and those of them that nothing hides. */
  readonly all: number;
  readonly visible: number;
  /** Mean brightness of what is to be seen of it, linear, 0 to 255; null when it was not asked for. */
  readonly brightness: number | null;
}

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
  readonly #sky = new SkyDome();
  readonly #sun = new DirectionalLight();
  readonly #skylight = new HemisphereLight();
  readonly #least = new AmbientLight(0xffffff, 0.015);
  readonly #aircraft = new Group();
  readonly #shadow: Mesh;
  readonly #materials: Readonly<Record<Stuff, Material>>;
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
    this.#sun.castShadow = true;
    this.#sun.shadow.mapSize.set(2048, 2048);
    this.#sun.shadow.bias = -0.0006;
    this.#sun.shadow.normalBias = 0.06;
    this.#materials = materials();
    this.#shadow = new Mesh(
      new PlaneGeometry(1, 1).rotateX(-Math.PI / 2),
      // Drawn after all that is solid: what stands in front of it hides it.
      new ShadowMaterial({ opacity: 0.45, depthWrite: false }),
    );
    this.#shadow.receiveShadow = true;
    this.#shadow.renderOrder = -2;
    this.#scene.add(
      this.#sky.mesh,
      this.#sun,
      this.#sun.target,
      this.#skylight,
      this.#least,
      this.#aircraft,
      this.#shadow,
    );
    this.#scene.fog = new FogExp2(0xffffff, 1e-5);
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
    let [left, right, top, bottom] = [width, -1, height, -1];
    let [count, seen, sum] = [0, 0, 0];
    for (let i = 0; i < width * height; i++) {
      if (visible[4 * i] !== 0) {
        seen++;
        if (shown) sum += ((shown[4 * i] ?? 0) + (shown[4 * i + 1] ?? 0) + (shown[4 * i + 2] ?? 0)) / 3;
      }
      if (all[4 * i] === 0) continue;
      count++;
      const [x, y] = [i % width, height - 1 - Math.floor(i / width)];
      [left, right] = [Math.min(left, x), Math.max(right, x)];
      [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
    }
    return {
      box: count === 0 ? null : { left, right: right + 1, top, bottom: bottom + 1 },
      all: count,
      visible: seen,
      brightness: shown && seen > 0 ? sum / seen : null,
    };
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
    this.#sky.dispose();
    this.#sun.dispose();
    this.#shadow.geometry.dispose();
    (this.#shadow.material as Material).dispose();
    for (const material of Object.values(this.#materials)) material.dispose();
    this.#renderer.dispose();
    this.#renderer.forceContextLoss();
  }

  #set(picture: Picture, pan: Pan, width: number, height: number): void {
    this.#renderer.setPixelRatio(1);
    this.#renderer.setSize(width, height, false);
    this.#setSurroundings(picture);
    this.#setAircraft(picture);
    this.#setCamera(picture, pan, width / height);
    this.#setLight(picture);
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

  /** A pinhole camera at the eye: its picture agrees with the framing of the figures. */
  #setCamera({ camera, lens, pose, places, scenery }: Picture, pan: Pan, aspect: number): void {
    const forward = toDrawing(camera.forward);
    const right = toDrawing(camera.right);
    const top = toDrawing(camera.top);
    forward.applyAxisAngle(top, (-pan.right * Math.PI) / 180);
    right.applyAxisAngle(top, (-pan.right * Math.PI) / 180);
    forward.applyAxisAngle(right, (pan.up * Math.PI) / 180);
    top.applyAxisAngle(right, (pan.up * Math.PI) / 180);
    const { focalLength, sensorWidth, sensorHeight } = lens;
    // The canvas may differ from the sensor's shape by a rounded pixel: the long side of the picture counts.
    const height = sensorWidth > sensorHeight ? sensorWidth / aspect : sensorHeight;
    this.#camera.fov = (2 * Math.atan(height / (2 * focalLength)) * 180) / Math.PI;
    this.#camera.aspect = aspect;
    const corner = Math.atan(Math.hypot(height, height * aspect) / (2 * focalLength));
    const apart = Math.max(...places.map((place) => Math.hypot(...place)));
    const lowest = corner - Math.asin(Math.max(-1, Math.min(1, forward.y)));
    const wall = this.#surroundings?.drawn.nearest ?? Infinity;
    this.#camera.near = nearPlane(Math.max(0, pose.range - apart), wall, scenery.ground, lowest);
    this.#camera.far = 60_000;
    this.#camera.matrixAutoUpdate = false;
    this.#camera.matrix.copy(placedBy(right, top, forward.negate(), new Vector3()));
    this.#camera.matrixWorldNeedsUpdate = true;
    this.#camera.updateProjectionMatrix();
  }

  #setLight({ sun, moon, sky, pose, subject, groundBelow, places }: Picture): void {
    const light = daylight(sun.altitude, sky);
    const towards = toDrawing(sun.direction).normalize();
    this.#sky.show(light, towards, {
      at: toDrawing(moon.direction),
      lightFrom: toDrawing(moon.lightFrom),
      lit: moon.lit,
    });
    const at = toDrawing(pose.at);
    const apart = Math.max(...places.map((place) => Math.hypot(...place)));
    const radius = Math.hypot(subject.length, subject.span, subject.height) / 2 + apart;
    const above = pose.at[2] - groundBelow;
    // Low light from below the horizon still comes from that side of the sky.
    const from = towards.clone();
    from.y = Math.max(from.y, 0.02);
    from.normalize();
    const strength = Math.max(light.sun.r, light.sun.g, light.sun.b, 1e-6);
    this.#sun.color = light.sun.clone().multiplyScalar(1 / strength);
    this.#sun.intensity = strength;
    this.#sun.position.copy(at).addScaledVector(from, radius * 3);
    this.#sun.target.position.copy(at);
    this.#sun.target.updateMatrixWorld();
    const reach = above / Math.max(0.02, from.y);
    const { camera } = this.#sun.shadow;
    camera.left = camera.bottom = -radius * 1.05;
    camera.right = camera.top = radius * 1.05;
    camera.near = radius;
    camera.far = radius * 6 + Math.min(reach, 4000);
    camera.updateProjectionMatrix();
    this.#sun.castShadow = light.sunUp && strength > 0.3;
    this.#shadow.visible = this.#sun.castShadow && above < 120 && reach < 4000;
    this.#shadow.position.set(
      at.x - (from.x / from.y) * above,
      groundBelow,
      at.z - (from.z / from.y) * above,
    );
    const wide = 2.4 * radius * (1 + 1 / Math.max(0.05, from.y));
    this.#shadow.scale.set(wide, 1, wide);
    this.#skylight.color = light.above;
    this.#skylight.groundColor = light.below;
    this.#skylight.intensity = 0.85;
    if (this.#scene.fog instanceof FogExp2) {
      this.#scene.fog.color.copy(light.horizon);
      this.#scene.fog.density = 1 / light.sightM;
    }
    // Exposed as a camera would: for the scene, and down where the sky round the sun fills the frame.
    const sky0 = skyTowards(light, at.clone().normalize(), towards);
    this.#renderer.toneMappingExposure = 1.22 / Math.max(1, 0.5 + 0.75 * sky0);
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
    const away: { visible: boolean }[] = [this.#sky.mesh, this.#shadow];
    for (const child of around?.children ?? []) {
      if (!(child instanceof Mesh)) continue;
      // What stands solid hides; the ground, paint and mesh fences do not.
      if (hidden && child.renderOrder === 0) swap(child as Mesh, black);
      else away.push(child);
    }
    const before = away.map((thing) => thing.visible);
    for (const thing of away) thing.visible = false;
    const { castShadow } = this.#sun;
    this.#sun.castShadow = false;
    this.#renderer.setRenderTarget(target);
    this.#renderer.setClearColor(new Color(0, 0, 0), 0);
    this.#renderer.clear();
    this.#renderer.render(this.#scene, this.#camera);
    const pixels = this.#pixels(target);
    this.#sun.castShadow = castShadow;
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

function materials(): Readonly<Record<Stuff, Material>> {
  return {
    skin: new MeshStandardMaterial({ vertexColors: true, roughness: 0.5, side: DoubleSide }),
    accent: new MeshStandardMaterial({ color: 0x3f5f74, roughness: 0.5, side: DoubleSide }),
    glass: new MeshStandardMaterial({ color: 0x1d242a, roughness: 0.25, metalness: 0.1, side: DoubleSide }),
    metal: new MeshStandardMaterial({ color: 0x9a9d9f, roughness: 0.45, metalness: 0.25 }),
    dark: new MeshStandardMaterial({ color: 0x26282a, roughness: 0.8 }),
    blade: new MeshStandardMaterial({ color: 0x303234, roughness: 0.7, side: DoubleSide, transparent: true }),
    disc: new MeshBasicMaterial({
      color: 0x565b5e,
      side: DoubleSide,
      transparent: true,
      opacity: 0.07,
      depthWrite: false,
    }),
  };
}
