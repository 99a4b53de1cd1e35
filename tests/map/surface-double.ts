import type {
  Bounds,
  Cursor,
  MapHit,
  MapPointer,
  MapSurface,
  Pixel,
  SourceName,
} from '../../src/map/map-surface';
import type { Overlay } from '../../src/map/overlays/features';
import type { Position } from '../../src/survey/document';

interface Thing {
  readonly layer: string;
  readonly position: Position;
  readonly properties: Readonly<Record<string, unknown>>;
}

/** Pixels for a degree; north is up. Unlike in both directions, so that a swap shows. */
const [perLng, perLat] = [50_000, 80_000];

/** A map without a page: things are where a test puts them. */
export class SurfaceDouble implements MapSurface {
  readonly sources = new Map<SourceName, Overlay | string>();
  readonly things: Thing[] = [];
  cursor: Cursor = 'default';
  pans = true;
  zoomsOnDoubleClick = true;
  focused = false;
  middle: Position = [7, 50];

  put(layer: string, position: Position, properties: Thing['properties']): void {
    this.things.push({ layer, position, properties });
  }
  /** A pointer at a position, `right` and `down` pixels beside it. */
  at(position: Position, right = 0, down = 0, kind: MapPointer['kind'] = 'mouse'): MapPointer {
    const { x, y } = this.project(position);
    const pixel = { x: x + right, y: y + down };
    return { pixel, position: this.unproject(pixel), kind };
  }

  setLook(): void {}
  panBy(): void {}
  setSource(name: SourceName, data: Overlay | string): void {
    this.sources.set(name, data);
  }
  setBase(): void {
    // No base map lies under a double.
  }
  setRelief(): void {
    // Nothing is shaded.
  }
  setPicture(): void {
    // Nothing is laid on the ground.
  }
  retryBase(): void {
    // None can fail either.
  }
  baseFeatures(): null {
    return null;
  }
  query({ x, y }: Pixel, tolerance: number, layers: readonly string[]): readonly MapHit[] {
    return this.things.filter(({ layer, position }) => {
      const at = this.project(position);
      return layers.includes(layer) && Math.max(Math.abs(at.x - x), Math.abs(at.y - y)) <= tolerance;
    });
  }
  project([lng, lat]: Position): Pixel {
    return { x: (lng - 7) * perLng, y: (50 - lat) * perLat };
  }
  unproject({ x, y }: Pixel): Position {
    return [7 + x / perLng, 50 - y / perLat];
  }
  zoom(): number {
    return 14;
  }
  centre(): Position {
    return this.middle;
  }
  bounds(): Bounds {
    return [this.unproject({ x: -500, y: 400 }), this.unproject({ x: 500, y: -400 })];
  }
  fit(): void {
    this.middle = [7, 50];
  }
  goTo(position: Position): void {
    this.middle = position;
  }
  zoomBy(): void {
    this.middle = [...this.middle];
  }
  setPanEnabled(enabled: boolean): void {
    this.pans = enabled;
  }
  setDoubleClickZoom(enabled: boolean): void {
    this.zoomsOnDoubleClick = enabled;
  }
  setCursor(cursor: Cursor): void {
    this.cursor = cursor;
  }
  focus(): void {
    this.focused = true;
  }
  remove(): void {
    this.sources.clear();
  }
}
