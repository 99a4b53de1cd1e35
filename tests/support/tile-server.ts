import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { GeoJSONVT } from '@maplibre/geojson-vt';
import { fromGeojsonVt } from '@maplibre/vt-pbf';
import { encodePng, type Colour } from './png';
import { writePmtiles, type ArchiveTile } from './pmtiles-writer';
import { townStyle, townTile, townTileJson } from './town-tiles';

/** Colours that nothing of the survey or the page has. */
export const colours = {
  raster: [20, 160, 220, 255],
  vector: [60, 200, 90, 255],
  archive: [230, 120, 200, 255],
} as const satisfies Record<string, Colour>;

const rasterTile = encodePng(256, 256, () => colours.raster);
const archiveRasterTile = encodePng(256, 256, () => colours.archive);

/** Land from pole to pole with a lake far away, a road along the equator and a place with a name. */
const world = {
  type: 'FeatureCollection',
  features: [
    area('land', [
      [-170, -80],
      [170, -80],
      [170, 80],
      [-170, 80],
    ]),
    area('water', [
      [-60, 10],
      [-50, 10],
      [-50, 20],
      [-60, 20],
    ]),
  ],
} as const;

function area(layer: string, corners: readonly (readonly [number, number])[]) {
  const ring = [...corners, corners[0] ?? [0, 0]].map(([x, y]) => [x, y]);
  return {
    type: 'Feature',
    properties: { layer, name: `of ${layer}` },
    geometry: { type: 'Polygon', coordinates: [ring] },
  } as const;
}

const indexes = (['land', 'water'] as const).map((layer) => ({
  layer,
  index: new GeoJSONVT(
    {
      type: 'FeatureCollection',
      features: world.features.filter((f) => f.properties.layer === layer),
    } as unknown as GeoJSON.FeatureCollection,
    { maxZoom: 14, indexMaxZoom: 2 },
  ),
}));

function vectorTile(z: number, x: number, y: number): Uint8Array {
  const layers = Object.fromEntries(
    indexes.flatMap(({ layer, index }) => {
      const tile = index.getTile(z, x, y);
      return tile ? [[layer, tile]] : [];
    }),
  );
  return fromGeojsonVt(layers, { version: 2, extent: 4096 });
}

const pyramid = (last: number): { z: number; x: number; y: number }[] =>
  Array.from({ length: last + 1 }, (_, z) => z).flatMap((z) =>
    Array.from({ length: 4 ** z }, (_, i) => ({ z, x: i % 2 ** z, y: Math.floor(i / 2 ** z) })),
  );

export const vectorArchive = (): Buffer =>
  writePmtiles(
    pyramid(3).map((tile): ArchiveTile => ({ ...tile, data: vectorTile(tile.z, tile.x, tile.y) })),
    'mvt',
    {
      attribution: '<a href="https://example.org/atlas">An invented atlas</a><img src=x onerror=alert(1)>',
      vector_layers: [
        { id: 'land', fields: { name: 'String' } },
        { id: 'water', fields: { name: 'String' } },
      ],
    },
  );
export const rasterArchive = (): Buffer =>
  writePmtiles(
    pyramid(2).map((tile): ArchiveTile => ({ ...tile, data: archiveRasterTile })),
    'png',
    { attribution: 'Invented pictures' },
  );

/** A map server on this machine that can be slow, refuse, and die. */
export class TileServer {
  /** Paths that were asked for, in order. */
  readonly asked: string[] = [];
  /** What tiles are answered with: 200 sends them. */
  status = 200;
  #server: Server | null = null;
  #port = 0;
  /** Tiles that wait while the server is slow. */
  #held: (() => void)[] | null = null;
  readonly #archives = { 'vector.pmtiles': vectorArchive(), 'raster.pmtiles': rasterArchive() };

  get origin(): string {
    return `http://127.0.0.1:${this.#port}`;
  }

  /** Starts, or comes back on the port that it had. */
  async start(): Promise<void> {
    const server = createServer((request, response) => this.#answer(request, response));
    await new Promise<void>((resolve, reject) => {
      server.once('error', reject);
      server.listen(this.#port, '127.0.0.1', resolve);
    });
    const address = server.address();
    if (typeof address !== 'object' || address === null)
      throw new Error('expected the tile server to have a port');
    this.#port = address.port;
    this.#server = server;
  }

  /** Breaks off what is under way and answers no more. */
  async die(): Promise<void> {
    const server = this.#server;
    this.#server = null;
    server?.closeAllConnections();
    await new Promise<void>((resolve) => (server ? server.close(() => resolve()) : resolve()));
  }

  /** From now on tiles are held back, until they are let go. */
  hold(): void {
    this.#held ??= [];
  }
  get heldBack(): number {
    return this.#held?.length ?? 0;
  }
  letGo(): void {
    const held = this.#held ?? [];
    this.#held = null;
    for (const send of held) send();
  }

  #answer(request: IncomingMessage, response: ServerResponse): void {
    const path = new URL(request.url ?? '/', this.origin).pathname;
    this.asked.push(path);
    const headers = { 'access-control-allow-origin': '*', 'access-control-expose-headers': '*' };
    const send = (type: string, body: Uint8Array | string, status = 200, more: object = {}) =>
      response.writeHead(status, { ...headers, 'content-type': type, ...more }).end(body);
    if (request.method === 'OPTIONS') {
      response.writeHead(204, { ...headers, 'access-control-allow-headers': '*' }).end();
      return;
    }
    const tile = /^\/(raster|vector|town|nowhere)\/(\d+)\/(\d+)\/(\d+)/.exec(path);
    if (tile) {
      const [, kind, z, x, y] = tile;
      const reply = () => {
        if (kind === 'nowhere') send('text/plain', 'none', 404);
        else if (this.status !== 200) send('text/plain', 'no', this.status);
        else if (kind === 'raster') send('image/png', rasterTile);
        else {
          const tileAt = kind === 'town' ? townTile : vectorTile;
          send('application/x-protobuf', tileAt(Number(z), Number(x), Number(y)));
        }
      };
      if (this.#held) this.#held.push(reply);
      else reply();
      return;
    }
    const archive = Object.entries(this.#archives).find(([name]) => path === `/${name}`)?.[1];
    if (archive) {
      const range = /^bytes=(\d+)-(\d+)$/.exec(request.headers.range ?? '');
      const [from, to] = [
        Number(range?.[1] ?? 0),
        Math.min(Number(range?.[2] ?? archive.length), archive.length - 1),
      ];
      send('application/octet-stream', archive.subarray(from, to + 1), 206, {
        'content-range': `bytes ${from}-${to}/${archive.length}`,
        etag: '"one"',
      });
      return;
    }
    switch (path) {
      case '/style.json':
        send('application/json', JSON.stringify(style));
        return;
      case '/tiles.json':
        send('application/json', JSON.stringify(this.#tileJson()));
        return;
      case '/town-style.json':
        send('application/json', JSON.stringify(townStyle));
        return;
      case '/town.json':
        send('application/json', JSON.stringify(townTileJson(this.origin)));
        return;
      case '/sprite.json':
      case '/sprite@2x.json':
        send('application/json', JSON.stringify(sprite));
        return;
      case '/sprite.png':
      case '/sprite@2x.png':
        send(
          'image/png',
          encodePng(8, 8, () => [255, 0, 0, 255]),
        );
        return;
      default:
        send('text/html', '<p>no such thing</p>', path === '/page.html' ? 200 : 404);
    }
  }

  #tileJson() {
    return {
      tilejson: '3.0.0',
      tiles: [`${this.origin}/vector/{z}/{x}/{y}.pbf`],
      maxzoom: 6,
      attribution: '<a href="https://example.org/vectors" onclick="alert(1)">Vector &amp; co</a>',
    };
  }
}

/** With an image named like one of the survey's own, and addresses relative to the style's. */
const sprite = { spot: { x: 0, y: 0, width: 8, height: 8, pixelRatio: 1 } };
const style = {
  version: 8,
  sprite: './sprite',
  glyphs: './glyphs/{fontstack}/{range}.pbf',
  sources: { open: { type: 'vector', url: './tiles.json' } },
  layers: [
    { id: 'page', type: 'background', paint: { 'background-color': '#123456' } },
    {
      id: 'land',
      type: 'fill',
      source: 'open',
      'source-layer': 'land',
      paint: { 'fill-color': `rgb(${colours.vector.slice(0, 3).join(',')})` },
    },
    {
      id: 'name',
      type: 'symbol',
      source: 'open',
      'source-layer': 'land',
      layout: { 'text-field': ['get', 'name'], 'text-font': ['Invented Sans'] },
    },
    { id: 'lost', type: 'fill', source: 'no such source', 'source-layer': 'land' },
  ],
};
