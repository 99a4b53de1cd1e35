import latin400 from '@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff2?url';
import latin600 from '@fontsource/source-sans-3/files/source-sans-3-latin-600-normal.woff2?url';
import latinExt400 from '@fontsource/source-sans-3/files/source-sans-3-latin-ext-400-normal.woff2?url';
import latinExt600 from '@fontsource/source-sans-3/files/source-sans-3-latin-ext-600-normal.woff2?url';
import * as maplibre from 'maplibre-gl';
import 'maplibre-gl/dist/maplibre-gl.css';
import workerUrl from 'maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url';
import { fonts, inLook, type Look } from '../../styles/map-style';
import type { Position } from '../survey/document';
import { imageNames, imageOf, imageScale } from './images';
import { mapLayers } from './layers';
import {
  sourceNames,
  type Bounds,
  type Cursor,
  type MapHit,
  type MapSurface,
  type Pixel,
  type PointerListener,
  type SourceName,
} from './map-surface';
import { emptyOverlay, type Overlay } from './overlays/features';
import { PointerFollower } from './pointer-follower';

interface Options {
  readonly container: HTMLElement;
  readonly centre: Position;
  readonly zoom: number;
  readonly look: Look;
  readonly pointers: PointerListener;
  /** At every movement of the camera, and once it rests. */
  readonly onCamera: () => void;
  readonly onRest: () => void;
  /** Once everything that was there at the beginning is drawn. */
  readonly onReady: () => void;
}

// A bundler does not find the library's worker by itself.
maplibre.setWorkerUrl(workerUrl);

/** Free of the edges when the whole survey is shown, in pixels. */
const margin = 60;

/** The map on the page. The only module that knows the map library. */
export class MapView implements MapSurface {
  readonly #map: maplibre.Map;
  readonly #follower: PointerFollower;
  readonly #shown = new Map<SourceName, Overlay | string>();
  #zoomsOnDoubleClick = true;
  readonly #waiting = new Map<SourceName, Overlay | string>();
  #frame = 0;
  #loaded = false;
  #look: Look;

  constructor({ container, centre, zoom, look, pointers, onCamera, onRest, onReady }: Options) {
    this.#look = look;
    const map = new maplibre.Map({
      container,
      center: [centre[0], centre[1]],
      zoom,
      style: style(look),
      // North is up on a survey sheet, and the world is flat enough.
      dragRotate: false,
      pitchWithRotate: false,
      touchPitch: false,
      boxZoom: false,
      maxPitch: 0,
      minZoom: 2,
      maxZoom: 20,
      attributionControl: false,
      fadeDuration: 0,
      locale: { 'Map.Title': 'Map of the survey' },
    });
    this.#map = map;
    map.touchZoomRotate.disableRotation();
    map.keyboard.disableRotation();
    map.setMissingStyleImageResolver((id) => {
      const image = imageOf(id, this.#look);
      if (image && !map.hasImage(id)) map.addImage(id, image, { pixelRatio: imageScale });
    });
    map.on('load', () => {
      this.#loaded = true;
      this.#flush();
      void map.once('idle').then(() => onReady());
    });
    map.on('move', onCamera);
    map.on('moveend', onRest);
    map.getCanvasContainer().addEventListener('dblclick', (event) => this.#doubleClick(event), true);
    this.#follower = new PointerFollower(map.getCanvasContainer(), this, pointers);
  }

  setSource(name: SourceName, data: Overlay | string): void {
    if ((this.#waiting.get(name) ?? this.#shown.get(name)) === data) return;
    this.#waiting.set(name, data);
    if (this.#loaded) this.#frame ||= requestAnimationFrame(() => this.#flush());
  }

  #flush(): void {
    this.#frame = 0;
    for (const [name, data] of this.#waiting) {
      if (this.#shown.get(name) === data) continue;
      this.#shown.set(name, data);
      const source = this.#map.getSource<maplibre.GeoJSONSource>(name);
      void source?.setData(typeof data === 'string' ? data : asGeoJson(data));
    }
    this.#waiting.clear();
  }

  query({ x, y }: Pixel, tolerance: number, layers: readonly string[]): readonly MapHit[] {
    if (!this.#loaded) return [];
    const box: [[number, number], [number, number]] = [
      [x - tolerance, y - tolerance],
      [x + tolerance, y + tolerance],
    ];
    return this.#map
      .queryRenderedFeatures(box, { layers: [...layers] })
      .map(({ layer, properties }) => ({ layer: layer.id, properties }));
  }

  project([lng, lat]: Position): Pixel {
    const { x, y } = this.#map.project([lng, lat]);
    return { x, y };
  }
  unproject({ x, y }: Pixel): Position {
    const { lng, lat } = this.#map.unproject([x, y]).wrap();
    return [lng, lat];
  }
  zoom(): number {
    return this.#map.getZoom();
  }
  centre(): Position {
    const { lng, lat } = this.#map.getCenter().wrap();
    return [lng, lat];
  }
  bounds(): Bounds {
    const bounds = this.#map.getBounds();
    return [
      [bounds.getWest(), bounds.getSouth()],
      [bounds.getEast(), bounds.getNorth()],
    ];
  }

  fit([southWest, northEast]: Bounds): void {
    const { clientWidth, clientHeight } = this.#map.getContainer();
    const padding = Math.min(margin, clientWidth / 8, clientHeight / 8);
    this.#map.fitBounds([...southWest, ...northEast], { padding, maxZoom: 16, duration: 400 });
  }
  goTo([lng, lat]: Position, zoom?: number): void {
    this.#map.easeTo({ center: [lng, lat], ...(zoom === undefined ? {} : { zoom }), duration: 400 });
  }
  panBy(right: number, down: number): void {
    this.#map.panBy([right, down], { duration: 150 });
  }
  zoomBy(steps: number): void {
    this.#map.easeTo({ zoom: this.#map.getZoom() + steps, duration: 200 });
  }

  setPanEnabled(enabled: boolean): void {
    const set = enabled ? 'enable' : 'disable';
    this.#map.dragPan[set]();
    this.#map.touchZoomRotate[set]();
    // Enabling brings rotation back.
    if (enabled) this.#map.touchZoomRotate.disableRotation();
  }
  setDoubleClickZoom(enabled: boolean): void {
    const { doubleClickZoom } = this.#map;
    if (!enabled) {
      this.#zoomsOnDoubleClick = false;
      doubleClickZoom.disable();
      return;
    }
    doubleClickZoom.enable();
    // The second click of a double click that ends a drawing comes before the page tells of the double click.
    setTimeout(() => (this.#zoomsOnDoubleClick = true));
  }
  #doubleClick(event: MouseEvent): void {
    if (!this.#zoomsOnDoubleClick) event.stopPropagation();
  }
  setCursor(cursor: Cursor): void {
    this.#map.getCanvas().style.cursor = cursor === 'default' ? '' : cursor;
  }
  setLook(look: Look): void {
    const before = this.#look;
    this.#look = look;
    if (look === before) return;
    if (this.#loaded) this.#repaint(before);
    else void this.#map.once('load', () => this.#repaint(before));
  }
  #repaint(before: Look): void {
    const map = this.#map;
    const look = this.#look;
    for (const { id, paint } of mapLayers) {
      if (!map.getLayer(id)) continue;
      for (const [property, value] of Object.entries(paint ?? {})) {
        const now = inLook(value, look);
        if (JSON.stringify(now) !== JSON.stringify(inLook(value, before)))
          map.setPaintProperty(id, property as 'line-color', now as string);
      }
    }
    for (const name of imageNames) {
      const image = map.hasImage(name) ? imageOf(name, look) : null;
      if (image) map.updateImage(name, image);
    }
  }
  focus(): void {
    this.#map.getCanvas().focus({ preventScroll: true });
  }
  remove(): void {
    cancelAnimationFrame(this.#frame);
    this.#follower.remove();
    this.#map.remove();
  }
}

/** The library's types ask for lists that may be changed; it does not change them. */
const asGeoJson = (data: Overlay) => data as unknown as GeoJSON.FeatureCollection;

function style(look: Look): maplibre.StyleSpecification {
  const file = (url: string) => new URL(url, location.href).href;
  const latin = [
    'U+0000-00FF',
    'U+0131',
    'U+0152-0153',
    'U+02C6',
    'U+02DA',
    'U+02DC',
    'U+2000-206F',
    'U+2212',
  ];
  const latinExt = ['U+0100-02BA', 'U+1E00-1E9F', 'U+1EF2-1EFF'];
  const face = (a: string, b: string) => [
    { url: file(a), 'unicode-range': latin },
    { url: file(b), 'unicode-range': latinExt },
  ];
  return {
    version: 8,
    'font-faces': {
      [fonts.plain]: face(latin400, latinExt400),
      [fonts.strong]: face(latin600, latinExt600),
    },
    sources: Object.fromEntries(
      sourceNames.map((name): [string, maplibre.GeoJSONSourceSpecification] => [
        name,
        { type: 'geojson', data: asGeoJson(emptyOverlay), tolerance: 0.1, maxzoom: 20 },
      ]),
    ),
    layers: inLook(mapLayers, look) as unknown as maplibre.LayerSpecification[],
  };
}
