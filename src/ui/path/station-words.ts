import type { PathKind } from '../../figures/types';
import { stationInWords } from '../../units/station';
import type { Formats } from '../formats';

/** Where on its path an aircraft is, in the user's unit. `station`: m, with the zero of its kind of path. */
export const stationWords = (kind: PathKind, station: number, format: Formats): string =>
  stationInWords(kind, station, format.length);

/** What the height of a sample counts from. */
export const datumWords: Record<PathKind, string> = {
  arrival: 'above the threshold',
  departure: 'above the start',
  circuit: 'above the threshold',
  'flight-path': 'above the field',
  taxi: 'above the field',
  parked: 'above the field',
};
