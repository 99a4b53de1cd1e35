import type { PlaceLists } from '../exports/sweep/place-lists';
import type { ErrandClient } from '../sweep/errand-client';
import type { SweepClient } from '../sweep/client';
import type { Credit } from '../state/base-maps/ground';
import type { Position } from '../survey/document';
import type { BaseFound } from '../survey/base-found';
import type { GroundOfBase } from '../imports/base-map/ground-of-base';

/** What can be taken along of where to stand. */
export type PlaceFile = 'table' | 'waypoints' | 'contours' | 'raster';

/** The vector base map under the survey: what it is called, whose it is, and what it has in some of its layers. */
export interface BaseAsked {
  readonly name: string;
  readonly credit: Credit;
  readonly read: (layers: readonly string[]) => BaseFound | null;
}

/** Why the base map has nothing to tell of the ground. */
export type WhyNoGround = Extract<GroundOfBase, { ok: false }>['because'];

/** Looking for places to stand, by workers: built by services/place-search.ts. */
export interface PlaceSearch {
  /** Somebody may ask this: its sketch is worked out before they do. */
  foresee(...question: Parameters<SweepClient['prepare']>): void;
  /** Fetches what `sweep` takes and has all its workers started: somebody is about to ask. */
  prepare(): void;
  /** Loaded when first asked for. One for all who ask, and kept: what is closed lets its question go, not the workers. */
  sweep(): Promise<Pick<SweepClient, 'ask' | 'cancel' | 'close'>>;
  /** Makes one for each asker: a new errand ends the asker's last one. */
  errands(): Promise<() => Pick<ErrandClient, 'run' | 'close'>>;
  /** What the base map on the screen says of where one may walk near the runways. Rejects when it could not be fetched. */
  groundOf(
    base: BaseAsked,
    reference: Position,
    runways: readonly (readonly [Position, Position])[],
  ): Promise<GroundOfBase>;
  /** Null, or why it could not be saved. */
  save(file: PlaceFile, lists: PlaceLists): Promise<string | null>;
}
