import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { markupText } from '../../../src/exports/sheet/markup';
import { sheetMap } from '../../../src/exports/sheet/sheet-map';
import { groundLine } from '../../../src/figures/geometry/earth';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { readContents, type Contents } from '../../../src/survey/contents';
import { opened, spotFeature, contentsOf } from '../../support/contents';

const contents = readContents(opened(readFileSync('sample-sites/tolverby.geojson', 'utf8')));
function drawn(of: Contents, planned: readonly string[] = [], on?: 'phone') {
  const paths = pathsOf(
    of,
    (kind, runway, end) => kind === 'arrival' && runway === 'r8k2v4' && end === 1,
    null,
  );
  const looks = of.spots
    .filter(({ id }) => planned.includes(id))
    .map((spot) => ({ spot, at: of.site.reference }));
  return markupText(
    sheetMap({
      contents: of,
      paths,
      looks,
      spotName: ({ name }) => name,
      length: (m) => `${m} m`,
      title: 'Map',
      ...(on && { on }),
    }),
  );
}
const circles = (svg: string) =>
  [...svg.matchAll(/<circle cx="([-\d.]+)" cy="([-\d.]+)"/g)].map(
    (m) => [Number(m[1]), Number(m[2])] as const,
  );

describe('the map of a sheet', () => {
  const svg = drawn(contents, ['s5x9ht']);

  it('[E105] is vectors alone, in black and greys, with every spot, both runways and their ends, north and a scale', () => {
    expect(svg).not.toMatch(/<image|url\(|href/);
    const colours = new Set([...svg.matchAll(/#[0-9a-f]{3,6}/g)].map(([c]) => c));
    for (const colour of colours) expect(colour).toMatch(/^#(.)\1\1$|^#(..)\2\2$/);
    for (const text of ['07', '25', '14', '32', 'Orchard Path, east end', 'Beacon Path seat', 'N', '500 m'])
      expect(svg).toContain(`>${text}</text>`);
    expect(circles(svg)).toHaveLength(5);
    // The planned one is full, the others open.
    expect(svg.match(/r="15" fill="#000"/g)).toHaveLength(1);
  });

  it('[B1065] on a phone it is less than half as wide, so that letters of the same size can be read; all is within', () => {
    const phone = drawn(contents, ['s5x9ht'], 'phone');
    const [, width = 0, height = 0] = (/viewBox="0 0 (\d+) (\d+)"/.exec(phone) ?? []).map(Number);
    expect(width).toBeLessThan(1860 / 2);
    expect(height).toBeLessThan(width * 1.2);
    for (const text of ['07', '25', '14', '32', 'Orchard Path, east end', 'N'])
      expect(phone).toContain(`>${text}</text>`);
    const spots = circles(phone);
    expect(spots).toHaveLength(5);
    for (const [x, y] of spots) {
      expect(x).toBeGreaterThan(20);
      expect(x).toBeLessThan(width - 20);
      expect(y).toBeGreaterThan(20);
      expect(y).toBeLessThan(height - 20);
    }
  });

  it('[E107] north goes to the other corner where a runway ends under it', () => {
    const at = (lng: number, lat: number): readonly [number, number] => [lng, lat];
    const strip = (a: readonly [number, number], b: readonly [number, number]) =>
      contentsOf([
        {
          type: 'Feature',
          id: 'r',
          properties: { kind: 'runway', ends: [{ designator: '05' }, { designator: '23' }] },
          geometry: { type: 'LineString', coordinates: [a, b] },
        },
      ]);
    const northOf = (of: Contents) => Number(/class="north"><rect x="([\d.]+)"/.exec(drawn(of))?.[1]);
    const up = northOf(strip(at(18.15, 50.93), at(18.19, 50.94)));
    const down = northOf(strip(at(18.15, 50.94), at(18.19, 50.93)));
    expect(up).toBeLessThan(100);
    expect(down).toBeGreaterThan(1000);
  });

  it('[E106] is true to scale and north up: distances on paper are those on the ground', () => {
    const [bar] = [...svg.matchAll(/d="M([\d.]+) [\d.]+V[\d.]+H([\d.]+)V/g)];
    const metresPerUnit = 500 / (Number(bar?.[2]) - Number(bar?.[1]));
    const at = circles(svg);
    const spots = contents.spots;
    for (const [i, j] of [
      [0, 1],
      [1, 3],
      [2, 4],
    ] as const) {
      const [a, b] = [at[i], at[j]];
      const [p, q] = [spots[i]?.position, spots[j]?.position];
      if (!a || !b || !p || !q) throw new Error('expected spots');
      const { distance, azimuth } = groundLine(p, q);
      expect(Math.hypot(b[0] - a[0], b[1] - a[1]) * metresPerUnit).toBeCloseTo(distance, -1);
      const onPaper = (Math.atan2(b[0] - a[0], a[1] - b[1]) * 180) / Math.PI;
      expect(Math.cos(((onPaper - (azimuth ?? 0)) * Math.PI) / 180)).toBeGreaterThan(0.9999);
    }
  });

  it('[E107] keeps typed names text, and a survey without runways or with one spot is a map as well', () => {
    const odd = contentsOf([spotFeature('one', [18.17, 50.93], { name: '<b>&"' })], {
      site: { reference: [18.17, 50.93] },
    });
    expect(drawn(odd, ['one'])).toContain('>&lt;b&gt;&amp;&quot;</text>');
    expect(drawn(contentsOf([]))).toMatch(/^<svg.*<\/svg>$/s);
    expect(drawn(contentsOf([]))).not.toContain('NaN');
  });
});
