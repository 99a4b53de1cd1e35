import type { SpotFigures } from '../figures/types';
import type { Position } from '../survey/document';
import type { StandingSpot } from '../survey/schema/standing-spot';

/** What the cells are coloured by. `steps`: see `placeSteps` in `styles/ramps.ts`. */
export const placeLayers = ['minutes', 'focal', 'light-a', 'light-b', 'in-sight'] as const;
export type PlaceLayer = (typeof placeLayers)[number];

/** Squares of ground and what is known of them. Rows from the south, cells from the west. */
export interface DrawnCells {
  readonly layer: PlaceLayer;
  /** Cells to a side. */
  readonly count: number;
  /** In the units of the layer, NaN for nothing: good minutes, mm, factor of light, share in sight. */
  readonly values: Float64Array;
  /** Whether nobody may stand there. */
  readonly closed: Uint8Array;
  /** Cells to a side that each stands for; 0 for not known yet. */
  readonly stride: Uint8Array;
  /** Longest focal length in mm that the kit reaches. */
  readonly usableTo: number;
  /** North-west, north-east, south-east and south-west corner of all of them. */
  readonly corners: readonly [Position, Position, Position, Position];
}

/** A place that is proposed, with its number in the list. */
export interface DrawnPlace {
  readonly position: Position;
  readonly number: number;
  readonly checkFirst: boolean;
  /** Somebody looks at its line of the list. */
  readonly marked: boolean;
}

/** A line of equal needed focal length in mm. */
export interface DrawnReach {
  readonly focalLength: number;
  readonly lines: readonly (readonly Position[])[];
}

/** What "Where to stand" has on the map, and where somebody has pointed on it: empty unless that view is open. */
export class DrawnPlaces {
  cells = $state.raw<DrawnCells | null>(null);
  places = $state.raw<readonly DrawnPlace[]>([]);
  reach = $state.raw<readonly DrawnReach[]>([]);
  /** The proposed place that somebody looks at, as a spot there would be at both moments. */
  visited = $state.raw<{
    readonly spot: StandingSpot;
    readonly a: SpotFigures;
    readonly b: SpotFigures;
  } | null>(null);
  /** A place on the map of which somebody wants to know what it is. */
  pointed = $state.raw<Position | null>(null);

  clear(): void {
    this.cells = null;
    this.places = [];
    this.reach = [];
    this.visited = null;
    this.pointed = null;
  }
}
