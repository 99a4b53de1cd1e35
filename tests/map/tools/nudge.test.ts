import { describe, expect, test } from 'vitest';
import { frameAt, mapped } from '../../../src/figures/geometry/earth';
import type { Position } from '../../../src/survey/document';
import { field, workshop } from '../field';

const bank: Position = [7.001, 49.996];
const moved = (from: Position, to: Position) =>
  mapped(frameAt(from), to).map((m) => Math.round(m * 100) / 100 + 0);

describe('arrow keys', () => {
  test.each([
    ['ArrowUp', {}, [0, 1]],
    ['ArrowRight', { shift: true }, [10, 0]],
    ['ArrowDown', { alt: true }, [0, -0.1]],
    ['ArrowLeft', {}, [-1, 0]],
  ] as const)('%s %j moves the selected spot by %j m', (name, with_, metres) => {
    const { view, key, shape } = workshop();
    view.selection.select('bank');
    expect(key(name, with_)).toBe(true);
    const [east, north] = moved(bank, shape('bank').coordinates as Position);
    // Coordinates are kept to 7 decimals, about a centimetre.
    expect(east).toBeCloseTo(metres[0], 1);
    expect(north).toBeCloseTo(metres[1], 1);
  });

  test('a series is one step', () => {
    const { view, document, key } = workshop();
    view.selection.select('bank');
    for (let i = 0; i < 5; i++) key('ArrowUp', { at: i * 400 });
    key('ArrowRight', { at: 2100 });
    expect(document.undoLabel).toBe('move standing spot');
    document.undo();
    expect(document.survey).toEqual(field);
  });

  test('after a pause, an undo or another selection a new step begins', () => {
    const { view, document, key } = workshop();
    view.selection.select('bank');
    key('ArrowUp', { at: 0 });
    key('ArrowUp', { at: 5000 });
    view.selection.select('lane');
    key('ArrowUp', { at: 5100 });
    document.undo();
    key('ArrowUp', { at: 5200 });
    let steps = 0;
    for (; document.undoLabel !== null; steps++) document.undo();
    expect(steps).toBe(3);
    expect(document.survey).toEqual(field);
  });

  test('a selected corner moves alone, a selected area as a whole', () => {
    const { view, key, shape } = workshop();
    view.selection.select('rw');
    view.selection.vertex = { ring: 0, index: 1 };
    key('ArrowUp', { shift: true });
    const [first, second] = shape('rw').coordinates as Position[];
    expect(first).toEqual([6.985, 50.004]);
    expect(moved([7.016, 49.997], second as Position)).toEqual([0, 10]);
    view.selection.select('stand');
    key('ArrowLeft', { shift: true });
    const ring = (shape('stand').coordinates as Position[][])[0] ?? [];
    expect(ring[0]).toEqual(ring[ring.length - 1]);
    expect(moved([7.006, 50.006], ring[2] as Position)).toEqual([-10, 0]);
  });

  test('without a selection they are left to the map', () => {
    const { key } = workshop();
    expect(key('ArrowUp')).toBe(false);
  });
});
