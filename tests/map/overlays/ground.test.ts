import { describe, expect, test } from 'vitest';
import { groundLine } from '../../../src/figures/geometry/earth';
import { mapLayers } from '../../../src/map/layers';
import type { OverlayFeature } from '../../../src/map/overlays/features';
import { groundLists, groundOverlay } from '../../../src/map/overlays/ground';
import { readContents } from '../../../src/survey/contents';
import type { Position } from '../../../src/survey/document';
import { field } from '../field';

const contents = readContents(field);
const { features } = groundOverlay(groundLists(contents));
const of = (part: string): OverlayFeature[] => features.filter((f) => f.properties['part'] === part);
const line = (feature: OverlayFeature | undefined) => feature?.geometry.coordinates as readonly Position[];
const apart = (a: Position | undefined, b: Position | undefined) =>
  groundLine(a as Position, b as Position).distance;

describe('the ground', () => {
  test('a runway is as wide and as long as it is', () => {
    const [ring] = of('runway')[0]?.geometry.coordinates as readonly (readonly Position[])[];
    expect(apart(ring?.[1], ring?.[2])).toBeCloseTo(45, 2);
    const [start, end] = contents.runways[0]?.line ?? [];
    expect(apart(ring?.[0], ring?.[1])).toBeCloseTo(apart(start, end), 1);
    expect(apart(ring?.[0], start)).toBeCloseTo(22.5, 2);
  });

  test('[M310] its designators stand beyond its ends, upright on the screen: a 20 is never read as 02, nor a 16 as 91', () => {
    const [first, second] = of('designator');
    expect([first?.properties['text'], second?.properties['text']]).toEqual(['10', '28']);
    expect(first?.geometry.coordinates).toEqual([6.985, 50.004]);
    // This runway runs east-south-east: its numbers go on to the west and to the east.
    expect(first?.properties['anchor']).toBe('right');
    expect(second?.properties['anchor']).toBe('left');
    const turned = mapLayers.filter(({ id }) => /^(designator|numeral)/.test(id));
    expect(turned).toHaveLength(4);
    for (const { layout } of turned) expect(layout).not.toHaveProperty('text-rotate');
  });

  test('[M318] a designator gives way to a spot that stands there: straight on before aside, and it is always there', () => {
    for (const { id, layout } of mapLayers.filter((l) => l.id.startsWith('designator'))) {
      const branches = layout?.['text-variable-anchor-offset'] as unknown[];
      const [, held] = branches[branches.indexOf('right') + 1] as [string, unknown[]];
      // Held by its right side it lies to the left, to the west of a western end.
      expect(held.slice(0, 2), id).toEqual(['right', [-0.4, 0]]);
      expect(held.filter((part) => typeof part === 'string').sort(), id).toEqual([
        'bottom',
        'bottom-right',
        'right',
        'top',
        'top-right',
      ]);
      expect(layout?.['text-allow-overlap'], id).toBe(true);
    }
  });

  test('the displaced threshold lies 180 m in, with arrows before it; the other end has none', () => {
    const [first, second] = of('threshold').map(line);
    expect(apart(first?.[0], [6.985, 50.004])).toBeCloseTo(Math.hypot(182, 22.5), 0);
    expect(apart(second?.[0], [7.016, 49.997])).toBeCloseTo(Math.hypot(2, 22.5), 0);
    const arrows = of('lead-in').map(line);
    expect(arrows.length).toBe(6);
    for (const arrow of arrows) for (const p of arrow) expect(apart(p, [6.985, 50.004])).toBeLessThan(180);
  });

  test('everything that can be picked carries the id of its feature', () => {
    for (const part of ['runway', 'runway-line', 'apron', 'taxi-route', 'obstacle-line', 'no-go'])
      expect(of(part)[0]?.properties['id'], part).toMatch(/^(rw|stand|alpha|fence|marsh)$/);
    expect(of('obstacle-line')[0]?.properties['label']).toBe('2 m high');
  });

  test('[X19] a name that runs from right to left turns none of the words and figures behind it', () => {
    const named = (name: string) => {
      const obstacles = contents.obstacles.map((obstacle) => ({ ...obstacle, name, height: 12 }));
      const labels = groundOverlay(groundLists({ ...contents, obstacles })).features.map(
        (f) => f.properties['label'],
      );
      return labels.filter((label) => String(label).endsWith('high'))[0];
    };
    expect(named('\u05d1\u05d9\u05ea 7')).toBe('\u2068\u05d1\u05d9\u05ea 7\u2069, 12 m high');
    expect(named('\u0645\u0628\u0646\u0649')).toBe('\u2068\u0645\u0628\u0646\u0649\u2069, 12 m high');
    expect(named('Hangar 7')).toBe('Hangar 7, 12 m high');
  });
});
