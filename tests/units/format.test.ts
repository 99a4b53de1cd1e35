import { describe, expect, it } from 'vitest';
import {
  bearing,
  decimal,
  degrees,
  factor,
  feet,
  finely,
  focal,
  focalExact,
  focalRange,
  metres,
  pixels,
  share,
  speed,
} from '../../src/units/format';

describe('metres', () => {
  it('rounds to the metre and separates thousands', () => {
    expect(metres(1239.6)).toBe('1,240 m');
    expect(metres(312.4)).toBe('312 m');
    expect(metres(999.5)).toBe('1,000 m');
    expect(metres(12_345_678)).toBe('12,345,678 m');
  });
  it('keeps a decimal where a decimetre matters', () => {
    expect(finely(1.7)).toBe('1.7 m');
    expect(finely(37.57)).toBe('37.6 m');
  });
  it('prints a true minus sign, and no minus zero', () => {
    expect(metres(-12.7)).toBe('−13 m');
    expect(metres(-0.2)).toBe('0 m');
    expect(finely(-0.04)).toBe('0.0 m');
  });
});

describe('focal lengths', () => {
  it('are shown to two figures', () => {
    expect(focal(257.4)).toBe('260 mm');
    expect(focal(104.9)).toBe('100 mm');
    expect(focal(85.4)).toBe('85 mm');
    expect(focal(1234)).toBe('1,200 mm');
    expect(focal(8.46)).toBe('8.5 mm');
  });
  it('carry over to the next power of ten', () => {
    expect(focal(99.6)).toBe('100 mm');
    expect(focal(996)).toBe('1,000 mm');
    expect(focal(9.96)).toBe('10 mm');
  });
  it('are exact on demand', () => {
    expect(focalExact(257.44)).toBe('257.4 mm');
  });
  it('make a range, or one value where both ends read the same', () => {
    expect(focalRange(184, 388)).toBe('180–390 mm');
    expect(focalRange(181, 184)).toBe('180 mm');
  });
});

describe('angles', () => {
  it('are three digits for a bearing, and 360 is north', () => {
    expect(bearing(8.6)).toBe('009°');
    expect(bearing(89.4)).toBe('089°');
    expect(bearing(359.6)).toBe('000°');
    expect(bearing(-10)).toBe('350°');
  });
  it('are whole degrees otherwise', () => {
    expect(degrees(23.6)).toBe('24°');
    expect(degrees(-2.7)).toBe('−3°');
  });
});

describe('shares, factors and the rest', () => {
  it('never calls something nothing', () => {
    expect(share(0.617)).toBe('62 %');
    expect(share(0.003)).toBe('under 1 %');
    expect(share(0)).toBe('0 %');
  });
  it('says that there is no answer', () => {
    expect([metres(null), finely(null), focal(null), focalExact(null), share(null)]).toEqual(
      Array(5).fill('–'),
    );
  });
  it('prints factors, feet, pixels and speeds', () => {
    expect(factor(0.834)).toBe('0.83');
    expect(feet(1043.3)).toBe('1,043 ft');
    expect(pixels(2980)).toBe('2,980 px');
    expect(speed(70.4)).toBe('70 m/s');
    expect(decimal(-1234.56, 1)).toBe('−1,234.6');
  });
});
