/** Figures that only surveys with recorded flights ask for: loaded for them alone. */
export { focalAsFlown, spreadAt } from '../figures/flown/as-flown';
export { passedOver } from '../figures/flown/passed-over';
