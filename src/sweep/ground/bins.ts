import type { Shape } from './shape';

const binM = 100;

/** Shapes by the squares of 100 m that their boxes, widened by a margin, meet: what may be near a place. */
export class Bins<T extends { readonly shape: Shape; readonly margin: number }> {
  readonly #bins = new Map<string, T[]>();

  constructor(things: readonly T[], within: { west: number; south: number; east: number; north: number }) {
    for (const thing of things) {
      const { shape, margin } = thing;
      const from = [Math.max(within.west, shape.west - margin), Math.max(within.south, shape.south - margin)];
      const to = [Math.min(within.east, shape.east + margin), Math.min(within.north, shape.north + margin)];
      const [c0 = 0, r0 = 0] = from.map((m) => Math.floor(m / binM));
      const [c1 = 0, r1 = 0] = to.map((m) => Math.floor(m / binM));
      for (let c = c0; c <= c1; c++)
        for (let r = r0; r <= r1; r++) {
          const key = `${c},${r}`;
          const bin = this.#bins.get(key);
          if (bin) bin.push(thing);
          else this.#bins.set(key, [thing]);
        }
    }
  }

  at(x: number, y: number): readonly T[] {
    return this.#bins.get(`${Math.floor(x / binM)},${Math.floor(y / binM)}`) ?? [];
  }
}
