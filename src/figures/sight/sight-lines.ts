import { HorizonRays, farthest, type Fineness } from './horizon-rays';
import { lineDistance, lineEast, lineNorth, lineSteepness, lineTurn, newLine } from './line';
import type { Surroundings } from './surroundings';
import { pointsOfAircraft, type Targets } from './targets';
import { TopRays, type Met } from './top-rays';
import { turnOf } from './turn';

/** Stands for the terrain where an obstacle's index would. */
export const byTerrain = -2;
export const byNothing = -1;
/** m about an aircraft's centre within which all of it is. */
const wingRoom = 50;

/** A direction to the sky in the site frame: level unit vector, and m up for each m out. */
export interface SkyLine {
  readonly east: number;
  readonly north: number;
  readonly steepness: number;
}

/**
 * What of a path is in sight from an eye. Heights are counted above the eye with the earth's curvature, less
 * refraction, taken off; in that space a sight line is straight, and a point is hidden when something nearer looks
 * steeper. Made to be used again: nothing is allocated while a spot is dragged.
 */
export class SightLines {
  /** How many of the aircraft's three points are in sight, one entry a sample. */
  inSight = new Uint8Array(0);
  /** Where all three are hidden: the first obstacle on the line to the centre, or `byTerrain`; else `byNothing`. */
  hiddenBy = new Int32Array(0);
  /** The nearest mesh that one of the points in sight is seen through; else `byNothing`. */
  through = new Int32Array(0);

  readonly #tops = new TopRays();
  readonly #rays: HorizonRays;
  readonly #line = newLine();
  readonly #met: Met = { distance: Infinity, obstacle: -1, mesh: -1 };
  #surroundings: Surroundings | null = null;
  #x = 0;
  #y = 0;
  #eye = 0;

  constructor(fineness?: Fineness) {
    this.#rays = new HorizonRays(fineness);
  }

  /**
   * An eye at (`x`, `y`, `eye`) of the site frame that will look at these paths and into these directions. `does`:
   * what each obstacle does (`standing`).
   */
  stand(
    around: Surroundings,
    does: Uint8Array,
    x: number,
    y: number,
    eye: number,
    paths: readonly Targets[],
    sky: readonly SkyLine[],
  ): void {
    this.#surroundings = around;
    this.#x = x;
    this.#y = y;
    this.#eye = eye;
    const [west, south, east, north] = this.#lookedOver(around, paths, sky);
    this.#tops.stand(around, around.near(west, south, east, north), does, x, y, eye);
    if (around.terrain) this.#rays.stand(around.terrain, x, y, eye, around.sink);
  }

  /** Looks along a path. The answer holds until the next call. */
  look({ count, points }: Targets): void {
    if (this.inSight.length < count) {
      this.inSight = new Uint8Array(2 * count);
      this.hiddenBy = new Int32Array(2 * count);
      this.through = new Int32Array(2 * count);
    }
    const met = this.#met;
    const each = pointsOfAircraft;
    for (let i = 0, k = 0; i < count; i++) {
      let seen = 0;
      let centreBy = byNothing;
      let through = byNothing;
      for (let p = 0; p < each; p++, k += 3) {
        const by = this.#toPoint(points[k] as number, points[k + 1] as number, points[k + 2] as number);
        if (p === 1) centreBy = by;
        if (by !== byNothing) continue;
        seen++;
        if (met.mesh >= 0) through = met.mesh;
      }
      this.inSight[i] = seen;
      this.hiddenBy[i] = seen === 0 ? centreBy : byNothing;
      this.through[i] = through;
    }
  }

  /** What hides a direction to the sky: an obstacle's index, `byTerrain` or `byNothing`. */
  towards({ east, north, steepness }: SkyLine): number {
    return this.#follow(east, north, 1, steepness, true);
  }

  /** What hides a point of the site frame; its index, `byTerrain` or `byNothing`. */
  #toPoint(x: number, y: number, z: number): number {
    const dx = x - this.#x;
    const dy = y - this.#y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    this.#met.mesh = -1;
    // Straight overhead nothing is in the way.
    if (distance < 1e-3) return byNothing;
    const { sink } = this.#surroundings as Surroundings;
    return this.#follow(dx, dy, distance, (z - this.#eye) / distance - sink * distance, false);
  }

  #follow(dx: number, dy: number, distance: number, steepness: number, endless: boolean): number {
    const line = this.#line;
    line[lineTurn] = turnOf(dx, dy);
    line[lineEast] = dx;
    line[lineNorth] = dy;
    line[lineDistance] = distance;
    line[lineSteepness] = steepness;
    const met = this.#met;
    this.#tops.meet(line, endless, met);
    if ((this.#surroundings as Surroundings).terrain) {
      const step = this.#rays.stepAbove(line, endless);
      if (step >= 0 && this.#rays.distanceOf(step) < met.distance) return byTerrain;
    }
    return met.obstacle;
  }

  /**
   * The box of the site frame outside which no obstacle can be in the way: a sight line that has risen above the
   * highest top meets none.
   */
  #lookedOver(
    { highestTop, sink }: Surroundings,
    paths: readonly Targets[],
    sky: readonly SkyLine[],
  ): readonly [west: number, south: number, east: number, north: number] {
    const x = this.#x;
    const y = this.#y;
    const eye = this.#eye;
    const room = highestTop - eye;
    let west = x;
    let south = y;
    let east = x;
    let north = y;
    for (const { points } of paths)
      // The centres are enough: the rest of an aircraft is within `wingRoom` of them.
      for (let k = 3; k < points.length; k += 9) {
        const dx = (points[k] as number) - x;
        const dy = (points[k + 1] as number) - y;
        const up = (points[k + 2] as number) - wingRoom - eye;
        // Between its ends a sight line sags below the straight one by at most a quarter of the sinking.
        const below = room + (sink * (dx * dx + dy * dy)) / 4;
        const part = up <= below ? 1 : below <= 0 ? 0 : below / up;
        const px = x + part * dx;
        const py = y + part * dy;
        if (px < west) west = px;
        if (px > east) east = px;
        if (py < south) south = py;
        if (py > north) north = py;
      }
    for (const line of sky) {
      const out = line.steepness > 0 ? Math.min(farthest, Math.max(0, room) / line.steepness) : farthest;
      west = Math.min(west, x + out * line.east);
      east = Math.max(east, x + out * line.east);
      south = Math.min(south, y + out * line.north);
      north = Math.max(north, y + out * line.north);
    }
    return [west - wingRoom, south - wingRoom, east + wingRoom, north + wingRoom];
  }
}
