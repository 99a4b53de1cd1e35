import { BackSide, Color, Mesh, ShaderMaterial, SphereGeometry, Vector3 } from 'three';
import type { Sky } from '../figures/optics/exposure';

/** The light of a moment as it is drawn: linear colours, not measures. */
export interface Daylight {
  readonly sun: Color;
  /** The open sky, and what the ground throws back. */
  readonly above: Color;
  readonly below: Color;
  readonly zenith: Color;
  readonly horizon: Color;
  /** How bright the sky is round the sun. */
  readonly glow: number;
  readonly sunUp: boolean;
  /** m at which things fade into the horizon. */
  readonly sightM: number;
}

type Rgb = readonly [number, number, number];
/** By the sun's altitude in degrees: direct sun, skylight, zenith, horizon. Chosen by eye. */
const clear: readonly (readonly [altitude: number, sun: Rgb, sky: Rgb, zenith: Rgb, horizon: Rgb])[] = [
  [-12, [0, 0, 0], [0.02, 0.025, 0.045], [0.006, 0.008, 0.02], [0.02, 0.022, 0.036]],
  [-6, [0.03, 0.02, 0.02], [0.09, 0.11, 0.18], [0.025, 0.04, 0.1], [0.16, 0.12, 0.13]],
  [-2, [0.14, 0.07, 0.05], [0.3, 0.33, 0.46], [0.08, 0.13, 0.28], [0.5, 0.34, 0.27]],
  [-0.833, [0.25, 0.11, 0.05], [0.42, 0.44, 0.56], [0.12, 0.19, 0.38], [0.7, 0.48, 0.36]],
  [2, [2.1, 0.95, 0.38], [0.55, 0.55, 0.64], [0.16, 0.26, 0.5], [0.8, 0.62, 0.48]],
  [8, [2.6, 1.75, 1.05], [0.68, 0.72, 0.84], [0.17, 0.31, 0.6], [0.72, 0.68, 0.62]],
  [20, [2.7, 2.3, 1.85], [0.8, 0.87, 1], [0.15, 0.31, 0.63], [0.62, 0.69, 0.75]],
  [60, [2.8, 2.62, 2.36], [0.9, 0.97, 1.08], [0.12, 0.28, 0.6], [0.6, 0.69, 0.78]],
];

const mixed = (a: Rgb, b: Rgb, t: number): Color =>
  new Color(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t);

/** How much of the sun comes through, how much the sky evens out to grey, and m of sight. */
const veils: Readonly<Record<Sky, readonly [sun: number, grey: number, sightM: number]>> = {
  clear: [1, 0, 30_000],
  hazy: [0.55, 0.45, 9_000],
  overcast: [0.02, 0.92, 14_000],
  heavy: [0, 1, 8_000],
};

/** Daylight for a sun at a geometric altitude in degrees. */
export function daylight(altitude: number, sky: Sky): Daylight {
  const last = clear.length - 1;
  let i = 0;
  while (i < last - 1 && (clear[i + 1]?.[0] ?? Infinity) < altitude) i++;
  const [a, b] = [clear[i], clear[i + 1]] as [(typeof clear)[number], (typeof clear)[number]];
  const t = Math.max(0, Math.min(1, (altitude - a[0]) / (b[0] - a[0])));
  const [through, grey, sightM] = veils[sky];
  const sun = mixed(a[1], b[1], t).multiplyScalar(through);
  const above = mixed(a[2], b[2], t);
  const zenith = mixed(a[3], b[3], t);
  const horizon = mixed(a[4], b[4], t);
  const brightness = (above.r + above.g + above.b) / 3;
  const even = new Color(1, 1.01, 1.03).multiplyScalar(brightness * (sky === 'heavy' ? 0.62 : 0.8));
  above.lerp(even.clone().multiplyScalar(1.35), grey);
  zenith.lerp(even.clone().multiplyScalar(0.72), grey);
  horizon.lerp(even.clone().multiplyScalar(0.86), grey);
  const below = new Color(0.36, 0.36, 0.27).multiplyScalar(brightness * 0.7 + 0.1 * sun.g);
  return {
    sun,
    above,
    below,
    zenith,
    horizon,
    glow: through * Math.max(0, Math.min(1, (altitude + 4) / 6)),
    sunUp: altitude > -0.833,
    sightM,
  };
}

/** What a direction of the sky shows, as the shader below has it; for the exposure of what stands before it. */
export function skyTowards(light: Daylight, direction: Vector3, sun: Vector3): number {
  const up = Math.sqrt(Math.max(0, direction.y));
  const c = Math.max(0, direction.dot(sun));
  const base = light.horizon.clone().lerp(light.zenith, up);
  const glow = light.glow * (1.5 * c ** 24 + 2.2 * c ** 220);
  return 0.3 * base.r + 0.6 * base.g + 0.1 * base.b + glow;
}

const vertex = `
varying vec3 vDirection;
void main() {
  vDirection = position;
  vec4 p = projectionMatrix * vec4(mat3(modelViewMatrix) * position, 1.0);
  gl_Position = p.xyww;
}`;
const fragment = `
varying vec3 vDirection;
uniform vec3 zenith, horizon, sunColour, sunDirection;
uniform float glow, disc;
void main() {
  vec3 d = normalize(vDirection);
  vec3 colour = mix(horizon, zenith, sqrt(max(d.y, 0.0)));
  float c = max(dot(d, sunDirection), 0.0);
  colour += sunColour * glow * (1.5 * pow(c, 24.0) + 2.2 * pow(c, 220.0));
  colour += sunColour * disc * smoothstep(0.9999884, 0.9999896, c) * 40.0;
  gl_FragColor = vec4(colour, 1.0);
  #include <tonemapping_fragment>
  #include <colorspace_fragment>
}`;

/** The dome of the sky with the sun in it: 0.53 degrees across. */
export class SkyDome {
  readonly mesh: Mesh;
  readonly #material: ShaderMaterial;

  constructor() {
    this.#material = new ShaderMaterial({
      vertexShader: vertex,
      fragmentShader: fragment,
      side: BackSide,
      depthWrite: false,
      depthTest: false,
      uniforms: {
        zenith: { value: new Color() },
        horizon: { value: new Color() },
        sunColour: { value: new Color() },
        sunDirection: { value: new Vector3() },
        glow: { value: 0 },
        disc: { value: 0 },
      },
    });
    this.mesh = new Mesh(new SphereGeometry(1, 32, 24), this.#material);
    this.mesh.frustumCulled = false;
    this.mesh.renderOrder = -10;
  }

  show(light: Daylight, sun: Vector3): void {
    const { uniforms } = this.#material;
    const tint = light.sun.clone();
    const most = Math.max(tint.r, tint.g, tint.b, 0.001);
    const set = (name: string, value: unknown) => {
      const uniform = uniforms[name];
      if (uniform) uniform.value = value;
    };
    set('zenith', light.zenith);
    set('horizon', light.horizon);
    set('sunColour', tint.multiplyScalar(1 / most));
    set('sunDirection', sun);
    set('glow', light.glow);
    set('disc', light.sunUp ? light.glow : 0);
  }

  dispose(): void {
    this.mesh.geometry.dispose();
    this.#material.dispose();
  }
}
