import { expect } from 'vitest';

/** One figure's line in the tolerance table of tests/reference/tolerances.ts. */
export interface Tolerance {
  readonly limit: number;
  readonly unit: string;
  /** Why it is not tighter. */
  readonly why: string;
}

interface Worst {
  error: number;
  row: string;
  count: number;
}

/**
 * Compares figures with a published table: keeps the worst error of every figure, prints one line, and fails on
 * any error beyond the figure's tolerance and on any row that was left out.
 */
export class PublishedTable<Figure extends string> {
  readonly #name: string;
  readonly #tolerances: Readonly<Record<Figure, Tolerance>>;
  readonly #worst = new Map<Figure, Worst>();
  readonly #failures: string[] = [];
  #rows = 0;
  #row = '';

  constructor(name: string, tolerances: Readonly<Record<Figure, Tolerance>>) {
    this.#name = name;
    this.#tolerances = tolerances;
  }

  row(label: string): void {
    this.#rows++;
    this.#row = label;
  }

  /** `scale` multiplies the error first: an azimuth counts by the cosine of its altitude. */
  near(figure: Figure, got: number, expected: number, scale = 1): void {
    this.#note(figure, Math.abs(got - expected) * scale, `${got} instead of ${expected}`);
  }

  /** The same for angles in degrees that wrap at 360. */
  nearAngle(figure: Figure, got: number, expected: number, scale = 1): void {
    const apart = Math.abs(((((got - expected + 180) % 360) + 360) % 360) - 180);
    this.#note(figure, apart * scale, `${got} instead of ${expected}`);
  }

  #note(figure: Figure, error: number, words: string): void {
    const worst = this.#worst.get(figure) ?? { error: -1, row: '', count: 0 };
    this.#worst.set(figure, worst);
    worst.count++;
    if (error > worst.error) Object.assign(worst, { error, row: this.#row });
    // Written so that NaN fails.
    if (!(error <= this.#tolerances[figure].limit)) this.#failures.push(`${this.#row}, ${figure}: ${words}`);
  }

  /** `rows`: how many the source has. Every figure of the tolerance table must have been compared. */
  close(rows: number): void {
    const parts = Object.keys(this.#tolerances).map((key) => {
      const figure = key as Figure;
      const { limit, unit } = this.#tolerances[figure];
      const worst = this.#worst.get(figure);
      if (!worst) return `${figure} never compared`;
      return `${figure} ${worst.error.toPrecision(2)} ${unit} of ${limit} (${worst.count}, worst: ${worst.row})`;
    });
    process.stdout.write(`worst error, ${this.#name}, ${this.#rows} rows: ${parts.join('; ')}\n`);
    expect(this.#failures, this.#name).toEqual([]);
    expect(this.#rows, `${this.#name}: rows compared`).toBe(rows);
    expect([...this.#worst.keys()].sort(), `${this.#name}: figures compared`).toEqual(
      Object.keys(this.#tolerances).sort(),
    );
  }
}

/** Seeded pseudo-random numbers in [0, 1): mulberry32 (public domain). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}
