import * as maplibre from 'maplibre-gl';
import 'maplibre-gl/dist/maplibre-gl.css';
import workerUrl from 'maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url';
import { inLook, type LayerPiece, type Look } from '../../styles/map-style';
import { reliefPaint } from '../../styles/relief-paint';
import type { BaseGround, BaseReport } from '../state/base-maps/ground';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { BaseFound } from '../survey/base-found';
import type { Position } from '../survey/document';
import { archiveTile } from './base/archive';
import { BaseLayers, type BaseHost } from './base/base-layers';
import { basePrefix } from './base/base-parts';
import { imageNames, imageOf, imageScale } from './images';
import { fontFaces } from './fonts';
import { mapLayers, slots } from './layers';
import { reliefBounds, reliefSize, reliefTile } from './relief';
import { steepened } from './steepened';
import {
  sourceNames,
  type Bounds,
  type Cursor,
  type MapHit,
  type MapPicture,
  type MapSurface,
  type Pixel,
  type PointerListener,
  type SourceName,
} from './map-surface';
import { emptyOverlay, type Overlay } from './overlays/features';
import { PointerFollower } from './pointer-follower';
import { zoomToShow } from './zoom-to-show';

interface Options {
  readonly container: HTMLElement;
  readonly centre: Position;
  readonly zoom: number;
  readonly look: Look;
  readonly pointers: PointerListener;
  /** At every movement of the camera, and once it rests. */
  readonly onCamera: () => void;
  readonly onRest: () => void;
  /** The map has another size: its middle stays where it was. */
  readonly onResize: () => void;
  /** Once everything that was there at the beginning is drawn. */
  readonly onReady: () => void;
  /** How the base map fares. */
  readonly onBase: (report: BaseReport) => void;
}

// A bundler does not find the library's worker by itself.
maplibre.setWorkerUrl(workerUrl);
maplibre.addProtocol('pmtiles', archiveTile);

/** The heights that slopes are shaded by: the library asks for tiles of them as of any other. */
let shadedGrid: { readonly grid: ElevationGrid | null; readonly turn: number } = { grid: null, turn: 0 };
maplibre.addProtocol('relief', async ({ url }) => {
  const [z = 0, x = 0, y = 0] = url.split('/').slice(-3).map(Number);
  if (!shadedGrid.grid) throw new Error('no heights are loaded');
  const image = new ImageData(reliefTile(shadedGrid.grid, z, x, y), reliefSize, reliefSize);
  const options = { premultiplyAlpha: 'none', colorSpaceConversion: 'none' } as const;
  return { data: await createImageBitmap(image, options) };
});

/** Free of the edges when the whole survey is shown, in pixels. */
const margin = 60;
/** px of height for which it is fitted at least: a sheet of a phone that covers the map is pulled down again. */
const leastToFit = 200;

/** Features that are handed to the map's worker in one frame: packing them takes 20 ms a thousand. */
const featuresAtOnce = 1000;

/** The map on the page. The only module that knows the map library. */
export class MapView implements MapSurface {
  readonly #map: maplibre.Map;
  readonly #follower: PointerFollower;
  readonly #shown = new Map<SourceName, Overlay | string>();
  #zoomsOnDoubleClick = true;
  readonly #waiting = new Map<SourceName, Overlay | string>();
  #frame = 0;
  #loaded = false;
  readonly #base: BaseLayers;
  #ground: { readonly ground: BaseGround; readonly pale: boolean } | null = null;
  #look: Look;
  #relief: ElevationGrid | null = null;
  #picture: MapPicture | null = null;
  readonly #pictureCanvas = globalThis.document.createElement('canvas');

  constructor({
    container,
    centre,
    zoom,
    look,
    pointers,
    onCamera,
    onRest,
    onResize,
    onReady,
    onBase,
  }: Options) {
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
      const image = id.startsWith(imagePrefix) ? imageOf(id.slice(imagePrefix.length), this.#look) : null;
      if (image && !map.hasImage(id)) map.addImage(id, image, { pixelRatio: imageScale });
    });
    this.#base = new BaseLayers(
      hostOf(map, () => this.#look),
      onBase,
    );
    watchBase(map, this.#base);
    map.on('load', () => {
      this.#loaded = true;
      this.#flush(Infinity);
      // Before that, a slow server would hold up the survey.
      if (this.#relief) this.#shade();
      if (this.#picture) this.#lay();
      if (this.#ground) this.#base.show(this.#ground.ground, this.#ground.pale);
      void map.once('idle').then(() => onReady());
    });
    map.on('move', onCamera);
    map.on('moveend', onRest);
    map.on('resize', onResize);
    map.getCanvasContainer().addEventListener('dblclick', (event) => this.#doubleClick(event), true);
    this.#follower = new PointerFollower(map.getCanvasContainer(), this, pointers);
  }

  setSource(name: SourceName, data: Overlay | string): void {
    if ((this.#waiting.get(name) ?? this.#shown.get(name)) === data) return;
    this.#waiting.set(name, data);
    if (this.#loaded) this.#frame ||= requestAnimationFrame(() => this.#flush());
  }

  #flush(atOnce = featuresAtOnce): void {
    this.#frame = 0;
    let written = 0;
    for (const [name, data] of this.#waiting) {
      if (written > atOnce) {
        this.#frame = requestAnimationFrame(() => this.#flush());
        return;
      }
      this.#waiting.delete(name);
      if (this.#shown.get(name) === data) continue;
      if (typeof data !== 'string') written += data.features.length;
      this.#shown.set(name, data);
      const source = this.#map.getSource<maplibre.GeoJSONSource>(name);
      void source?.setData(typeof data === 'string' ? data : asGeoJson(data));
    }
  }

  setBase(ground: BaseGround, pale: boolean): void {
    this.#ground = { ground, pale };
    if (this.#loaded) this.#base.show(ground, pale);
  }
  retryBase(): void {
    this.#base.retry();
  }

  setRelief(grid: ElevationGrid | null): void {
    if (grid === this.#relief) return;
    this.#relief = grid;
    if (this.#loaded) this.#shade();
  }
  #shade(): void {
    const map = this.#map;
    if (map.getLayer('relief')) map.removeLayer('relief');
    if (map.getSource('relief')) map.removeSource('relief');
    const grid = this.#relief;
    if (!grid) return;
    shadedGrid = { grid: steepened(grid), turn: shadedGrid.turn + 1 };
    map.addSource('relief', {
      type: 'raster-dem',
      // Another grid has other addresses: the library keeps tiles by them.
      tiles: [`relief://${shadedGrid.turn}/{z}/{x}/{y}`],
      tileSize: reliefSize,
      bounds: reliefBounds(grid),
      maxzoom: 13,
      encoding: 'terrarium',
    });
    map.addLayer(
      {
        id: 'relief',
        type: 'hillshade',
        source: 'relief',
        paint: reliefPaint[this.#look],
      },
      slots.relief,
    );
  }

  setPicture(picture: MapPicture | null): void {
    if (picture === this.#picture) return;
    this.#picture = picture;
    if (this.#loaded) this.#lay();
  }
  #lay(): void {
    const map = this.#map;
    const picture = this.#picture;
    const source = map.getSource<maplibre.CanvasSource>('picture');
    if (!picture) {
      if (map.getLayer('picture')) map.removeLayer('picture');
      if (source) map.removeSource('picture');
      return;
    }
    const { pixels, size, corners } = picture;
    const canvas = this.#pictureCanvas;
    if (canvas.width !== size) canvas.width = canvas.height = size;
    canvas.getContext('2d')?.putImageData(new ImageData(pixels, size, size), 0, 0);
    const coordinates = corners.map(([lng, lat]) => [lng, lat]) as maplibre.Coordinates;
    if (source) {
      source.setCoordinates(coordinates);
      // Playing for one frame reads the canvas once.
      source.play();
      source.pause();
      return;
    }
    map.addSource('picture', { type: 'canvas', canvas, coordinates, animate: false });
    map.addLayer(
      {
        id: 'picture',
        type: 'raster',
        source: 'picture',
        paint: { 'raster-resampling': 'nearest', 'raster-opacity': 0.72, 'raster-fade-duration': 0 },
      },
      slots.picture,
    );
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

  baseFeatures(layers: readonly string[]): BaseFound | null {
    const map = this.#map;
    const sources = Object.keys(this.#loaded ? map.getStyle().sources : {}).flatMap((id) => {
      const source = id.startsWith(basePrefix) ? map.getSource(id) : undefined;
      return source?.type === 'vector' ? [source] : [];
    });
    if (sources.length === 0) return null;
    return {
      layers: sources.flatMap(({ vectorLayerIds }) => vectorLayerIds ?? []),
      zoom: map.getZoom(),
      features: sources.flatMap(({ id }) =>
        layers.flatMap((layer) =>
          map
            .querySourceFeatures(id, { sourceLayer: layer })
            .map(({ properties, geometry }) => ({ layer, properties, geometry })),
        ),
      ),
    };
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

  fit([southWest, northEast]: Bounds, left = 0): void {
    const { clientWidth, clientHeight } = this.#map.getContainer();
    const free = Math.min(margin, clientWidth / 8, clientHeight / 8);
    const padding = { top: free, right: free, bottom: free, left: free + left };
    if (clientHeight >= leastToFit) {
      this.#map.fitBounds([...southWest, ...northEast], { padding, maxZoom: 16, duration: 400 });
      return;
    }
    const zoom = zoomToShow([southWest, northEast], { width: clientWidth - 2 * free, height: leastToFit });
    const [lng, lat] = [(southWest[0] + northEast[0]) / 2, (southWest[1] + northEast[1]) / 2];
    this.goTo([lng, lat], Math.min(16, zoom));
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
    for (const { id, paint } of [...mapLayers, ...this.#base.repaintable]) {
      if (!map.getLayer(id)) continue;
      for (const [property, value] of Object.entries(paint ?? {})) {
        const now = inLook(value, look);
        if (JSON.stringify(now) !== JSON.stringify(inLook(value, before)))
          map.setPaintProperty(id, property as 'line-color', now as string);
      }
    }
    if (map.getLayer('relief'))
      for (const [property, value] of Object.entries(reliefPaint[look]))
        map.setPaintProperty('relief', property as 'hillshade-shadow-color', value as string);
    for (const name of imageNames) {
      const shown = imagePrefix + name;
      const image = map.hasImage(shown) ? imageOf(name, look) : null;
      if (image) map.updateImage(shown, image);
    }
  }
  focus(): void {
    this.#map.getCanvas().focus({ preventScroll: true });
  }
  remove(): void {
    cancelAnimationFrame(this.#frame);
    this.#follower.remove();
    this.#base.remove();
    this.#map.remove();
  }
}

/** The library's types ask for lists that may be changed; it does not change them. */
const asGeoJson = (data: Overlay) => data as unknown as GeoJSON.FeatureCollection;

/** In front of the names of our images: a base map brings images of its own, named as it likes. */
const imagePrefix = 'survey:';

/** A layer with the images that it asks for under their names on the map. */
function withOwnImages({ layout, paint, ...layer }: LayerPiece): LayerPiece {
  const renamed = (properties: Readonly<Record<string, unknown>> = {}) =>
    Object.fromEntries(
      Object.entries(properties).map(([name, value]) => [
        name,
        /^icon-image$|-pattern$/.test(name) ? ['concat', imagePrefix, value] : value,
      ]),
    );
  return { ...layer, layout: renamed(layout), paint: renamed(paint) };
}

/**
 * Pixels that an outline may leave its true place by. Ways and fields have thousands of corners, and each is drawn as
 * several triangles; what is read or taken hold of lies where it is.
 */
const toleranceOf = (name: SourceName): number =>
  name === 'ground-plan' || name === 'land' || name === 'use' ? 0.5 : 0.1;

function style(look: Look): maplibre.StyleSpecification {
  return {
    version: 8,
    'font-faces': fontFaces(),
    sources: Object.fromEntries(
      sourceNames.map((name): [string, maplibre.GeoJSONSourceSpecification] => [
        name,
        { type: 'geojson', data: asGeoJson(emptyOverlay), tolerance: toleranceOf(name), maxzoom: 20 },
      ]),
    ),
    layers: inLook(mapLayers, look).map(withOwnImages) as unknown as maplibre.LayerSpecification[],
  };
}

/** The map library as a base map needs it. What it cannot use it tells as an error event, which is heard below. */
const hostOf = (map: maplibre.Map, look: () => Look): BaseHost => ({
  addSource: (id, source) => void map.addSource(id, source as unknown as maplibre.SourceSpecification),
  removeSource: (id) => void (map.getSource(id) && map.removeSource(id)),
  addLayer: (layer, before, isOnPaper) => {
    const drawn = isOnPaper ? inLook(layer, look()) : layer;
    map.addLayer(drawn as unknown as maplibre.LayerSpecification, before);
  },
  removeLayer: (id) => void (map.getLayer(id) && map.removeLayer(id)),
  setVisible: (id, visible) =>
    void (map.getLayer(id) && map.setLayoutProperty(id, 'visibility', visible ? 'visible' : 'none')),
  setGlyphs: (url) => void map.setGlyphs(url),
  addSprite: (id, url) => void map.addSprite(id, url),
  removeSprite: (id) => void map.removeSprite(id),
  askAgain: (source, tiles) => {
    if (map.getSource(source)) map.refreshTiles(source, [...tiles]);
  },
  isSettled: (source) => !map.getSource(source) || map.isSourceLoaded(source),
  attribution: (source) => (map.getSource(source) as { attribution?: string } | undefined)?.attribution,
});

interface TileEvent {
  readonly sourceId?: string;
  readonly tile?: { readonly tileID: { readonly canonical: { z: number; x: number; y: number } } };
}
const tileOf = ({ tile }: TileEvent) => tile?.tileID.canonical ?? null;

function watchBase(map: maplibre.Map, base: BaseLayers): void {
  map.on('sourcedataloading', (event: TileEvent) => {
    const tile = tileOf(event);
    if (tile) base.asked(event.sourceId, tile);
  });
  map.on('sourcedata', (event: TileEvent) => {
    const tile = tileOf(event);
    if (tile) base.came(event.sourceId, tile);
    else base.described(event.sourceId);
  });
  map.on('sourcedataabort', (event: TileEvent) => {
    const tile = tileOf(event);
    if (tile) base.left(event.sourceId, tile);
  });
  map.on('error', (event: TileEvent & { readonly error: unknown }) => {
    if (!base.failed(event.sourceId, tileOf(event))) console.error(event.error);
  });
}
