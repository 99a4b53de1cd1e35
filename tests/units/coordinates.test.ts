import { describe, expect, test } from 'vitest';
import { formatCoordinates, parseCoordinates } from '../../src/units/coordinates';

function position(text: string) {
  const reading = parseCoordinates(text);
  if (!reading.ok) throw new Error(`expected coordinates in "${text}", got: ${reading.reason}`);
  return reading.position;
}

function reason(text: string): string {
  const reading = parseCoordinates(text);
  if (reading.ok) throw new Error(`expected a reason for "${text}", got ${reading.position.join(' ')}`);
  return reading.reason;
}

describe('coordinates as typed', () => {
  // 28/60 + 39/3600 = 0.4775; 29/60 + 6/3600 = 0.485
  const here = [-0.485, 51.4775];
  test.each([
    ['51.4775, -0.485'],
    ['51.4775 -0.485'],
    ['51.4775; -0.485'],
    ['+51.4775,−0.485'],
    ['51,4775 -0,485'],
    ['51,4775; -0,485'],
    ['51,4775, -0,485'],
    ['51.4775°, -0.485°'],
    ['51.4775N 0.485W'],
    ['51.4775 n, 0.485 w'],
    ['N51.4775 W0.485'],
    ['0.485W 51.4775N'],
    ['W 0.485, N 51.4775'],
    ['51.4775 North, 0.485 West'],
    [`51°28'39"N 0°29'06"W`],
    ['51°28′39″N 0°29′06″W'],
    ['51º28’39”N, 0º29’06”W'],
    [`51° 28' 39'' N / 0° 29' 6'' W`.replace('/', ',')],
    [`0°29'06"W 51°28'39"N`],
    ['51 28 39 N 0 29 6 W'],
    ['51 28 39 -0 29 6'],
    ['51:28:39 N 0:29:06 W'],
    [`51°28.65' -0°29.1'`],
    ['51 28.65, -0 29.1'],
    [`51°28.65'N 000°29.1'W`],
    ['512839N 0002906W'],
    ['5128.65N 00029.1W'],
    ['512839.00N0002906.00W'],
    ['51 deg 28.65 N, 0 deg 29.1 W'],
  ])('%s', (text) => {
    const [lng, lat] = position(text);
    expect(lat).toBeCloseTo(here[1] as number, 9);
    expect(lng).toBeCloseTo(here[0] as number, 9);
  });

  test.each([
    ['33.9461 S, 151.1772 E', [151.1772, -33.9461]],
    [`33°56'46"S 151°10'38"E`, [151.1772222, -33.9461111]],
    ['-34.8222, -58.5358', [-58.5358, -34.8222]],
    ['S0 30 0 W078 21 27', [-78.3575, -0.5]],
    ['0, 0', [0, 0]],
    ['-0, 12', [12, 0]],
    ['90N 180W', [-180, 90]],
    [`-0°30' 10`, null],
  ])('%s: signs and letters of every hemisphere', (text, expected) => {
    if (!expected) {
      expect(reason(text)).toMatch(/comma between/);
      return;
    }
    const [lng, lat] = position(text);
    expect(lng).toBeCloseTo(expected[0] as number, 6);
    expect(lat).toBeCloseTo(expected[1] as number, 6);
  });

  test('a small negative latitude keeps its sign though its degrees are nought', () => {
    expect(position(`-0°12'36", 36°55'40"`)[1]).toBeCloseTo(-0.21, 9);
  });

  test.each([
    ['', /Nothing is typed/],
    ['  ', /Nothing is typed/],
    ['51.4775', /not clear where the latitude ends/],
    ['51.4775, -0.485, 24', /not clear where the latitude ends/],
    ['51.4775N 0.485', /one hemisphere letter.*two are needed/],
    ['51.4775N 0.485S', /N and S both belong to a latitude/],
    ['51.4775E 0.485W', /both belong to a longitude/],
    ['-51.4775S 0.485W', /Latitude: .*both a sign and a letter.*minus/],
    ['51.4775N +0.485W', /Longitude: .*both a sign and a letter.*plus/],
    ['91.5, 10', /Latitude: 91.5 is outside 90 degrees.*latitude comes first/],
    ['151.1772, -33.9461', /latitude comes first: type the longitude second/],
    ['45, 181.2', /Longitude: 181.2 is outside 180 degrees/],
    ['95N 10E', /Latitude: 95 is outside 90 degrees\.$/],
    [`90°00'01"N 10°E`, /Latitude: 90.0003 is outside/],
    [`51°61'00"N 0°29'06"W`, /Latitude: 61 minutes are too many/],
    [`51°28'39"N 0°29'60"W`, /Longitude: 60 seconds are too many/],
    [`51.5°28'N 0°29'W`, /Latitude: only the last number .*decimals/],
    ['51 28 39 12 N 0 29 6 W', /Latitude: .*cannot be read/],
    ['51.4775, x', /"X" has no meaning/],
    ['near the fence', /has no meaning/],
    ['N W', /Latitude: there is no number/],
    ['51..4N 0.485W', /Latitude: .*cannot be read/],
    ['51 28 0', /not clear where/],
    ['51,28,39,06', /not clear where/],
  ])('"%s" is answered with the place and the mend', (text, expected) => {
    expect(reason(text)).toMatch(expected);
  });
});

describe('coordinates as shown', () => {
  test('decimal degrees with the decimals that the file has', () => {
    expect(formatCoordinates([-0.485, 51.4775], 'decimal')).toBe('51.4775, -0.485');
    expect(formatCoordinates([151.1234567, -33.0000001], 'decimal')).toBe('-33.0000001, 151.1234567');
    expect(formatCoordinates([-0, 0], 'decimal')).toBe('0, 0');
  });

  test('degrees, minutes and seconds with hemisphere letters', () => {
    expect(formatCoordinates([-0.485, 51.4775], 'sexagesimal')).toBe('51°28′39.00″N 0°29′06.00″W');
    expect(formatCoordinates([151.1772222, -33.9461111], 'sexagesimal')).toBe('33°56′46.00″S 151°10′38.00″E');
  });

  test('[E86] to the metre for paper and letters: five decimals, tenths of a second', () => {
    expect(formatCoordinates([18.1723456, 50.9312345], 'decimal', 'feet')).toBe('50.93123, 18.17235');
    expect(formatCoordinates([151.1772222, -33.9461111], 'sexagesimal', 'feet')).toBe(
      '33°56′46.0″S 151°10′38.0″E',
    );
    expect(formatCoordinates([7.9999999, 46.9999999], 'sexagesimal', 'feet')).toBe(
      '47°00′00.0″N 8°00′00.0″E',
    );
  });

  test('rounding carries into minutes and degrees', () => {
    expect(formatCoordinates([7.9999999, 46.9999999], 'sexagesimal')).toBe('47°00′00.00″N 8°00′00.00″E');
  });

  test.each([
    [-122.3748, 37.6189],
    [0.0001, -0.0001],
    [179.9999, -89.9999],
    [8.5491667, 47.4647222],
  ])('what is shown of %d %d reads back', (lng, lat) => {
    const exact = position(formatCoordinates([lng, lat], 'decimal'));
    expect(exact).toEqual([lng, lat]);
    const near = position(formatCoordinates([lng, lat], 'sexagesimal'));
    // Half of a hundredth of a second.
    expect(Math.abs(near[0] - lng)).toBeLessThan(0.0051 / 3600);
    expect(Math.abs(near[1] - lat)).toBeLessThan(0.0051 / 3600);
  });
});
