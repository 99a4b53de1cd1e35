import {
  cellOf,
  covers,
  monthHours,
  speedClasses,
  variableDirection,
  type WindRecord,
} from '../../survey/schema/wind-record';

import type { Cover } from './cover';

/** kt of mean wind below which the wind counts as calm (FAA JO 7110.65 3-5-1). */
const calmBelow = 5;

/** One observation: `direction` in degrees, null for variable; speeds in kt. */
export interface Observation {
  readonly direction: number | null;
  readonly speedKt: number;
  readonly gustKt: number | null;
  /** Not there, or null, where nothing is told of the sky. */
  readonly cover?: Cover | null;
}

/** Counts observations by month and hour, direction and class of speed. */
export class Tally {
  readonly #counts = Array.from({ length: monthHours }, () => new Map<number, number>());
  readonly #classes = speedClasses.map(() => ({ count: 0, mean: 0, strongest: 0 }));
  readonly #clouds = Array.from({ length: monthHours }, () => new Array<number>(covers).fill(0));
  #skies = 0;
  observations = 0;

  /** `at`: month * 24 + hour. */
  add(at: number, { direction, speedKt, gustKt, cover = null }: Observation): void {
    const counts = this.#counts[at];
    if (!counts) throw new Error(`expected month * 24 + hour from 0 to 287, got ${at}`);
    this.observations++;
    const clouds = this.#clouds[at];
    if (cover !== null && clouds) {
      this.#skies++;
      clouds[cover] = (clouds[cover] ?? 0) + 1;
    }
    let cell = 0;
    if (speedKt >= calmBelow) {
      const strongest = Math.max(speedKt, gustKt ?? 0);
      const k = speedClasses.findLastIndex((from) => strongest >= from);
      const sums = this.#classes[k];
      if (!sums) throw new Error(`expected a speed of 5 kt and more, got ${strongest}`);
      sums.count++;
      sums.mean += speedKt;
      sums.strongest += strongest;
      cell = cellOf(k, direction === null ? variableDirection : Math.round(direction / 10) % 36);
    }
    counts.set(cell, (counts.get(cell) ?? 0) + 1);
  }

  /** The counts as the survey keeps them. */
  record(facts: Omit<WindRecord, 'classes' | 'counts' | 'clouds' | 'observations'>): WindRecord {
    const mean = (sum: number, count: number, otherwise: number) =>
      count === 0 ? otherwise : Math.round((sum / count) * 100) / 100;
    return {
      ...facts,
      observations: this.observations,
      classes: this.#classes.map(({ count, mean: sum, strongest }, k) => ({
        meanKt: mean(sum, count, speedClasses[k] ?? 0),
        strongestKt: mean(strongest, count, speedClasses[k] ?? 0),
      })),
      counts: this.#counts.map((counts) => [...counts].sort(([a], [b]) => a - b).flat()),
      ...(this.#skies > 0 ? { clouds: this.#clouds } : {}),
    };
  }
}
