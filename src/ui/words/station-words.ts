import type { PathKind, Sample } from '../../figures/types';
import { stationInWords } from '../../units/station';
import type { Formats } from '../formats';

/** Where on its path an aircraft is, in the user's unit. `station`: m, with the zero of its kind of path. */
export const stationWords = (kind: PathKind, station: number, format: Formats): string =>
  stationInWords(kind, station, format.length);

/**
 * How high the aircraft is, in words. Its centre is measured from a level that the ground rises and falls from, so on the
 * ground that says nothing: there it is at height 0, however the runway slopes.
 */
export const heightWords = (
  { height, onGround }: Pick<Sample, 'height' | 'onGround'>,
  format: Formats,
): string => (onGround ? `${format.height(0)}, on the ground` : format.height(height));

/** What the height of a sample in the air counts from. */
export const datumWords: Record<PathKind, string> = {
  arrival: 'above the threshold',
  departure: 'above the start',
  circuit: 'above the threshold',
  'flight-path': 'above the field',
  taxi: 'above the field',
  parked: 'above the field',
  pattern: 'above the threshold',
  pass: 'above the field',
};
