import type { BaseChoice } from '../state/base-maps/base-choice.svelte';
import type { OwnKind } from '../state/base-maps/own-map';
import type { Position } from '../survey/document';

/** A base map as it is typed in. */
export interface BaseMapDraft {
  readonly kind: OwnKind;
  readonly address: string;
  /** "" for the server's name. */
  readonly name: string;
  /** Whose map it is, as its provider wants it said; "" for none. */
  readonly credit: string;
  /** The last zoom that a tile server has. */
  readonly maxZoom: number;
}

/** GeoJSON of the world's land. */
export interface LandOverlay {
  readonly type: 'FeatureCollection';
  readonly features: readonly {
    readonly type: 'Feature';
    readonly properties: Readonly<Record<string, never>>;
    readonly geometry: {
      readonly type: 'Polygon';
      readonly coordinates: readonly (readonly Position[])[];
    };
  }[];
}

/** What lies under the survey: built by base-maps.ts, which knows files and the imports. */
export interface BaseMaps {
  readonly choice: BaseChoice;
  /** Looks at the address, adds the map and shows it. Null when that is done, else what to mend. */
  addAddress(draft: BaseMapDraft): Promise<string | null>;
  /** Keeps a PMTiles file on this device, picked by the user where none is given; null also when none was picked. */
  addFile(file: File | null, draft: Pick<BaseMapDraft, 'name' | 'credit'>): Promise<string | null>;
  /** Forgets the files of maps that were taken off the list. */
  tidy(): Promise<void>;
  /** Fetched once, when it is first asked for; null when it cannot be had, and asked for again the next time. */
  land(): Promise<LandOverlay | null>;
}
