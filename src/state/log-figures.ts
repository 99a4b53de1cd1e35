/** Figures that the log's panels ask for about one pass or spot: panels ask state, never figures themselves. */
export { leadFrame } from '../figures/log/log-entry-of';
export { whatItTeaches } from '../figures/log/what-it-teaches';
export { endName, endPath } from '../figures/traffic/end-name';
export { beyondEveryLens } from '../figures/log/beyond-every-lens';
export { pixelsPerMm } from '../figures/log/pixels-per-mm';
export { keepersBy, keeperGroups, type KeeperGroup } from '../figures/log/keepers';
export { measuredPairs, type MeasuredPair } from '../figures/log/measured-pairs';
