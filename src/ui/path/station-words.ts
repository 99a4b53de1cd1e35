import type { PathKind } from '../../figures/types';
import type { Formats } from '../formats';

/** Where on its path an aircraft is, as people say it. `station`: m, with the zero of its kind of path. */
export function stationWords(kind: PathKind, station: number, format: Formats): string {
  switch (kind) {
    case 'arrival':
      if (Math.abs(station) < 0.5) return 'over the threshold';
      return station > 0
        ? `${format.length(station)} before the threshold`
        : `${format.length(-station)} beyond the threshold`;
    case 'departure':
      return station < 0.5 ? 'where the take-off run starts' : `${format.length(station)} from the start`;
    case 'circuit':
      if (Math.abs(station) < 0.5) return 'over the threshold';
      return station > 0
        ? `${format.length(station)} still to fly to the threshold`
        : `${format.length(-station)} beyond the threshold`;
    case 'flight-path':
      return station < 0.5 ? 'at the first point' : `${format.length(station)} from the first point`;
    case 'taxi':
      return station < 0.5 ? 'where the route begins' : `${format.length(station)} along the route`;
    case 'parked':
      return 'in the middle of the apron';
  }
}

/** What the height of a sample counts from. */
export const datumWords: Record<PathKind, string> = {
  arrival: 'above the threshold',
  departure: 'above the start',
  circuit: 'above the threshold',
  'flight-path': 'above the field',
  taxi: 'above the field',
  parked: 'above the field',
};
