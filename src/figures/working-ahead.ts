import type { Contents } from '../survey/contents';
import { raisingSurroundings } from './outlook';
import { Scratch } from './scratch';
import type { ElevationGrid } from './sight/terrain';
import { lookingFromSpots } from './spot-figures';
import { buildingPaths, type OtherPaths, type PathFilter } from './traffic/paths';

export interface ToWorkAhead {
  readonly contents: Contents;
  readonly wanted: PathFilter;
  readonly terrain: ElevationGrid | null;
  readonly otherPaths: OtherPaths | undefined;
  /** ms since 1970, UTC. */
  readonly instants: readonly number[];
}

/** Works out step by step what contents that are to be shown next will be asked for: asked then, it is found remembered. */
export function* workingAhead({
  contents,
  wanted,
  terrain,
  otherPaths,
  instants,
}: ToWorkAhead): Generator<void> {
  const paths = yield* buildingPaths(contents, wanted, terrain, otherPaths);
  yield* raisingSurroundings(contents, terrain);
  yield* lookingFromSpots(contents, paths, instants, terrain, new Scratch());
}
