/** The kinds of path, each with its own zero of the station. */
type Kind = 'arrival' | 'departure' | 'circuit' | 'flight-path' | 'taxi' | 'parked' | 'pattern' | 'pass';

/**
 * Where on its path an aircraft is, as people say it: the same words on the map as beside it. `station`: m, with the
 * zero of its kind of path. `length`: how m are printed.
 */
export function stationInWords(kind: Kind, station: number, length: (m: number) => string): string {
  switch (kind) {
    case 'arrival':
      if (Math.abs(station) < 0.5) return 'over the threshold';
      return station > 0
        ? `${length(station)} before the threshold`
        : `${length(-station)} beyond the threshold`;
    case 'departure':
      return station < 0.5 ? 'where the take-off run starts' : `${length(station)} from the start`;
    case 'circuit':
    case 'pattern':
      if (Math.abs(station) < 0.5) return 'over the threshold';
      return station > 0
        ? `${length(station)} still to fly to the threshold`
        : `${length(-station)} beyond the threshold`;
    case 'flight-path':
      return station < 0.5 ? 'at the first point' : `${length(station)} from the first point`;
    case 'pass':
      return station < 0.5 ? 'where it begins' : `${length(station)} from where it begins`;
    case 'taxi':
      return station < 0.5 ? 'where the route begins' : `${length(station)} along the route`;
    case 'parked':
      return 'in the middle of the apron';
  }
}
