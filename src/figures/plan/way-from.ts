import { detour, ridingSpeed } from '../practice';

/** How one goes to an airfield. */
export const goings = ['foot', 'bicycle', 'car'] as const;
export type Going = (typeof goings)[number];

/** m/s unless it is typed. CP. */
export const usualSpeed = (by: Going): number => ridingSpeed[by];

/**
 * Minutes for a way of which only the straight line (m) is known, at a speed (m/s): roads are longer by `detour` (common
 * practice, no source). It knows no road, no ferry and no hill: an estimate to choose by, not to leave home by.
 */
export const ridingMinutes = (distance: number, speed: number): number => (distance * detour) / speed / 60;

/** m of straight line that can be done in so many minutes: the same turned round. */
export const reachOf = (minutes: number, speed: number): number => (minutes * 60 * speed) / detour;
