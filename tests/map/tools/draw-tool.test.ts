import { describe, expect, test } from 'vitest';
import type { Position } from '../../../src/survey/document';
import type { ElevationGrid } from '../../../src/figures/sight/terrain';
import { readContents } from '../../../src/survey/contents';
import { newSurvey } from '../../../src/survey/new-survey';
import type { Tool } from '../../../src/state/view.svelte';
import { workshop } from '../field';

const corners: readonly Position[] = [
  [6.99, 50.01],
  [7.004, 50.011],
  [7.003, 50.016],
];
const [first, second, third] = corners as [Position, Position, Position];

function drawing(tool: Tool) {
  const shop = workshop(newSurvey({ reference: [7, 50], elevation: 100 }));
  shop.view.hand.tool = tool;
  shop.tools.take(tool);
  const tap = (position: Position, right = 0) => {
    const pointer = shop.surface.at(position, right);
    if (shop.tools.down(pointer)) shop.tools.up(pointer);
    else shop.tools.tap(pointer);
  };
  const features = () => shop.document.survey.features;
  return { ...shop, tap, features, contents: () => readContents(shop.document.survey) };
}

/** 412 m above the sea within a tenth of a degree. */
const plateau: ElevationGrid = {
  ...{ columns: 5, rows: 5, west: 6.9, north: 50.1, stepLng: 0.05, stepLat: 0.05 },
  heights: new Float32Array(25).fill(412),
};

test('[F1350] a flight path that is drawn at a field without heights comes down to the terrain, not to the sea', () => {
  const drawn = (site: { elevation?: number }, terrain: ElevationGrid | null) => {
    const shop = workshop(newSurvey({ reference: [7, 50], elevation: null, ...site }), { terrain });
    shop.tools.take('flight-path');
    for (const corner of [...corners, third]) shop.tools.tap(shop.surface.at(corner));
    return readContents(shop.document.survey).flightPaths[0]?.heights;
  };
  const stated = drawn({ elevation: 412 }, null);
  expect(stated?.at(-1)).toBeCloseTo(412 + 15.24, 2);
  expect(drawn({}, plateau)).toEqual(stated);
  // What the survey states goes before the terrain.
  expect(drawn({ elevation: 100 }, plateau)?.at(-1)).toBeCloseTo(115.24, 2);
});

describe('drawing', () => {
  test('a runway by two clicks, named by its magnetic bearings', () => {
    const { tap, tools, surface, view, document, contents } = drawing('runway');
    tap([6.985, 50.004]);
    tools.hover(surface.at([7.0, 50.0]));
    expect(view.hand.drawing).toEqual([
      [6.985, 50.004],
      [7.0, 50.0],
    ]);
    tap([7.016, 49.997]);
    const [runway] = contents().runways;
    expect(runway?.line).toEqual([
      [6.985, 50.004],
      [7.016, 49.997],
    ]);
    // 109 degrees true; declination is about 3 degrees east there (WMM2025).
    expect(runway?.ends.map((e) => e.designator)).toEqual(['11', '29']);
    expect(runway?.name).toBe('11/29');
    expect(document.undoLabel).toBe('draw runway');
    expect([view.hand.tool, view.selection.id, view.hand.drawing]).toEqual(['select', 'new1', []]);
  });

  test('a runway by one drag', () => {
    const { dragTo, contents } = drawing('runway');
    expect(dragTo([6.985, 50.004], 1550, 560)).toBe(true);
    expect(contents().runways[0]?.line[0]).toEqual([6.985, 50.004]);
    expect(contents().runways[0]?.line[1]).toEqual([7.016, 49.997]);
  });

  test('two clicks in one place are no runway yet', () => {
    const { tap, features, view } = drawing('runway');
    tap([6.985, 50.004]);
    tap([6.985, 50.004]);
    expect(features()).toHaveLength(0);
    expect(view.hand.tool).toBe('runway');
    expect(view.notice).toMatch(/farther away/);
  });

  test('a standing spot by one click, with a name that is free and access unknown', () => {
    const { tap, view, tools, contents } = drawing('standing-spot');
    tap(first);
    view.hand.tool = 'standing-spot';
    tools.take('select');
    tools.take('standing-spot');
    tap(second);
    expect(contents().spots.map((s) => [s.name, s.access.status])).toEqual([
      ['Spot 1', 'unknown'],
      ['Spot 2', 'unknown'],
    ]);
    expect(contents().spots[1]?.position).toEqual(second);
  });

  test('a double click ends a line', () => {
    const { tap, contents, document } = drawing('taxi-route');
    tap(first);
    tap(second);
    tap(third);
    tap(third, 2);
    expect(contents().taxiRoutes[0]?.line).toEqual(corners);
    document.undo();
    expect(contents().taxiRoutes).toEqual([]);
    expect(document.undoLabel).toBeNull();
  });

  test('a hedge is a line with leaves that has a width of its own', () => {
    const { tap, key, contents, document } = drawing('hedge');
    tap(first);
    tap(second);
    key('Enter');
    expect(contents().obstacles[0]).toMatchObject({
      name: 'Hedge 1',
      sight: 'hedge',
      height: 2,
      underside: 0,
    });
    expect(document.undoLabel).toBe('draw hedge');
  });

  test('Enter closes an area', () => {
    const { tap, key, contents } = drawing('no-go');
    corners.forEach((c) => tap(c));
    expect(key('Enter')).toBe(true);
    expect(contents().noGoAreas[0]?.rings[0]).toHaveLength(4);
    expect(contents().noGoAreas[0]?.name).toBe('No-go area 1');
  });

  test('[U5] Enter sets the corners that are still needed in the middle of the map, then ends the drawing', () => {
    const { tap, key, surface, features, contents, view } = drawing('apron');
    tap(first);
    tap(second);
    surface.middle = third;
    key('Enter');
    expect(features()).toHaveLength(0);
    expect(view.hand.tool).toBe('apron');
    key('Enter');
    expect(contents().aprons[0]?.rings[0]).toEqual([...corners, first]);
  });

  test('[F160] a building is an area, a wall a line: both are obstacles with a height', () => {
    const closed = drawing('obstacle');
    corners.forEach((c) => closed.tap(c));
    closed.tap(first, 3);
    expect(closed.contents().obstacles[0]?.rings[0]).toHaveLength(4);
    expect(closed.contents().obstacles[0]).toMatchObject({ name: 'Building 1', height: 8, sight: 'solid' });
    const open = drawing('obstacle-line');
    corners.forEach((c) => open.tap(c));
    open.tap(third);
    expect(open.contents().obstacles[0]).toMatchObject({ rings: [], line: corners, height: 2.5 });
  });

  test('Escape abandons the drawing, and then the tool', () => {
    const { tap, key, features, view } = drawing('taxi-route');
    tap(first);
    tap(second);
    key('Escape');
    expect([view.hand.drawing, view.hand.tool]).toEqual([[], 'taxi-route']);
    expect(features()).toHaveLength(0);
    key('Escape');
    expect(view.hand.tool).toBe('select');
  });

  test('Backspace takes back the last corner', () => {
    const { tap, key, contents } = drawing('taxi-route');
    tap(first);
    tap([7.2, 50.2]);
    key('Backspace');
    tap(second);
    key('Enter');
    expect(contents().taxiRoutes[0]?.line).toEqual([first, second]);
  });

  test('by keyboard: Space sets a corner in the middle of the map', () => {
    const { key, surface, contents } = drawing('taxi-route');
    for (const corner of corners) {
      surface.middle = corner;
      expect(key(' ')).toBe(true);
    }
    key('Enter');
    expect(contents().taxiRoutes[0]?.line).toEqual(corners);
  });

  test('[U6] by keyboard a runway is two ends, the leg to the middle of the map shown as it is panned', () => {
    const { key, surface, tools, view, contents } = drawing('runway');
    surface.middle = [7.016, 49.997];
    key('Enter');
    // Twice without moving the map is one end.
    key(' ');
    surface.middle = [6.985, 50.004];
    tools.camera();
    expect(view.hand.drawing).toEqual([
      [7.016, 49.997],
      [6.985, 50.004],
    ]);
    key('Enter');
    const [runway] = contents().runways;
    expect(runway?.line[0]).toEqual([7.016, 49.997]);
    expect(runway?.ends.map((e) => e.designator)).toEqual(['29', '11']);
    // The lower number first, as the field calls it.
    expect(runway?.name).toBe('11/29');
  });

  test('[U6] a spot is one Enter', () => {
    const { key, surface, contents } = drawing('standing-spot');
    surface.middle = first;
    key('Enter');
    expect(contents().spots[0]?.position).toEqual(first);
  });

  test('arrow keys pan the map while drawing', () => {
    expect(drawing('apron').key('ArrowUp')).toBe(false);
  });

  test('another tool gives up what was begun; a double click zooms with the select tool only', () => {
    const { tap, tools, view, features, surface } = drawing('apron');
    expect(surface.zoomsOnDoubleClick).toBe(false);
    tap(first);
    tap(second);
    tools.take('select');
    expect(view.hand.drawing).toEqual([]);
    expect(features()).toHaveLength(0);
    expect(surface.zoomsOnDoubleClick).toBe(true);
  });
});
