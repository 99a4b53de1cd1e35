import { describe, expect, test } from 'vitest';
import { evOfLux, sceneExposure } from '../../src/figures/optics/exposure';
import { parseExposure } from '../../src/units/typed-exposure';

describe('light that is typed', () => {
  test.each([
    ['EV 3', { ok: true, ev100: 3 }],
    ['3.5 ev', { ok: true, ev100: 3.5 }],
    ['-2', { ok: true, ev100: -2 }],
    ['20 lux', { ok: true, lux: 20 }],
    ['20lx', { ok: true, lux: 20 }],
  ])('[F1050] %s', (text, reading) => expect(parseExposure(text)).toEqual(reading));

  test.each(['', 'bright', 'EV 3 lux', '40', '0 lux'])('[F1051] %j is refused with the mend', (text) => {
    const read = parseExposure(text);
    expect(read.ok ? '' : read.reason).toMatch(/Type/);
  });

  test('[F1052] 2.5 lux are EV 0, 20 lux EV 3, a sunny 81,920 lux EV 15 (ISO 2720, C = 250)', () => {
    expect(evOfLux(2.5)).toBeCloseTo(0, 9);
    expect(evOfLux(20)).toBeCloseTo(3, 9);
    expect(evOfLux(81_920)).toBeCloseTo(15, 9);
  });

  test('[F1053] it goes before sun, sky and the side of the light', () => {
    expect(sceneExposure(40, 'back-lit', 'heavy', 3).ev100).toBe(3);
    expect(sceneExposure(40, 'front-lit', 'clear', null).ev100).toBe(15);
  });
});
