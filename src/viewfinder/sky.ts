import { BackSide, Color, Mesh, ShaderMaterial, SphereGeometry, Vector3 } from 'three';
import { throughAir, type Daylight } from './daylight';

const vertex = `
varying vec3 vDirection;
void main() {
  vDirection = position;
  vec4 p = projectionMatrix * vec4(mat3(modelViewMatrix) * position, 1.0);
  gl_Position = p.xyww;
}`;
const fragment = `
varying vec3 vDirection;
uniform vec3 zenith, horizon, bow, sunColour, sunDirection, moonColour, moonDirection, moonlightFrom;
uniform float glow, disc, aureole;

// The bow of twilight, as daylight.ts has it.
float bowTowards(vec3 d) {
  float beside = dot(normalize(d.xz + 1e-9), normalize(sunDirection.xz + 1e-9));
  return pow(0.5 + 0.5 * beside, 3.0) * exp(-max(d.y, 0.0) / 0.13);
}

// A ball 0.52 degrees across, lit from where its light comes from; what is not lit is sky. Rough ground throws light
// back evenly up to the limb (Lommel and Seeliger).
vec3 moonTowards(vec3 d) {
  float ahead = dot(d, moonDirection);
  if (ahead < 0.5) return vec3(0.0);
  vec3 across = (d - moonDirection * ahead) / 0.00452;
  float r = length(across);
  vec3 normal = across - moonDirection * sqrt(max(0.0, 1.0 - r * r));
  float soft = max(fwidth(r), 1e-4);
  float towardsEye = sqrt(max(0.0, 1.0 - r * r));
  float lit = dot(normal, moonlightFrom);
  float shade = max(0.0, lit) / (max(0.0, lit) + towardsEye + 0.15);
  float ball = (1.0 - smoothstep(1.0 - soft, 1.0 + soft, r)) * smoothstep(-soft, soft, lit) * min(1.0, 1.9 * shade);
  float halo = aureole * (0.035 * exp(-r / 4.0) + 0.005 * exp(-r / 20.0));
  return moonColour * (ball + halo);
}

void main() {
  vec3 d = normalize(vDirection);
  vec3 colour = mix(horizon, zenith, sqrt(max(d.y, 0.0)));
  colour += bow * bowTowards(d);
  float c = max(dot(d, sunDirection), 0.0);
  colour += sunColour * glow * (1.5 * pow(c, 24.0) + 2.2 * pow(c, 220.0));
  colour += sunColour * disc * smoothstep(0.9999884, 0.9999896, c) * 40.0;
  colour += moonTowards(d);
  gl_FragColor = vec4(colour, 1.0);
  #include <tonemapping_fragment>
  #include <colorspace_fragment>
}`;

/** The dome of the sky with the sun in it, 0.53 degrees across, and the moon. */
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
        bow: { value: new Color() },
        sunColour: { value: new Color() },
        sunDirection: { value: new Vector3() },
        moonColour: { value: new Color() },
        moonDirection: { value: new Vector3() },
        moonlightFrom: { value: new Vector3() },
        aureole: { value: 0 },
        glow: { value: 0 },
        disc: { value: 0 },
      },
    });
    this.mesh = new Mesh(new SphereGeometry(1, 32, 24), this.#material);
    this.mesh.frustumCulled = false;
    this.mesh.renderOrder = -10;
  }

  /** `sun`, `moon.at`: unit vectors in the drawing's axes; `moon.lightFrom`: from the moon to where its light comes from. */
  show(
    light: Daylight,
    sun: Vector3,
    moon: { readonly at: Vector3; readonly lightFrom: Vector3; readonly lit: number },
  ): void {
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
    set('bow', light.bow);
    const moonAltitude = (Math.asin(moon.at.y) * 180) / Math.PI;
    // Well below the horizon it is not seen through what the ground leaves open.
    const air = moonAltitude < -1 ? ([0, 0, 0] as const) : throughAir(moonAltitude);
    set('moonColour', light.moon.clone().multiply(new Color(...air)));
    set('moonDirection', moon.at);
    set('moonlightFrom', moon.lightFrom);
    set('aureole', moon.lit);
    set('glow', light.glow);
    set('disc', light.sunUp ? light.glow : 0);
  }

  dispose(): void {
    this.mesh.geometry.dispose();
    this.#material.dispose();
  }
}
