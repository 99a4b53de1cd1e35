import type { Contents } from '../../survey/contents';
import { Memo } from '../../survey/memo';
import type { Runway } from '../../survey/schema/runway';
import type { FlightPath } from '../../survey/schema/places';
import type { EndsByUse } from '../movements/ends-of';
import { grounded } from '../sight/grounded';
import type { ElevationGrid } from '../sight/terrain';
import { lookedAt } from '../traffic/looked-at';
import { fieldElevation } from '../traffic/paths';
import { endPairs } from './end-uses';
import { wayOf, type Way } from './way-of';

/** Points at a flight's beginning and end that tell which end of a runway it used. CP. */
const tellingPoints = 100;

/** Keyed by flight, runways and elevation; of past surveys nothing stays. */
const kept = new Memo<(Pick<Way, 'kind'> & { readonly runway: string; readonly end: 0 | 1 }) | null>();

/**
 * Ids of recorded flights that nobody waits for: those of an end which is not in use, since they do not come, and those of
 * an end whose path has been learned from them, since it tells what comes again, and how far it spreads. `terrain`: what ends
 * without a stated height lie on.
 */
export function passedOver(
  contents: Pick<Contents, 'site' | 'runways' | 'flightPaths'>,
  { arrivals, departures }: EndsByUse,
  terrain: ElevationGrid | null,
): ReadonlySet<string> {
  const field = grounded(contents, terrain);
  const { runways, flightPaths } = field;
  const elevation = fieldElevation(field);
  const ends = endPairs(field);
  const usedBy = (flight: FlightPath, all: readonly Runway[]) =>
    kept.get([flight, all, elevation], () => {
      const way = wayOf(end(flight), ends) ?? wayOf(beginning(flight), ends);
      return way && { kind: way.kind, runway: way.geometry.runway.id, end: way.geometry.end };
    });
  const out = new Set<string>();
  // Of those that have no path from here nothing is passed over.
  for (const flight of lookedAt(flightPaths)) {
    if (flight.source === 'drawn') continue;
    const used = usedBy(flight, runways);
    if (!used) continue;
    const open = used.kind === 'departure' ? departures : arrivals;
    const isOpen = open.some((ref) => ref.runway === used.runway && ref.end === used.end);
    const told = runways.find(({ id }) => id === used.runway)?.ends[used.end].flown;
    if (!isOpen || told?.some(({ kind }) => kind === used.kind)) out.add(flight.id);
  }
  kept.keepOnly(flightPaths);
  return out;
}

const part = (flight: FlightPath, from: number, to?: number): FlightPath => ({
  ...flight,
  line: flight.line.slice(from, to),
  heights: flight.heights.slice(from, to),
  times: flight.times && flight.times.slice(from, to),
});
const end = (flight: FlightPath) => part(flight, -tellingPoints);
const beginning = (flight: FlightPath) => part(flight, 0, tellingPoints);
