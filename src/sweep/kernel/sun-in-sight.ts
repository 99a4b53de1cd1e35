import { RAD } from '../../figures/geometry/angles';
import { dot, type Frame } from '../../figures/geometry/earth';
import type { LazySight } from '../lazy-sight';
import type { InstantTable } from './instant-table';
import type { MovingSun } from './sun-over';

/** Whether the sun is behind something at one place, asked once an instant at most. */
export class SunInSight {
  /** 0 not asked, 1 in sight, 2 hidden. */
  readonly #known: Uint8Array;
  readonly #table: InstantTable;
  readonly #sight: LazySight;
  readonly #site: Frame;

  /** `site`: the frame in which `sight` stands. */
  constructor(table: InstantTable, sight: LazySight, site: Frame) {
    this.#known = new Uint8Array(table.count);
    this.#table = table;
    this.#sight = sight;
    this.#site = site;
  }

  /** A new place. */
  begin(): void {
    this.#known.fill(0);
  }

  isHidden(t: number): boolean {
    if (this.#known[t] === 0) this.#known[t] = this.#ask(t) ? 2 : 1;
    return this.#known[t] === 2;
  }

  #ask(t: number): boolean {
    const { sun, levelEast, levelNorth } = this.#table.suns[t] as MovingSun;
    const at = this.#table.frame;
    const site = this.#site;
    const e = levelEast * dot(at.east, site.east) + levelNorth * dot(at.north, site.east);
    const n = levelEast * dot(at.east, site.north) + levelNorth * dot(at.north, site.north);
    const level = Math.sqrt(e * e + n * n) || 1;
    return this.#sight.hidesSky(e / level, n / level, Math.tan(sun.altitude * RAD));
  }
}
