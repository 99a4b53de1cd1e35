import type { ElevationGrid } from '../../figures/sight/terrain';
import type { Path } from '../../figures/traffic/paths';
import type { SurveyDocument } from '../../state/document.svelte';
import type { Hand, Selection, View } from '../../state/view.svelte';
import type { Contents } from '../../survey/contents';
import type { MapSurface, PointerListener } from '../map-surface';

/** What the tools work with. */
export interface Desk {
  readonly surface: MapSurface;
  readonly document: Pick<SurveyDocument, 'survey' | 'readOnly' | 'perform' | 'replace' | 'cancel'>;
  readonly selection: Selection;
  readonly hand: Hand;
  readonly notices: Pick<View, 'notice'>;
  newId(): string;
  contents(): Contents;
  /** Heights of the ground, null while only those of the runways are known. */
  terrain(): ElevationGrid | null;
  /** The paths that are drawn. */
  paths(): readonly Path[];
  /** Moment A as ms since 1970, UTC: its date gives the magnetic declination. */
  instant(): number;
}

/** A key as the tools see it. */
export interface Key {
  readonly key: string;
  readonly shift: boolean;
  readonly alt: boolean;
  /** ms, the event's own time stamp. */
  readonly at: number;
}

/** What one tool does with pointer and keys. `key` says whether the key was of use. */
export interface MapTool extends PointerListener {
  key(key: Key): boolean;
  /** The camera has moved. */
  camera(): void;
}
