import type { MeasuredPair } from '../../figures/log/measured-pairs';

export const box = { width: 300, height: 220, left: 46, right: 8, top: 8, bottom: 34 } as const;

export interface ScatterShapes {
  readonly dots: readonly {
    readonly id: string;
    readonly x: number;
    readonly y: number;
    /** Ends of the error bar. */
    readonly low: number;
    readonly high: number;
  }[];
  /** Where both are the same. */
  readonly same: string;
  readonly marks: readonly { readonly value: number; readonly x: number; readonly y: number }[];
}

/** Predicted to the right, measured upwards, both to one scale in round steps. Null without pairs. */
export function scatterShapes(pairs: readonly MeasuredPair[]): ScatterShapes | null {
  if (pairs.length === 0) return null;
  const values = pairs.flatMap(({ predicted, measured, error }) => [
    predicted,
    measured - error,
    measured + error,
  ]);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const step = roundStep((most - Math.min(0, least)) / 4 || 1);
  const low = Math.floor(Math.min(0, least) / step) * step;
  const high = Math.max(low + step, Math.ceil(most / step) * step);
  const x = (value: number) => box.left + ((value - low) / (high - low)) * (box.width - box.left - box.right);
  const y = (value: number) =>
    box.height - box.bottom - ((value - low) / (high - low)) * (box.height - box.top - box.bottom);
  const marks = Array.from({ length: Math.round((high - low) / step) + 1 }, (_, i) => low + i * step);
  return {
    dots: pairs.map(({ id, predicted, measured, error }) => ({
      id,
      x: x(predicted),
      y: y(measured),
      low: y(measured - error),
      high: y(measured + error),
    })),
    same: `M${x(low)} ${y(low)}L${x(high)} ${y(high)}`,
    marks: marks.map((value) => ({ value, x: x(value), y: y(value) })),
  };
}

/** 1, 2 or 5 with zeros, at least as large. */
function roundStep(least: number): number {
  const ten = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((n) => n * ten).find((n) => n >= least * (1 - 1e-9)) ?? 10 * ten;
}
