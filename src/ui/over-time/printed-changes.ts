import type { LightRun } from '../../figures/when/light-row';

/** px that a time takes with the gap beside it. */
const timeWidth = 40;

/**
 * The places in a row (its indices) at which the time of a change of light is printed: those about front light first,
 * the others where they still have room. `x` is where an index lies, in px.
 */
export function printedChanges(
  runs: readonly LightRun[],
  x: (index: number) => number,
  width: number,
): number[] {
  const changes = runs.slice(1).flatMap((run, i) => {
    const before = runs[i] as LightRun;
    // What it is worth and glare come and go within the same light.
    const same = before.light === run.light && before.flat === run.flat && before.blocked === run.blocked;
    if (same) return [];
    return [
      { at: run.from, lit: [before, run].some(({ light, blocked }) => light === 'front-lit' && !blocked) },
    ];
  });
  const printed: number[] = [];
  for (const { at } of changes.toSorted((a, b) => Number(b.lit) - Number(a.lit))) {
    const here = x(at);
    const fits = here >= timeWidth / 2 && here <= width - timeWidth / 2;
    if (fits && printed.every((other) => Math.abs(x(other) - here) >= timeWidth)) printed.push(at);
  }
  return printed.sort((a, b) => a - b);
}
