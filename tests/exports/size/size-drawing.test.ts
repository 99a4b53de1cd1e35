import { describe, expect, it } from 'vitest';
import { markupText } from '../../../src/exports/sheet/markup';
import { sizeDrawing } from '../../../src/exports/size/size-drawing';

const jet = { length: 60, span: 52, propulsion: 'jet', tailSpan: null } as const;
const light = { length: 8, span: 11, propulsion: 'propeller', tailSpan: 3.4 } as const;
const heli = { length: 13, span: 10, propulsion: 'rotor', tailSpan: null } as const;

/** How wide and how tall a path is, by all its points. */
function extent(svg: string, name: string): readonly [width: number, height: number] {
  const d = new RegExp(`class="${name}" d="([^"]+)"`).exec(svg)?.[1] ?? '';
  const points = [...d.replace(/A[\d.]+ [\d.]+ 0 1 0 /g, 'L').matchAll(/(-?[\d.]+) (-?[\d.]+)/g)];
  const [xs, ys] = [points.map((m) => Number(m[1])), points.map((m) => Number(m[2]))];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

describe('two aircraft at one scale', () => {
  it.each([
    [jet, light],
    [light, jet],
    [heli, jet],
  ])('[E120] length and span are true for both', (one, known) => {
    const svg = markupText(sizeDrawing(one, known, 'x'));
    for (const [name, { span, length }] of [
      ['one', one],
      ['known', known],
    ] as const) {
      const [wide, tall] = extent(svg, name);
      expect(wide).toBeCloseTo(span, 1);
      expect(tall).toBeCloseTo(length, 1);
    }
  });

  it('[E121] neither touches the other nor the edge', () => {
    const svg = markupText(sizeDrawing(jet, light, 'x'));
    const [, wide] = /viewBox="0 0 ([\d.]+) /.exec(svg) ?? [];
    expect(Number(wide)).toBeCloseTo(52 + 11 + 18, 1);
  });
});
