import type { LateTrips, Trips, TripsLeft } from '../ports/trips';
import type { TripHand, TripNeeds } from './field-trips';

/** Comparing fields, loaded when somebody asks which. */
export class SurveyTrips implements LateTrips {
  readonly #needs: Omit<TripNeeds, 'makeHand'>;
  left: TripsLeft | null = null;

  constructor(needs: Omit<TripNeeds, 'makeHand'>) {
    this.#needs = needs;
  }

  async there(): Promise<Trips> {
    const { FieldTrips } = await import('./field-trips');
    return new FieldTrips({ ...this.#needs, makeHand });
  }
}

const makeHand = (): TripHand =>
  new Worker(new URL('./trip-worker.ts', import.meta.url), { type: 'module' }) as TripHand;
