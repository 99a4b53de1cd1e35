import { dragSpot } from './drag-spot.bench.ts';

/** Prints what the budgets of the design are measured by. Not a test: nothing here passes or fails. */
dragSpot();
