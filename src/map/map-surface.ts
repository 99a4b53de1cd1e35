import type { Look } from '../../styles/map-style';
import type { BaseGround } from '../state/base-maps/ground';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { BaseFound } from '../survey/base-found';
import type { Position } from '../survey/document';
import type { Overlay } from './overlays/features';

/** What is drawn, each written to the map by itself: things that change together share a source. */
export const sourceNames = [
  'land',
  'ground-plan',
  'grid',
  'use',
  'ground',
  'lit',
  'places',
  'paths',
  'spots',
  'live',
  'merge',
] as const;
export type SourceName = (typeof sourceNames)[number];

/** CSS pixels of the map, from its top left corner. */
export interface Pixel {
  readonly x: number;
  readonly y: number;
}

/** Where a pointer is. */
export interface MapPointer {
  readonly position: Position;
  readonly pixel: Pixel;
  readonly kind: 'mouse' | 'touch' | 'pen';
}

/** Something drawn under the pointer. */
export interface MapHit {
  readonly layer: string;
  readonly properties: Readonly<Record<string, unknown>>;
}

/** Whether a pointer is taken; 'if-held': once it has rested in its place for a while, and the map has it until then. */
export type Taken = boolean | 'if-held';

export interface PointerListener {
  /** True takes the pointer: the map does not pan, and `move`, then `up` or `cancel` follow, at most one move a frame. */
  down(pointer: MapPointer): Taken;
  /** A pointer that was to be taken if held is taken now. */
  held(pointer: MapPointer): void;
  move(pointer: MapPointer): void;
  up(pointer: MapPointer): void;
  cancel(): void;
  /** Down and up in one place with a pointer that `down` did not take. */
  tap(pointer: MapPointer): void;
  /** A mouse that is over the map with no button down; null when it leaves. */
  hover(pointer: MapPointer | null): void;
}

export type Cursor = 'default' | 'pointer' | 'move' | 'crosshair';

/** A picture that lies on the ground: RGBA, rows from the north. */
export interface MapPicture {
  readonly pixels: Uint8ClampedArray<ArrayBuffer>;
  /** Pixels to a side. */
  readonly size: number;
  /** North-west, north-east, south-east and south-west corner. */
  readonly corners: readonly [Position, Position, Position, Position];
}

/** South-west and north-east corner. */
export type Bounds = readonly [southWest: Position, northEast: Position];

/**
 * All that the rest of the program knows of the map on the page. Behind it stands MapLibre, or a double in tests.
 */
export interface MapSurface {
  /** Data, or the address of a GeoJSON file. At most one write a frame; the same object again is no write. */
  setSource(name: SourceName, data: Overlay | string): void;
  /** What lies under the survey; paler, if the survey is to stand out. The same object again changes nothing. */
  setBase(ground: BaseGround, pale: boolean): void;
  /** Shades the slopes of the ground; null for a map without. The same object again changes nothing. */
  setRelief(grid: ElevationGrid | null): void;
  /** Lies on the ground under what the survey draws; null for none. The same object again changes nothing. */
  setPicture(picture: MapPicture | null): void;
  /** Asks the server of the base map again, if it was out of reach. */
  retryBase(): void;
  /** What is drawn in `layers` within `tolerance` pixels, topmost first. */
  query(pixel: Pixel, tolerance: number, layers: readonly string[]): readonly MapHit[];
  /** What the base map's tiles have on the screen in some of their layers; null where no vector base map is shown. */
  baseFeatures(layers: readonly string[]): BaseFound | null;
  project(position: Position): Pixel;
  unproject(pixel: Pixel): Position;
  zoom(): number;
  centre(): Position;
  bounds(): Bounds;
  /** `left`: px on the left that something else takes. */
  fit(bounds: Bounds, left?: number): void;
  goTo(position: Position, zoom?: number): void;
  zoomBy(steps: number): void;
  /** In pixels, the map's ground to the left and up. */
  panBy(right: number, down: number): void;
  /** Off while something else follows the pointer. */
  setPanEnabled(enabled: boolean): void;
  /** A double click zooms, except while it ends a drawing. */
  setDoubleClickZoom(enabled: boolean): void;
  setCursor(cursor: Cursor): void;
  /** Changes colours and images only: data, camera and selection stay. */
  setLook(look: Look): void;
  focus(): void;
  remove(): void;
}
