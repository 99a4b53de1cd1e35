import { expect, it } from 'vitest';
import { codesOf } from '../../../src/cli/catalogue/codes';

it.each([
  ['four letters of the key', ['EGXQ', 'FQX', '', ''], { icao: 'EGXQ', iata: 'FQX', localCodes: [] }],
  [
    'the code in use now before the key of old',
    ['HSAK', '', 'HJAK', ''],
    { icao: 'HJAK', iata: null, localCodes: ['HSAK'] },
  ],
  [
    'no ICAO code where the one in use is none',
    ['KXQT', '', 'MI31', 'MI31'],
    { icao: null, iata: null, localCodes: ['MI31', 'KXQT'] },
  ],
  [
    'keys that the data invented left out',
    ['US-6091', '', '', '7q2'],
    { icao: null, iata: null, localCodes: ['7Q2'] },
  ],
  [
    'a national code equal to the IATA code once',
    ['KQXA', 'QXA', 'KQXA', 'QXA'],
    { icao: 'KQXA', iata: 'QXA', localCodes: [] },
  ],
  [
    'a code with a space as one word',
    ['XX-1', '', '', 'PI 0071'],
    { icao: null, iata: null, localCodes: ['PI0071'] },
  ],
] as const)('takes %s', (_, codes, expected) => {
  expect(codesOf(...(codes as unknown as [string, string, string, string]))).toEqual(expected);
});
