import type { Position } from '../../survey/document';
import { DEG, RAD } from '../../figures/geometry/angles';
import { along, dot, frameAt, type Frame, type Vec3 } from '../../figures/geometry/earth';
import { refraction, sunAt } from '../../figures/light/sun';
import { clearSky, type SkyThere } from '../../figures/light/sky';
import type { SunThere } from '../../figures/light/sun-there';

/** A sun that is moved from place to place: `SunThere` without its locks. */
export type MovingSun = { -readonly [K in Exclude<keyof SunThere, 'sun'>]: SunThere[K] } & {
  readonly sun: { azimuth: number; altitude: number; geometricAltitude: number };
};

/**
 * The sun at given instants over a whole neighbourhood: asked for once an instant, at one place, as a direction in space,
 * which is the same everywhere on earth to 0.0024 degrees, and here, kilometres apart, to 1e-8. At each place it is turned
 * into that place's east, north and up: no trigonometry but for the refraction.
 */
export class SunOver {
  /** At the place that was asked for last, one an instant. */
  readonly suns: readonly MovingSun[];
  /** Of that place. */
  frame: Frame;
  readonly #directions: readonly Vec3[];

  constructor(middle: Position, instants: readonly number[], skies: readonly SkyThere[]) {
    this.frame = frameAt(middle);
    const { east, north, up } = this.frame;
    this.#directions = instants.map((instant) => {
      const { azimuth, geometricAltitude } = sunAt(middle, instant);
      const level = Math.cos(geometricAltitude * RAD);
      const [e, n] = [level * Math.sin(azimuth * RAD), level * Math.cos(azimuth * RAD)];
      return along(along(along([0, 0, 0], east, e), north, n), up, Math.sin(geometricAltitude * RAD));
    });
    this.suns = instants.map((_, t) => ({
      sun: { azimuth: 0, altitude: 0, geometricAltitude: 0 },
      east: 0,
      north: 0,
      up: 0,
      levelEast: 0,
      levelNorth: 0,
      hidden: false,
      sky: skies[t] ?? clearSky,
    }));
  }

  /** Moves every sun to a place. */
  at(frame: Frame): void {
    this.frame = frame;
    for (let t = 0; t < this.suns.length; t++) {
      const there = this.suns[t] as MovingSun;
      const direction = this.#directions[t] as Vec3;
      const e = dot(direction, frame.east);
      const n = dot(direction, frame.north);
      const u = dot(direction, frame.up);
      const level = Math.sqrt(e * e + n * n);
      const geometric = Math.atan2(u, level) * DEG;
      const altitude = geometric + refraction(geometric);
      there.sun.geometricAltitude = geometric;
      there.sun.altitude = altitude;
      there.levelEast = level > 0 ? e / level : 0;
      there.levelNorth = level > 0 ? n / level : 1;
      const out = Math.cos(altitude * RAD);
      there.east = there.levelEast * out;
      there.north = there.levelNorth * out;
      there.up = Math.sin(altitude * RAD);
      there.hidden = false;
    }
  }
}
