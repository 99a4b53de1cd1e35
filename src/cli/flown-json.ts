import { learnFrom, type Flown } from '../figures/flown/learn';
import { grounded } from '../figures/sight/grounded';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { Contents } from '../survey/contents';

/**
 * What the survey's recorded flights teach, as the `figures` command prints it (design part two, section 12). `end` is
 * the index of the runway's end. Members without a meaning for a kind are left out: `touchdown` (m beyond the landing
 * threshold, so negative before it) is of arrivals and circuits, `liftOff` (m from the pavement end) and `gradient`
 * (rise over run) of departures. `otherTracks` counts the flights that nothing is learned from: go-arounds, crossings,
 * and those of an end and kind with fewer than five. `terrain`: what ends without a stated height lie on.
 */
export function flownJson(contents: Contents, terrain: ElevationGrid | null) {
  const { flown, few, other } = learnFrom(grounded(contents, terrain));
  return {
    flown: flown.map(endJson),
    otherTracks: few.reduce((sum, { flights }) => sum + flights, other),
  };
}

const endJson = ({ runway, end, kind, flights, glide, stations, ...told }: Flown) => ({
  runway,
  end,
  kind,
  tracks: flights.length,
  glide,
  ...(told.touchdown && { touchdown: told.touchdown }),
  ...(told.liftOff && { liftOff: told.liftOff }),
  ...(told.gradient && { gradient: told.gradient }),
  stations,
});
