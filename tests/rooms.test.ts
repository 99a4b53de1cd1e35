import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const src = resolve(import.meta.dirname, '../src');

/** Which rooms each room may import, besides itself. The composition roots may import every room. */
const arrows: Record<string, readonly string[]> = {
  survey: [],
  units: [],
  time: [],
  figures: ['survey', 'time'],
  imports: ['survey', 'units', 'time', 'figures'],
  merging: ['survey', 'figures'],
  exports: ['survey', 'figures', 'units', 'time', 'sweep'],
  storage: [],
  state: ['survey', 'figures', 'storage', 'sweep'],
  map: ['state', 'figures', 'survey', 'units'],
  ports: ['state', 'survey', 'figures', 'exports', 'imports', 'units', 'sweep'],
  keeping: ['survey', 'state', 'storage', 'units', 'ports'],
  services: [
    'merging',
    'ports',
    'survey',
    'figures',
    'units',
    'time',
    'imports',
    'exports',
    'storage',
    'state',
    'map',
    'keeping',
    'sweep',
  ],
  app: [
    'ports',
    'survey',
    'figures',
    'units',
    'time',
    'imports',
    'exports',
    'storage',
    'state',
    'map',
    'keeping',
    'services',
    'ui',
    'sweep',
  ],
  ui: ['ports', 'state', 'survey', 'figures', 'exports', 'units', 'time', 'map', 'viewfinder', 'sweep'],
  viewfinder: ['figures', 'survey'],
  sweep: ['survey', 'figures', 'time'],
  cli: ['survey', 'figures', 'time', 'imports', 'units', 'sweep', 'merging'],
};
/** The only part of `to` that the room `from` may import. */
const onlyPart: Record<string, string> = {
  'imports figures': 'figures/geometry/',
  'merging figures': 'figures/geometry/',
};
/** The only file or folder of `from` that may import the room `to`. */
const onlyThrough: Record<string, string> = {
  'ui map': 'ui/map/',
  'ui viewfinder': 'ui/viewfinder/Canvases.svelte',
};
/** Packages that one room alone may import. */
const fencedRooms: Record<string, string> = { three: 'viewfinder', idb: 'storage' };
/** Packages that one file alone may import; the sun and the moon are two. */
const fenced: Record<string, string | readonly string[]> = {
  suncalc: ['figures/light/sun.ts', 'figures/light/moon.ts'],
  'maplibre-gl': 'map/map-view.ts',
  geomagnetism: 'figures/geometry/magnetic.ts',
  'metar-taf-parser': 'figures/traffic/wind/weather-report.ts',
  'temporal-polyfill': 'time/local-time.ts',
  'browser-fs-access': 'storage/files.ts',
  fflate: 'storage/archive.ts',
  pmtiles: 'map/base/archive.ts',
  flatbush: 'figures/sight/surroundings.ts',
  uqr: 'exports/pass-on/qr-code.ts',
  'ngraph.graph': 'figures/plan/way-network.ts',
  'ngraph.path': 'figures/plan/way-network.ts',
  sax: 'imports/osm/osm-xml.ts',
  '@xmldom/xmldom': 'imports/tracks/track-xml.ts',
  'd3-contour': 'sweep/reach-lines.ts',
  '@tmcw/togeojson': 'imports/tracks/track-xml.ts',
};

interface Import {
  readonly file: string;
  readonly target: string;
  readonly typesOnly: boolean;
}

const imports: Import[] = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.(ts|svelte)$/.test(file) && !file.endsWith('.d.ts'))
  .flatMap((file) =>
    [
      ...readFileSync(join(src, file), 'utf8').matchAll(
        /(import type\s[^;']*?)?\b(?:from|import)\s*\(?\s*'([^'\s]+)'/g,
      ),
    ].map((match) => ({ file, target: match[2] ?? '', typesOnly: match[1] !== undefined })),
  );

/** "temporal-polyfill/fns/Instant" -> "temporal-polyfill": a package's parts are fenced with it. */
const packageOf = (target: string) =>
  target
    .split('/')
    .slice(0, target.startsWith('@') ? 2 : 1)
    .join('/');

const roomOf = (path: string) => (path.includes('/') ? (path.split('/')[0] ?? '') : '');

describe('[A1] rooms import along the arrows only', () => {
  it('finds the import lines', () => {
    expect(imports.length).toBeGreaterThan(150);
  });

  it('crosses no other border', () => {
    const wrong = imports
      .filter(({ target }) => target.startsWith('.'))
      .map(({ file, target }) => ({ file, to: relative(src, resolve(src, dirname(file), target)) }))
      .filter(({ file, to }) => {
        const from = roomOf(file);
        const room = roomOf(to);
        if (from === '' || to.startsWith('..') || room === from) return false;
        if (!(arrows[from] ?? []).includes(room)) return true;
        const part = onlyPart[`${from} ${room}`];
        if (part !== undefined && !to.startsWith(part)) return true;
        const door = onlyThrough[`${from} ${room}`];
        return door !== undefined && !file.startsWith(door);
      })
      .map(({ file, to }) => `${file} -> ${to}`);
    expect(wrong).toEqual([]);
  });

  it('lets panels show figures but not compute them: ui imports types of figures and of the sweep only', () => {
    const wrong = imports.filter(
      ({ file, target, typesOnly }) =>
        file.startsWith('ui/') && /\/(figures|sweep)\//.test(target) && !typesOnly,
    );
    expect(wrong).toEqual([]);
  });

  it('keeps the ports free of code: they import types and export types', () => {
    const code = imports.filter(({ file, typesOnly }) => file.startsWith('ports/') && !typesOnly);
    expect(code).toEqual([]);
  });

  it('keeps each third-party convention behind its one file', () => {
    const wrong = imports
      .filter(
        ({ file, target }) =>
          fenced[packageOf(target)] !== undefined && ![fenced[packageOf(target)]].flat().includes(file),
      )
      .map(({ file, target }) => `${file} -> ${target}`);
    expect(wrong).toEqual([]);
  });

  it('keeps a heavy package in the room that is made for it', () => {
    const wrong = imports
      .filter(
        ({ file, target }) =>
          fencedRooms[packageOf(target)] !== undefined && fencedRooms[packageOf(target)] !== roomOf(file),
      )
      .map(({ file, target }) => `${file} -> ${target}`);
    expect(wrong).toEqual([]);
  });
});
