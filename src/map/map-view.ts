import * as maplibre from 'maplibre-gl';
import 'maplibre-gl/dist/maplibre-gl.css';
import workerUrl from 'maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url';
import { inLook, type Look } from '../../styles/map-style';
import type { BaseGround, BaseReport } from '../state/base-maps/ground';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { BaseFound } from '../survey/base-found';
import type { Position } from '../survey/document';
import { archiveTile } from './base/archive';
import { BaseLayers, type BaseHost } from './base/base-layers';
import { basePrefix } from './base/base-parts';
import { watchTiles } from './base/watch-tiles';
import { DoubleClickZoom } from './double-click-zoom';
import { GroundPicture, type PictureHost } from './ground-picture';
import { imageScale } from './images';
import { MapLook, type LookHost } from './map-look';
import type {
  Bounds,
  Cursor,
  MapHit,
  MapPicture,
  MapSurface,
  Pixel,
  PointerListener,
  SourceName,
} from './map-surface';
import { OverlaySources, type SourceData } from './overlay-sources';
import type { Overlay } from './overlays/features';
import { PointerFollower } from './pointer-follower';
import { shadedTile, ShadedRelief, type ReliefHost } from './shaded-relief';
import { surveyFit } from './survey-fit';
import { surveyImage, surveyStyle } from './survey-style';

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
maplibre.addProtocol('relief', async ({ url }) => ({ data: await shadedTile(url) }));

/** The map on the page. The only module that knows the map library. */
export class MapView implements MapSurface {
  readonly #map: maplibre.Map;
  readonly #follower: PointerFollower;
  readonly #doubleClickZoom: DoubleClickZoom;
  readonly #sources: OverlaySources;
  readonly #relief: ShadedRelief;
  readonly #picture: GroundPicture;
  readonly #base: BaseLayers;
  readonly #look: MapLook;
  #ground: { readonly ground: BaseGround; readonly pale: boolean } | null = null;
  #loaded = false;

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
    const map = new maplibre.Map({
      container,
      center: [centre[0], centre[1]],
      zoom,
      style: surveyStyle(look) as unknown as maplibre.StyleSpecification,
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
      const image = surveyImage(id, this.#look.now);
      if (image && !map.hasImage(id)) map.addImage(id, image, { pixelRatio: imageScale });
    });
    const host = hostOf(map, () => this.#look.now);
    this.#sources = new OverlaySources((name, data) => {
      const source = map.getSource<maplibre.GeoJSONSource>(name);
      void source?.setData(typeof data === 'string' ? data : asGeoJson(data));
    });
    this.#relief = new ShadedRelief(host, () => this.#look.now);
    this.#picture = new GroundPicture(host);
    this.#base = new BaseLayers(host, onBase);
    watchTiles(map, this.#base);
    this.#look = new MapLook(look, host, this.#relief, () => this.#base.repaintable);
    map.on('load', () => {
      this.#loaded = true;
      this.#sources.begin();
      // Before that, a slow server would hold up the survey.
      this.#relief.begin();
      this.#picture.begin();
      if (this.#ground) this.#base.show(this.#ground.ground, this.#ground.pale);
      this.#look.begin();
      void map.once('idle').then(() => onReady());
    });
    map.on('move', onCamera);
    map.on('moveend', onRest);
    map.on('resize', onResize);
    const canvas = map.getCanvasContainer();
    this.#doubleClickZoom = new DoubleClickZoom(canvas, map.doubleClickZoom);
    this.#follower = new PointerFollower(canvas, this, pointers);
  }

  setSource(name: SourceName, data: SourceData): void {
    this.#sources.set(name, data);
  }
  setBase(ground: BaseGround, pale: boolean): void {
    this.#ground = { ground, pale };
    if (this.#loaded) this.#base.show(ground, pale);
  }
  retryBase(): void {
    this.#base.retry();
  }

  setRelief(grid: ElevationGrid | null): void {
    this.#relief.show(grid);
  }
  setPicture(picture: MapPicture | null): void {
    this.#picture.show(picture);
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
    const { clientWidth: width, clientHeight: height } = this.#map.getContainer();
    const fit = surveyFit([southWest, northEast], { width, height }, left);
    if (fit.kind === 'about') this.goTo(fit.centre, fit.zoom);
    else
      this.#map.fitBounds([...southWest, ...northEast], {
        padding: fit.padding,
        maxZoom: fit.maxZoom,
        duration: 400,
      });
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
    this.#doubleClickZoom.setEnabled(enabled);
  }
  setCursor(cursor: Cursor): void {
    this.#map.getCanvas().style.cursor = cursor === 'default' ? '' : cursor;
  }
  setLook(look: Look): void {
    this.#look.wear(look);
  }
  focus(): void {
    this.#map.getCanvas().focus({ preventScroll: true });
  }
  remove(): void {
    this.#sources.remove();
    this.#follower.remove();
    this.#base.remove();
    this.#map.remove();
  }
}

/** The library's types ask for lists that may be changed; it does not change them. */
const asGeoJson = (data: Overlay) => data as unknown as GeoJSON.FeatureCollection;

type Host = BaseHost & ReliefHost & PictureHost & LookHost;
/** The map library as what lies under the survey needs it. What it cannot use it tells as an error event: see `watchTiles`. */
const hostOf = (map: maplibre.Map, look: () => Look): Host => ({
  addSource: (id, source) => void map.addSource(id, source as unknown as maplibre.SourceSpecification),
  removeSource: (id) => void (map.getSource(id) && map.removeSource(id)),
  addLayer: (layer, before, isOnPaper) => {
    const drawn = isOnPaper ? inLook(layer, look()) : layer;
    map.addLayer(drawn as unknown as maplibre.LayerSpecification, before);
  },
  removeLayer: (id) => void (map.getLayer(id) && map.removeLayer(id)),
  setPaint: (layer, property, value) =>
    void (map.getLayer(layer) && map.setPaintProperty(layer, property as 'line-color', value as string)),
  hasImage: (id) => map.hasImage(id),
  updateImage: (id, image) => void map.updateImage(id, image),
  readCanvas: (id, corners) => {
    const source = map.getSource<maplibre.CanvasSource>(id);
    if (!source) return false;
    source.setCoordinates(corners.map(([lng, lat]) => [lng, lat]) as maplibre.Coordinates);
    // Playing for one frame reads the canvas once.
    source.play();
    source.pause();
    return true;
  },
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
