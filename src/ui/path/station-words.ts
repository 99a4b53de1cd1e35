import type { PathKind } from '../../figures/types';
import { metres } from '../../units/format';

/** Where on its path an aircraft is, as people say it. `station`: m, with the zero of its kind of path. */
export function stationWords(kind: PathKind, station: number): string {
  switch (kind) {
    case 'arrival':
      if (Math.abs(station) < 0.5) return 'over the threshold';
      return station > 0
        ? `${metres(station)} before the threshold`
        : `${metres(-station)} beyond the threshold`;
    case 'departure':
      return station < 0.5 ? 'where the take-off run starts' : `${metres(station)} from the start`;
    case 'circuit':
      if (Math.abs(station) < 0.5) return 'over the threshold';
      return station > 0
        ? `${metres(station)} still to fly to the threshold`
        : `${metres(-station)} beyond the threshold`;
    case 'flight-path':
      return station < 0.5 ? 'at the first point' : `${metres(station)} from the first point`;
  }
}

/** What the height of a sample counts from. */
export const datumWords: Record<PathKind, string> = {
  arrival: 'above the threshold',
  departure: 'above the start',
  circuit: 'above the threshold',
  'flight-path': 'above the field',
};
