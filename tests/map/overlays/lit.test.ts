import { describe, expect, test } from 'vitest';
import { alongRunway } from '../../../src/figures/geometry/along-runway';
import { litStrips } from '../../../src/map/overlays/lit';
import { metresPerPixel } from '../../../src/map/screen';
import { readContents } from '../../../src/survey/contents';
import type { Position } from '../../../src/survey/document';
import type { Runway } from '../../../src/survey/schema/runway';
import { field } from '../field';

const [runway] = readContents(field).runways as readonly [Runway];
const back: Runway = { ...runway, line: [runway.line[1], runway.line[0]] };

const offsets = (strips: ReturnType<typeof litStrips>, of: Runway = runway) =>
  strips
    .filter((f) => f.properties['part'] === 'strip')
    .map((f) => alongRunway(of, (f.geometry.coordinates as readonly Position[])[0] as Position)?.offset ?? 0);
const labels = (strips: ReturnType<typeof litStrips>) =>
  strips.filter((f) => f.properties['part'] === 'strip-label').map((f) => f.properties['text']);

describe('the lit side', () => {
  test('A lies nearer than B, both on the side that is named: south is right of a runway to the east', () => {
    const strips = litStrips(runway, 'south', 'south', '07:30', '19:15', 14);
    const [a, b] = offsets(strips);
    const pixel = metresPerPixel(50, 14);
    expect(a).toBeCloseTo(22.5 + 9 * pixel, 0);
    expect(b).toBeCloseTo(22.5 + 17 * pixel, 0);
    expect(labels(strips)).toEqual(['lit at A 07:30, B 19:15']);
  });

  test('the same runway drawn the other way is lit on the same side', () => {
    const [a] = offsets(litStrips(back, 'south', null, '07:30', '19:15', 14), back);
    expect(a).toBeLessThan(-22.5);
  });

  test('different sides have a strip and a label each', () => {
    const strips = litStrips(runway, 'north', 'south', '07:30', '19:15', 14);
    const [a, b] = offsets(strips);
    expect(Math.sign(a ?? 0)).toBe(-1);
    expect(Math.sign(b ?? 0)).toBe(1);
    expect(labels(strips)).toEqual(['lit at A 07:30', 'lit at B 19:15']);
  });

  test.each([runway, back])('the label is never upside down', (drawn) => {
    const [label] = litStrips(drawn, 'south', null, '07:30', '19:15', 14).filter(
      (f) => f.properties['part'] === 'strip-label',
    );
    const turn = ((label?.properties['turn'] as number) + 360) % 360;
    expect(turn <= 90 || turn >= 270).toBe(true);
  });

  test('no side is lit: nothing is drawn', () => {
    expect(litStrips(runway, null, null, '07:30', '19:15', 14)).toEqual([]);
  });
});
