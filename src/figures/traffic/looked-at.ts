import type { FlightPath } from '../../survey/schema/places';

/**
 * Recorded flights that are looked at from every spot, one by one: as many as a list of them can be read, and as a spot can
 * be dragged with. Of a season of them all teach something (see `learnFrom`); what they have in common is one path of the
 * runway. CP.
 */
export const mostRecordedPaths = 24;

/**
 * The drawn paths, and of the recorded ones those that are looked at: the chosen ones first, then those that nobody has said
 * anything of, in the survey's order; none that was put aside.
 */
export function lookedAt(flights: readonly FlightPath[]): readonly FlightPath[] {
  const recorded = flights.filter(({ source }) => source !== 'drawn');
  const chosen = recorded.filter(({ fromSpots }) => fromSpots === true);
  const open = recorded.filter(({ fromSpots }) => fromSpots === null);
  const looked = new Set([...chosen, ...open].slice(0, mostRecordedPaths));
  return flights.filter((flight) => flight.source === 'drawn' || looked.has(flight));
}
