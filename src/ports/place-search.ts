import type { PlaceLists } from '../exports/sweep/place-lists';
import type { ErrandClient } from '../sweep/errand-client';
import type { SweepClient } from '../sweep/client';

/** What can be taken along of where to stand. */
export type PlaceFile = 'table' | 'waypoints' | 'contours' | 'raster';

/** Looking for places to stand, by workers: built by services/place-search.ts. */
export interface PlaceSearch {
  /** Loaded when first asked for. */
  sweep(): Promise<Pick<SweepClient, 'ask' | 'cancel' | 'close'>>;
  /** Makes one for each asker: a new errand ends the asker's last one. */
  errands(): Promise<() => Pick<ErrandClient, 'run' | 'close'>>;
  /** Null, or why it could not be saved. */
  save(file: PlaceFile, lists: PlaceLists): Promise<string | null>;
}
