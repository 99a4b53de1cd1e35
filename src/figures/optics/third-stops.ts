/** The values that cameras offer, in thirds of a stop, as they are engraved (ISO 517 and 12232 series; from memory). */
export const apertures = [
  1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16,
  18, 20, 22, 25, 29, 32,
] as const;
export const shutters = [
  30,
  25,
  20,
  15,
  13,
  10,
  8,
  6,
  5,
  4,
  3.2,
  2.5,
  2,
  1.6,
  1.3,
  1,
  0.8,
  0.6,
  0.5,
  0.4,
  0.3,
  ...[
    4, 5, 6, 8, 10, 13, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800,
    1000,
  ].map((x) => 1 / x),
  ...[1250, 1600, 2000, 2500, 3200, 4000, 5000, 6400, 8000].map((x) => 1 / x),
] as const;
export const isos = [
  100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200, 4000, 5000, 6400,
  8000, 10_000, 12_800, 16_000, 20_000, 25_600,
] as const;

/** Slack, in stops, for what is engraved a little off: 1/60 for 1/64. */
const slack = 0.12;

/** The value of a series nearest to an exact one, by stops. */
export function nearest(series: readonly number[], exact: number): number {
  const off = (value: number) => Math.abs(Math.log2(value / exact));
  return series.reduce((best, value) => (off(value) < off(best) ? value : best));
}

/** The nearest value of a series that is not below (or not above) an exact one; its end when there is none. */
export function notBelow(series: readonly number[], exact: number): number {
  const fitting = series.filter((value) => value >= exact * 2 ** -slack);
  return fitting.length > 0 ? nearest(fitting, exact) : Math.max(...series);
}
export function notAbove(series: readonly number[], exact: number): number {
  const fitting = series.filter((value) => value <= exact * 2 ** slack);
  return fitting.length > 0 ? nearest(fitting, exact) : Math.min(...series);
}
