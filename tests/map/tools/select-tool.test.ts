import { describe, expect, test } from 'vitest';
import { groundLine } from '../../../src/figures/geometry/earth';
import type { Position } from '../../../src/survey/document';
import { field, workshop } from '../field';

const bank: Position = [7.001, 49.996];

describe('selecting and dragging on the map', () => {
  test('a click selects and is no step', () => {
    const { tools, surface, view, document } = workshop();
    tools.down(surface.at(bank));
    tools.move(surface.at(bank, 2, 1));
    tools.up(surface.at(bank, 2, 1));
    expect(view.selection.id).toBe('bank');
    expect(document.undoLabel).toBeNull();
    expect(document.survey).toEqual(field);
  });

  test('a drag of many moves is one step; undo brings the spot back', () => {
    const { dragTo, view, document, shape } = workshop();
    expect(dragTo(bank, 100, -40)).toBe(true);
    expect(shape('bank')).toEqual({ type: 'Point', coordinates: [7.003, 49.9965] });
    expect(document.undoLabel).toBe('move standing spot');
    expect([view.selection.id, view.hand.dragging]).toEqual(['bank', null]);
    document.undo();
    expect(document.survey).toEqual(field);
    expect(document.undoLabel).toBeNull();
  });

  test('[U411] a finger takes a spot 12 pixels away once it rests there, and moves it by as much as it moves itself', () => {
    const { tools, surface, shape, view, document } = workshop();
    const from = surface.at(bank, 12, -9, 'touch');
    expect(tools.down(from)).toBe('if-held');
    expect(document.undoLabel).toBeNull();
    tools.held(from);
    // The figures at the finger say that it is held.
    expect([view.selection.id, view.hand.dragging]).toEqual(['bank', 'bank']);
    tools.move(surface.at(bank, 62, -9, 'touch'));
    tools.up(surface.at(bank, 62, -9, 'touch'));
    const [lng, lat] = shape('bank').coordinates as Position;
    expect(lng).toBeCloseTo(7.002, 6);
    expect(lat).toBeCloseTo(49.996, 6);
    expect(view.hand.dragging).toBeNull();
  });

  test('[U412] held and let go in one place, a spot is selected and nothing has moved; so with a tap', () => {
    const { tools, surface, view, document } = workshop();
    tools.held(surface.at(bank, 3, 0, 'touch'));
    tools.up(surface.at(bank, 3, 0, 'touch'));
    expect([view.selection.id, view.hand.dragging, document.undoLabel]).toEqual(['bank', null, null]);
    view.selection.select(null);
    tools.tap(surface.at(bank, 3, 0, 'touch'));
    expect([view.selection.id, document.undoLabel]).toEqual(['bank', null]);
  });

  test('[U415] a second finger gives up what was held, and what was selected before still is', () => {
    const { tools, surface, view, document } = workshop();
    view.selection.select('lane');
    tools.held(surface.at(bank, 0, 0, 'touch'));
    tools.move(surface.at(bank, 20, 30, 'touch'));
    expect(view.selection.id).toBe('bank');
    tools.cancel();
    expect([view.selection.id, view.hand.dragging]).toEqual(['lane', null]);
    expect(document.survey).toEqual(field);
  });

  test('[U413] the handle moves its spot, wherever it was taken hold of; a survey that cannot be changed has none', () => {
    const { tools, surface, shape, document } = workshop();
    tools.grab('bank', surface.at(bank, 4, 60, 'touch'));
    tools.move(surface.at(bank, 54, 60, 'touch'));
    tools.up(surface.at(bank, 54, 60, 'touch'));
    expect((shape('bank').coordinates as Position)[0]).toBeCloseTo(7.002, 6);
    expect(document.undoLabel).toBe('move standing spot');
    const still = workshop(field, { readOnly: true });
    expect(still.tools.down(still.surface.at(bank, 0, 0, 'touch'))).toBe(false);
    still.tools.grab('bank', still.surface.at(bank));
    still.tools.move(still.surface.at(bank, 50, 0));
    expect(still.document.survey).toEqual(field);
  });

  test('[U414] a selected area stays under a thumb that pans the map; its corners go with it', () => {
    const { tools, surface, view } = workshop();
    const corner: Position = [6.985, 49.9915];
    surface.put('no-go', corner, { id: 'marsh' });
    view.selection.select('marsh');
    expect(tools.down(surface.at(corner, 0, 0, 'touch'))).toBe('if-held');
    surface.put('vertex', corner, { part: 'vertex', id: 'marsh', ring: 0, index: 1 });
    expect(tools.down(surface.at(corner, 0, 0, 'touch'))).toBe(true);
  });

  test('a mouse does not take what is 12 pixels away', () => {
    const { tools, surface } = workshop();
    expect(tools.down(surface.at(bank, 12, -9))).toBe(false);
  });

  test('while it is dragged the spot says so, and Escape leaves no step', () => {
    const { tools, surface, view, document, key } = workshop();
    tools.down(surface.at(bank));
    tools.move(surface.at(bank, 30, 30));
    expect(view.hand.dragging).toBe('bank');
    expect(document.survey).not.toEqual(field);
    expect(key('Escape')).toBe(true);
    expect(document.survey).toEqual(field);
    expect(document.undoLabel).toBeNull();
    tools.move(surface.at(bank, 60, 60));
    tools.up(surface.at(bank, 60, 60));
    expect(document.survey).toEqual(field);
    expect(view.hand.dragging).toBeNull();
  });

  test('a pointer that the system takes away leaves no step', () => {
    const { tools, surface, document } = workshop();
    tools.down(surface.at(bank));
    tools.move(surface.at(bank, 30, 30));
    tools.cancel();
    expect(document.survey).toEqual(field);
    expect(document.undoLabel).toBeNull();
  });

  test('an undo in the middle of a drag is not overwritten', () => {
    const { tools, surface, document } = workshop();
    tools.down(surface.at(bank));
    tools.move(surface.at(bank, 30, 30));
    document.undo();
    tools.move(surface.at(bank, 60, 60));
    tools.up(surface.at(bank, 60, 60));
    expect(document.survey).toEqual(field);
  });

  test('a large feature moves only once it is selected, and keeps its size', () => {
    const { tools, surface, dragTo, view, document, shape } = workshop();
    const corner: Position = [6.985, 49.9915];
    surface.put('no-go', corner, { id: 'marsh' });
    expect(dragTo(corner, 80, 0)).toBe(false);
    expect(document.undoLabel).toBeNull();
    tools.tap(surface.at(corner));
    expect(view.selection.id).toBe('marsh');
    const sides = () => {
      const ring = (shape('marsh').coordinates as Position[][])[0] ?? [];
      return ring.slice(1).map((p, i) => groundLine(ring[i] as Position, p).distance);
    };
    const before = sides();
    expect(dragTo(corner, 80, -800)).toBe(true);
    sides().forEach((side, i) => expect(side).toBeCloseTo(before[i] as number, 0));
    expect((shape('marsh').coordinates as Position[][])[0]?.[0]?.[1]).toBeCloseTo(50, 6);
    expect(document.undoLabel).toBe('move no-go area');
  });

  test('a vertex moves alone; a click on it selects it', () => {
    const { tools, surface, dragTo, view, document, shape } = workshop();
    view.selection.select('fence');
    const vertex: Position = [7.0, 49.9965];
    surface.put('vertex', vertex, { part: 'vertex', id: 'fence', ring: 0, index: 1 });
    tools.down(surface.at(vertex));
    tools.up(surface.at(vertex));
    expect(view.selection.vertex).toEqual({ ring: 0, index: 1 });
    dragTo(vertex, 50, 80);
    expect(shape('fence').coordinates).toEqual([
      [6.99, 49.9985],
      [7.001, 49.9955],
      [7.01, 49.9945],
    ]);
    expect(document.undoLabel).toBe('move corner of obstacle');
  });

  test('a midpoint that is dragged becomes a corner, in one step; clicked it is nothing', () => {
    const { tools, surface, dragTo, view, document, shape } = workshop();
    view.selection.select('fence');
    const middle: Position = [6.995, 49.9975];
    surface.put('midpoint', middle, { part: 'midpoint', id: 'fence', ring: 0, index: 1 });
    tools.down(surface.at(middle));
    tools.up(surface.at(middle));
    expect([document.undoLabel, view.selection.vertex]).toEqual([null, null]);
    dragTo(middle, 0, 40);
    expect(shape('fence').coordinates).toHaveLength(4);
    expect((shape('fence').coordinates as Position[])[1]).toEqual([6.995, 49.997]);
    expect(view.selection.vertex).toEqual({ ring: 0, index: 1 });
    document.undo();
    expect(document.survey).toEqual(field);
  });

  test('a click on the bare ground selects nothing', () => {
    const { tools, surface, view } = workshop();
    view.selection.select('bank');
    tools.tap(surface.at([7.03, 50.02]));
    expect(view.selection.id).toBeNull();
  });

  test('a survey that may only be looked at: spots can be selected, not moved', () => {
    const { tools, surface, dragTo, view, document, key } = workshop(field, { readOnly: true });
    expect(dragTo(bank, 100, -40)).toBe(false);
    tools.tap(surface.at(bank));
    expect(view.selection.id).toBe('bank');
    expect([key('ArrowUp'), key('Delete')]).toEqual([false, false]);
    expect(document.survey).toEqual(field);
  });
});

describe('looking at a point of a path', () => {
  const path = 'rw/10/arrival';
  const place: Position = [6.9677, 50.0079];
  const withPath = () => {
    const shop = workshop();
    shop.surface.put('path', place, { path });
    shop.surface.put('path', [6.9513, 50.0116], { path });
    return shop;
  };

  test('the mouse inspects what it is over and forgets it when it moves on', () => {
    const { tools, surface, view } = withPath();
    view.selection.select('bank');
    tools.hover(surface.at(place));
    expect(view.selection.inspected?.path).toBe(path);
    // 180 m displaced threshold: the station counts from there, 1.3 km west of the pavement end.
    expect(view.selection.inspected?.station).toBeGreaterThan(1440);
    expect(view.selection.inspected?.station).toBeLessThan(1540);
    expect((view.selection.inspected?.station ?? 1) % 20).toBe(0);
    tools.hover(surface.at([7.05, 50.05]));
    expect(view.selection.inspected).toBeNull();
  });

  test('a click keeps it until another click', () => {
    const { tools, surface, view } = withPath();
    view.selection.select('bank');
    tools.tap(surface.at(place));
    const pinned = view.selection.inspected;
    tools.hover(surface.at([6.9513, 50.0116]));
    tools.hover(surface.at([7.05, 50.05]));
    expect(view.selection.inspected).toBe(pinned);
    expect(view.selection.id).toBe('bank');
    tools.tap(surface.at([7.05, 50.05]));
    expect(view.selection.inspected).toBeNull();
  });

  test('what a panel chose stays when the mouse moves over bare ground', () => {
    const { tools, surface, view } = withPath();
    view.selection.select('bank');
    tools.hover(surface.at([7.05, 50.05]));
    view.selection.inspected = { path, station: 300 };
    tools.hover(surface.at([7.051, 50.05]));
    expect(view.selection.inspected).toEqual({ path, station: 300 });
  });

  test('without a selected spot a path is not in the way of the runway under it', () => {
    const { tools, surface, view } = withPath();
    surface.put('runway', place, { id: 'rw' });
    tools.tap(surface.at(place));
    expect([view.selection.id, view.selection.inspected]).toEqual(['rw', null]);
  });
});

describe('keys on what is selected', () => {
  test('Delete takes the feature away', () => {
    const { view, document, key } = workshop();
    view.selection.select('lane');
    expect(key('Delete')).toBe(true);
    expect(document.survey.features.map((f) => f.id)).not.toContain('lane');
    expect([document.undoLabel, view.selection.id]).toEqual(['delete standing spot', null]);
  });

  test('Delete takes a corner when one is selected', () => {
    const { view, document, key, shape } = workshop();
    view.selection.select('fence');
    view.selection.vertex = { ring: 0, index: 1 };
    key('Backspace');
    expect(shape('fence').coordinates).toEqual([
      [6.99, 49.9985],
      [7.01, 49.9945],
    ]);
    expect([document.undoLabel, view.selection.vertex]).toEqual(['delete corner of obstacle', null]);
  });

  test.each([
    ['rw', /two ends/],
    ['alpha', /No corner can be spared/],
  ])('a corner of %s that must stay says why', (id, reason) => {
    const { view, document, key } = workshop();
    view.selection.select(id);
    view.selection.vertex = { ring: 0, index: 1 };
    expect(key('Delete')).toBe(true);
    expect(view.notice).toMatch(reason);
    expect(document.survey).toEqual(field);
  });

  test('Escape lets go of the corner first, then of the feature', () => {
    const { view, key } = workshop();
    view.selection.select('fence');
    view.selection.vertex = { ring: 0, index: 2 };
    key('Escape');
    expect([view.selection.id, view.selection.vertex]).toEqual(['fence', null]);
    key('Escape');
    expect(view.selection.id).toBeNull();
    expect(key('Escape')).toBe(false);
  });

  test('[U13] ] and [ choose corners in turn, for the arrow keys to move', () => {
    const { view, key, shape } = workshop();
    view.selection.select('marsh');
    expect(key(']')).toBe(true);
    expect(view.selection.vertex).toEqual({ ring: 0, index: 0 });
    key('[');
    expect(view.selection.vertex).toEqual({ ring: 0, index: 2 });
    const before = shape('marsh').coordinates;
    key('ArrowUp');
    expect(shape('marsh').coordinates).not.toEqual(before);
    view.selection.select('lane');
    expect(key(']')).toBe(false);
  });
});
