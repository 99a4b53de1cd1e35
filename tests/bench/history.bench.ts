import { mostSteps } from '../../src/survey/history';
import { heldBySteps } from '../support/history-cost.ts';

/** What the whole of history costs: as many steps as it keeps, each of them drawn. */
export function historyHeld(): void {
  console.log(`history of ${mostSteps} steps on the sample site (budget 30 MB)`);
  console.log(`  a spot moved          ${heldBySteps(mostSteps, 'standing-spot').toFixed(1)} MB`);
  console.log(`  a runway moved        ${heldBySteps(mostSteps, 'runway').toFixed(1)} MB`);
}
