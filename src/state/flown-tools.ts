/** Figures that only surveys with recorded flights ask for: loaded for them alone. */
export { focalAsFlown, spreadAt } from '../figures/flown/as-flown';
export { notInUse } from '../figures/flown/not-in-use';
