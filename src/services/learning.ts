import type { Learning } from '../ports/learning';
import type { LearningHand } from './flight-learner';

/** Learning from flights in a worker of this browser. */
export class WorkerLearning implements Learning {
  async learner() {
    const { FlightLearner } = await import('./flight-learner');
    return new FlightLearner({
      make: () =>
        new Worker(new URL('./learning-worker.ts', import.meta.url), { type: 'module' }) as LearningHand,
      breathe: () => new Promise((go) => setTimeout(go)),
      now: () => performance.now(),
    });
  }
}
