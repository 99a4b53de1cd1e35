import type { Outlook } from '../../figures/outlook';
import type { Path } from '../../figures/traffic/paths';
import type { LitSide, SpotFigures } from '../../figures/types';
import type { Contents } from '../../survey/contents';
import type { Position, SurveyFeature } from '../../survey/document';
import type { VertexRef } from '../../survey/edits/vertices';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { MapUnits } from '../units';
import type { RingChoice } from './rings';

/** A spot with its figures at both moments. */
export interface SpotScene {
  readonly spot: StandingSpot;
  readonly a: SpotFigures;
  readonly b: SpotFigures;
}

/** The lit side of one runway at both moments. */
export interface RunwayLight {
  readonly runway: string;
  readonly a: LitSide | null;
  readonly b: LitSide | null;
}

/** All that the overlays show, as `Derived` and `View` have it: plain data, so that node can draw it as well. */
export interface Scene {
  readonly contents: Contents;
  readonly paths: readonly Path[];
  readonly spots: readonly SpotScene[];
  /** Ids of the spots where nobody may stand on the day. */
  readonly closedSpots: ReadonlySet<string>;
  /** A place that is proposed and looked at: its rings as if somebody stood there. */
  readonly visited: SpotScene | null;
  /** One list a path, mm; null while no spot is selected. */
  readonly focalLengths: readonly Float64Array[] | null;
  readonly usableTo: number;
  /** Runways and field as the paths have them: where they state no height, at the terrain's. */
  readonly grounded: Pick<Outlook, 'runways' | 'fieldElevation'>;
  readonly rings: RingChoice;
  readonly litSides: readonly RunwayLight[];
  /** Moment A as an instant: its date gives the magnetic declination. */
  readonly instant: number;
  readonly selected: SurveyFeature | null;
  readonly vertex: VertexRef | null;
  readonly inspected: { readonly path: string; readonly station: number } | null;
  readonly drawing: readonly Position[];
  readonly drawingRunway: boolean;
  readonly dragging: boolean;
  /** Zoom to a quarter: see `zoomStepOf`. */
  readonly zoom: number;
  /** The same object while nothing is preferred otherwise. */
  readonly units: MapUnits;
  /** The two moments as the user likes to read times of day. */
  readonly clocks: { readonly a: string; readonly b: string };
}
