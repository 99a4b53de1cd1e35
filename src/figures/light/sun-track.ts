import type { Position } from '../../survey/document';
import type { SunThere } from './sun-there';
import type { Sun } from '../types';
import { DEG, RAD, wrap180, wrap360 } from '../geometry/angles';
import { alwaysClear, clearSky, type SkyAt } from './sky';
import { refraction, sunAt } from './sun';

/** ms over which sine and cosine of the sun's declination and its lead over the mean sun are taken as straight lines. */
const stepMs = 43_200_000;
/** Degrees by which the mean sun turns in one ms. */
const turn = 360 / 86_400_000;

interface Node {
  readonly sinDeclination: number;
  readonly cosDeclination: number;
  /** Hour angle in degrees, less the turn of the mean sun since the epoch. */
  readonly lead: number;
}

/** Few ask for the azimuth: it is worked out for them. */
class MovingSun implements Sun {
  altitude = 0;
  geometricAltitude = 0;
  east = 0;
  north = 1;
  get azimuth(): number {
    return wrap360(Math.atan2(this.east, this.north) * DEG);
  }
}

/**
 * The sun over one place at very many instants: a year of quarter hours. The sun is asked for twice a day only; between
 * these its declination and hour angle go in straight lines, which costs less than 0.001 degrees (test F240). The refraction is
 * turned in by its series, which costs nothing that a double holds.
 */
export class SunTrack {
  readonly #position: Position;
  readonly #skyAt: SkyAt;
  readonly #sinLat: number;
  readonly #cosLat: number;
  readonly #there = {
    sun: new MovingSun(),
    east: 0,
    north: 0,
    up: 0,
    levelEast: 0,
    levelNorth: 0,
    hidden: false,
    sky: clearSky,
  };
  readonly #nodes = new Map<number, Node>();
  /** The two nodes of the last question: the next one mostly lies between them as well. */
  #k = NaN;
  #a: Node = { sinDeclination: 0, cosDeclination: 1, lead: 0 };
  #b: Node = this.#a;

  constructor(position: Position, skyAt: SkyAt = alwaysClear) {
    this.#skyAt = skyAt;
    this.#position = position;
    this.#sinLat = Math.sin(position[1] * RAD);
    this.#cosLat = Math.cos(position[1] * RAD);
  }

  /** The sun at an instant (ms since 1970, UTC). One and the same object every time: it holds until the next call. */
  at(instant: number): SunThere {
    const k = Math.floor(instant / stepMs);
    if (k !== this.#k) {
      this.#k = k;
      this.#a = this.#node(k);
      const next = this.#node(k + 1);
      // Counted on from the one before: no jump by a full turn between the two.
      this.#b = { ...next, lead: this.#a.lead + wrap180(next.lead - this.#a.lead) };
    }
    const a = this.#a;
    const b = this.#b;
    const t = instant / stepMs - k;
    const sinDec = a.sinDeclination + (b.sinDeclination - a.sinDeclination) * t;
    const cosDec = a.cosDeclination + (b.cosDeclination - a.cosDeclination) * t;
    // Two steps are a day: the mean sun's turn without a division.
    const hourAngle = (a.lead + (b.lead - a.lead) * t + turn * stepMs * (t + (k & 1))) * RAD;
    const cosHour = Math.cos(hourAngle);
    const east = -cosDec * Math.sin(hourAngle);
    const north = this.#cosLat * sinDec - this.#sinLat * cosDec * cosHour;
    const up = this.#sinLat * sinDec + this.#cosLat * cosDec * cosHour;
    const level = Math.sqrt(east * east + north * north);
    const geometric = Math.atan2(up, level) * DEG;
    const lifted = refraction(geometric);
    const r = lifted * RAD;
    // Of less than a hundredth of a radian: what is left out is less than 1e-12.
    const sinLift = r - (r * r * r) / 6;
    const cosLift = 1 - (r * r) / 2 + (r * r * r * r) / 24;
    const whole = Math.sqrt(level * level + up * up);
    const cos = (level * cosLift - up * sinLift) / whole;
    const there = this.#there;
    there.sun.east = east;
    there.sun.north = north;
    there.sun.altitude = geometric + lifted;
    there.sun.geometricAltitude = geometric;
    there.levelEast = level > 0 ? east / level : 0;
    there.levelNorth = level > 0 ? north / level : 1;
    there.east = there.levelEast * cos;
    there.north = there.levelNorth * cos;
    there.up = (up * cosLift + level * sinLift) / whole;
    there.sky = this.#skyAt(instant);
    return there;
  }

  #node(k: number): Node {
    let node = this.#nodes.get(k);
    if (!node) this.#nodes.set(k, (node = this.#asked(k * stepMs)));
    return node;
  }

  /** Declination and hour angle out of altitude and azimuth (the inverse of Meeus, Astronomical Algorithms, 13.5 and 13.6). */
  #asked(instant: number): Node {
    const { azimuth, geometricAltitude } = sunAt(this.#position, instant);
    const [sin, cos] = [Math.sin(geometricAltitude * RAD), Math.cos(geometricAltitude * RAD)];
    const [sinAz, cosAz] = [Math.sin(azimuth * RAD), Math.cos(azimuth * RAD)];
    const declination = Math.asin(Math.max(-1, Math.min(1, this.#sinLat * sin + this.#cosLat * cos * cosAz)));
    const hourAngle = Math.atan2(-sinAz * cos, this.#cosLat * sin - this.#sinLat * cos * cosAz);
    return {
      sinDeclination: Math.sin(declination),
      cosDeclination: Math.cos(declination),
      lead: wrap180(hourAngle * DEG - turn * (instant % 86_400_000)),
    };
  }
}
