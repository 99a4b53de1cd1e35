import { mostSteps } from '../../src/survey/history';
import { heldBySteps } from '../support/history-cost.ts';

/** MB. */
const budget = 30;

/** What the whole of history costs: as many steps as it keeps, each of them drawn. */
export function historyHeld(): void {
  console.log(`history of ${mostSteps} steps on the sample site`);
  for (const [what, kind] of [
    ['a spot moved', 'standing-spot'],
    ['a runway moved', 'runway'],
  ] as const) {
    const held = heldBySteps(mostSteps, kind);
    console.log(
      `  ${what.padEnd(24)}${`${held.toFixed(1)} MB`.padEnd(40)}budget ${budget} MB${held > budget ? ' OVER' : ''}`,
    );
  }
}
