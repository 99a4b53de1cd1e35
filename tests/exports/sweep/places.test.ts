import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DOMParser } from '@xmldom/xmldom';
import { fromArrayBuffer } from 'geotiff';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { placeContours } from '../../../src/exports/sweep/place-contours';
import type { PlaceLists } from '../../../src/exports/sweep/place-lists';
import { placeRaster } from '../../../src/exports/sweep/place-raster';
import { placeTable } from '../../../src/exports/sweep/place-table';
import { placeWaypoints } from '../../../src/exports/sweep/place-waypoints';
import { siteFrame } from '../../../src/figures/sight/site-frame';
import { cellPosition, printedPosition, type Area } from '../../../src/sweep/area';

const area: Area = { frame: siteFrame([18, 50]), west: -500, south: -500, side: 1000, cell: 50, count: 20 };
// A round hill of minutes about the middle: 400 there, less by 1 a metre.
const values = Float64Array.from({ length: 400 }, (_, i) => {
  const [x, y] = [((i % 20) - 9.5) * 50, (Math.floor(i / 20) - 9.5) * 50];
  return Math.hypot(x, y) > 450 ? NaN : 400 - Math.hypot(x, y);
});
const corner = (x: number, y: number) => printedPosition(area.frame, x, y);
const lists: PlaceLists = {
  site: 'Tolverby & co',
  zone: 'Europe/Warsaw',
  // Half an hour after midnight in Warsaw.
  from: Date.UTC(2026, 5, 20, 22, 30),
  credits: ['Map data © OpenStreetMap contributors, under an open licence.', 'Heights: "Mapa" <wysokości>'],
  places: [
    {
      name: '=Mill <Lane>',
      sentence: 'south side; "good"\u0001',
      expectedMinutes: null,
      candidate: {
        position: [18.001, 50.002],
        ground: 'open',
        veryClose: false,
        way: 'Mill Lane',
        goodMinutes: 60,
        pathMinutes: 90,
        worth: 0.9,
        bestInstant: 0,
        focalLength: 200,
        lens: null,
        visibleShare: 1,
        hiddenBy: [],
        paths: [],
        side: null,
        nearestSpot: null,
        deck: null,
      },
    },
  ],
  area,
  layer: { name: 'Good minutes', unit: 'min', levels: [200] },
  values,
  corners: [corner(-500, 500), corner(500, 500), corner(500, -500), corner(-500, -500)],
};

test('[P40] the raster has each cell where it lies, rows from the north, and nothing as no data', async () => {
  const image = await (await fromArrayBuffer(await placeRaster(lists))).getImage();
  const [west = NaN, south = NaN, east = NaN, north = NaN] = image.getBoundingBox();
  const pixels = (await image.readRasters({ interleave: true })) as Float32Array;
  expect(image.getGeoKeys()?.['GeographicTypeGeoKey']).toBe(4326);
  expect(image.getGDALNoData()).toBe(-9999);
  let compared = 0;
  for (let i = 0; i < 400; i++) {
    const [lng, lat] = cellPosition(area, i);
    const column = Math.floor(((lng - west) / (east - west)) * 20);
    const row = Math.floor(((north - lat) / (north - south)) * 20);
    const want = Number.isNaN(values[i]) ? -9999 : (values[i] as number);
    if (Math.abs((pixels[row * 20 + column] as number) - want) < 1e-3) compared++;
  }
  // At the edges a cell of one grid may lie over two of the other.
  expect(compared).toBeGreaterThan(390);
});

test('[P41] contours run where the value is theirs, 200 m from the middle of the hill', async () => {
  const { features } = JSON.parse(await placeContours(lists)) as {
    features: { properties: { level: number }; geometry: { coordinates: [number, number][] } }[];
  };
  expect(features.map(({ properties }) => properties.level)).toEqual([200]);
  const metres = ([lng, lat]: [number, number]) =>
    Math.hypot((lng - 18) * 111_320 * Math.cos((50 * Math.PI) / 180), (lat - 50) * 111_229);
  const away = features[0]?.geometry.coordinates.map(metres) ?? [];
  expect(away.length).toBeGreaterThan(10);
  expect(Math.min(...away)).toBeGreaterThan(190);
  expect(Math.max(...away)).toBeLessThan(210);
});

const hasGdal =
  spawnSync('gdalinfo', ['--version']).status === 0 && spawnSync('ogrinfo', ['--version']).status === 0;

test.skipIf(!hasGdal)(
  '[P43] GDAL opens both: where the raster lies, and each line with its value (skipped without GDAL)',
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'sunside-places-'));
    try {
      const [tif, contours] = [join(folder, 'places.tif'), join(folder, 'places.geojson')];
      writeFileSync(tif, new Uint8Array(await placeRaster(lists)));
      writeFileSync(contours, await placeContours(lists));
      const told = (command: string, ...args: string[]) => {
        const { status, stdout } = spawnSync(command, args, { encoding: 'utf8' });
        expect(status).toBe(0);
        return stdout;
      };
      const raster = JSON.parse(told('gdalinfo', '-json', '-stats', tif)) as {
        driverShortName: string;
        coordinateSystem: { wkt: string };
        cornerCoordinates: { upperLeft: number[]; lowerRight: number[] };
        bands: { noDataValue: number; minimum: number; maximum: number }[];
        metadata: Record<string, Record<string, string>>;
      };
      expect(raster.driverShortName).toBe('GTiff');
      expect(raster.coordinateSystem.wkt).toContain('WGS 84');
      const [west, north] = corner(-500, 500);
      const [east, south] = corner(500, -500);
      const { upperLeft, lowerRight } = raster.cornerCoordinates;
      [west, north, east, south].forEach((degrees, i) =>
        expect([...upperLeft, ...lowerRight][i]).toBeCloseTo(degrees, 4),
      );
      // 35 m from the top of the hill lie the cells next to it; farther out than 450 m there is nothing.
      expect(raster.bands[0]).toMatchObject({ noDataValue: -9999 });
      expect(raster.bands[0]?.maximum).toBeCloseTo(400 - Math.hypot(25, 25), 2);
      expect(raster.bands[0]?.minimum).toBeGreaterThanOrEqual(-51);
      expect(raster.metadata['']?.['TIFFTAG_COPYRIGHT']).toBe(
        'Map data (c) OpenStreetMap contributors, under an open licence. Heights: "Mapa" <wysokosci>',
      );
      const waypoints = join(folder, 'places.gpx');
      writeFileSync(waypoints, placeWaypoints(lists));
      expect(told('ogrinfo', '-al', waypoints, 'waypoints')).toMatch(/name \(String\) = 1 =Mill <Lane>/);
      const lines = told('ogrinfo', '-al', contours);
      expect(lines).toMatch(/Geometry: Line String/);
      expect(lines).toMatch(/level \(\w+\) = 200/);
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
);

test('[S358] whatever is taken along says for which day it holds, by the clock of the field', async () => {
  const raster = await (await fromArrayBuffer(await placeRaster({ ...lists, site: 'Tölverby' }))).getImage();
  expect(await raster.fileDirectory.loadValue('ImageDescription')).toMatch(
    /^Tolverby: good minutes, min, 2026-06-21/,
  );
  expect(await placeContours(lists)).toContain('"date":"2026-06-21"');
  expect(placeTable(lists)).toContain(',2026-06-21,');
  expect(placeWaypoints(lists)).toContain('where to stand, 2026-06-21');
});

test('[S1020] whose maps and data stand behind it goes with all that is taken along', async () => {
  const text = lists.credits.join(' ');
  expect((JSON.parse(await placeContours(lists)) as { credits: string[] }).credits).toEqual(lists.credits);
  const { data } = Papa.parse<Record<string, string>>(placeTable(lists).replace('\ufeff', ''), {
    header: true,
  });
  expect(data[0]?.['Data from']).toBe(text);
  const xml = new DOMParser().parseFromString(placeWaypoints(lists), 'text/xml');
  expect(xml.getElementsByTagName('copyright')[0]?.getAttribute('author')).toBe(text);
  const none = { ...lists, credits: [] };
  expect(placeWaypoints(none)).not.toContain('copyright');
  const image = await (await fromArrayBuffer(await placeRaster(none))).getImage();
  expect(image.fileDirectory.hasTag('Copyright')).toBe(false);
});

test('[S1021] however long a name and the credits are, the raster has them whole, and its pixels', async () => {
  const long = {
    ...lists,
    site: 'Tolverby '.repeat(200),
    credits: ['© Invented atlas. '.repeat(300).trim()],
  };
  const [image, plain] = await Promise.all(
    [long, lists].map(async (each) => (await fromArrayBuffer(await placeRaster(each))).getImage()),
  );
  const credit = await image?.fileDirectory.loadValue('Copyright');
  expect(String(credit).replace('\0', '')).toBe('(c) Invented atlas. '.repeat(300).trim());
  expect(await image?.fileDirectory.loadValue('ImageDescription')).toMatch(
    /Tolverby : good minutes, min, 2026/,
  );
  expect(await image?.readRasters({ interleave: true })).toEqual(
    await plain?.readRasters({ interleave: true }),
  );
});

test('[P42] names stay text: no formula in the table, no mark-up in the waypoints', () => {
  const { data } = Papa.parse<string[]>(placeTable(lists).replace('\ufeff', '').trim());
  expect([data[1]?.[1], data[1]?.[2], data[1]?.[5], data[1]?.[6]]).toEqual([
    "'=Mill <Lane>",
    '18.001',
    '90',
    '60',
  ]);
  const xml = new DOMParser().parseFromString(placeWaypoints(lists), 'text/xml');
  const [point] = xml.getElementsByTagName('wpt');
  expect([point?.getAttribute('lat'), point?.getAttribute('lon')]).toEqual(['50.002', '18.001']);
  expect(point?.getElementsByTagName('name')[0]?.textContent).toBe('1 =Mill <Lane>');
  expect(point?.getElementsByTagName('desc')[0]?.textContent).toBe('south side; "good"');
});
