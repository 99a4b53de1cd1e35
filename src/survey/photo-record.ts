import type { Position } from './document';

/**
 * What a photograph says of itself (Exif 2.32, JEITA CP-3451E). Serial numbers and owners' names are never read; where it was
 * taken is used to find the spot, and kept nowhere.
 */
export interface PhotoRecord {
  /** Name, or path within the folder. */
  readonly file: string;
  /** The camera's clock when it was taken, "2026-06-21T18:00:01.25"; null where the file has none. */
  readonly clock: string | null;
  /** Minutes by which that clock is ahead of UTC; null where the camera did not write it. */
  readonly offset: number | null;
  readonly position: Position | null;
  readonly model: string | null;
  /** mm as engraved on the lens. */
  readonly focalLength: number | null;
  readonly fNumber: number | null;
  /** s. */
  readonly exposure: number | null;
  readonly iso: number | null;
  /** Pixels as the sensor lies, before any turning. */
  readonly width: number | null;
  readonly height: number | null;
  /** Pixels a mm of the sensor as the camera wrote it (FocalPlaneXResolution); null where it did not. */
  readonly pixelsPerMm: number | null;
  /** 0 to 5; null where nobody has rated it. */
  readonly rating: number | null;
  /** What could not be read, in plain words. */
  readonly doubts: readonly string[];
}

/** A photograph of which nothing could be read, and why. */
export const unreadPhoto = (file: string, why: string): PhotoRecord => ({
  file,
  clock: null,
  offset: null,
  position: null,
  model: null,
  focalLength: null,
  fNumber: null,
  exposure: null,
  iso: null,
  width: null,
  height: null,
  pixelsPerMm: null,
  rating: null,
  doubts: [why],
});
