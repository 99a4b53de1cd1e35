import {
  AmbientLight,
  DirectionalLight,
  FogExp2,
  HemisphereLight,
  Mesh,
  PlaneGeometry,
  ShadowMaterial,
  type Object3D,
} from 'three';
import type { Picture } from '../figures/frame/picture';
import { toDrawing } from './axes';
import { daylight, skyTowards } from './daylight';
import { SkyDome } from './sky';

/** Sky, sun and haze of a picture, and the shadow of the aircraft on the ground. */
export class Lighting {
  readonly sky = new SkyDome();
  readonly sun = new DirectionalLight();
  readonly fog = new FogExp2(0xffffff, 1e-5);
  readonly shadow: Mesh<PlaneGeometry, ShadowMaterial>;
  readonly #skylight = new HemisphereLight();
  readonly #least = new AmbientLight(0xffffff, 0.015);

  constructor() {
    this.sun.castShadow = true;
    this.sun.shadow.mapSize.set(2048, 2048);
    this.sun.shadow.bias = -0.0006;
    this.sun.shadow.normalBias = 0.06;
    this.shadow = new Mesh(
      new PlaneGeometry(1, 1).rotateX(-Math.PI / 2),
      // Drawn after all that is solid: what stands in front of it hides it.
      new ShadowMaterial({ opacity: 0.45, depthWrite: false }),
    );
    this.shadow.receiveShadow = true;
    this.shadow.renderOrder = -2;
  }

  /** What belongs into the scene. */
  get things(): readonly Object3D[] {
    return [this.sky.mesh, this.sun, this.sun.target, this.#skylight, this.#least, this.shadow];
  }

  /** Lights a picture; answers the exposure that a camera would choose for it. */
  shine({ sun, moon, sky, pose, subject, groundBelow, places }: Picture): number {
    const light = daylight(sun.altitude, sky);
    const towards = toDrawing(sun.direction).normalize();
    this.sky.show(light, towards, {
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
    this.sun.color = light.sun.clone().multiplyScalar(1 / strength);
    this.sun.intensity = strength;
    this.sun.position.copy(at).addScaledVector(from, radius * 3);
    this.sun.target.position.copy(at);
    this.sun.target.updateMatrixWorld();
    const reach = above / Math.max(0.02, from.y);
    const { camera } = this.sun.shadow;
    camera.left = camera.bottom = -radius * 1.05;
    camera.right = camera.top = radius * 1.05;
    camera.near = radius;
    camera.far = radius * 6 + Math.min(reach, 4000);
    camera.updateProjectionMatrix();
    this.sun.castShadow = light.sunUp && strength > 0.3;
    this.shadow.visible = this.sun.castShadow && above < 120 && reach < 4000;
    this.shadow.position.set(at.x - (from.x / from.y) * above, groundBelow, at.z - (from.z / from.y) * above);
    const wide = 2.4 * radius * (1 + 1 / Math.max(0.05, from.y));
    this.shadow.scale.set(wide, 1, wide);
    this.#skylight.color = light.above;
    this.#skylight.groundColor = light.below;
    this.#skylight.intensity = 0.85;
    this.fog.color.copy(light.horizon);
    this.fog.density = 1 / light.sightM;
    // Exposed as a camera would: for the scene, and down where the sky round the sun fills the frame.
    const sky0 = skyTowards(light, at.clone().normalize(), towards);
    return 1.22 / Math.max(1, 0.5 + 0.75 * sky0);
  }

  dispose(): void {
    this.sky.dispose();
    this.sun.dispose();
    this.shadow.geometry.dispose();
    this.shadow.material.dispose();
  }
}
