import { expect, test } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { heightWords } from '../../../src/ui/feature/flight-path-words';

const format = formatsFor(readPreferences('{"lengths":"m"}'));
const path = {
  id: 'f',
  name: '',
  source: 'recorded',
  line: [],
  heights: [312, 198, 250],
  times: null,
  turnBank: null,
  fromSpots: null,
};

test('[I81] a flight path says between which heights it runs, and what its recorder counted from', () => {
  const words = (altitude: Parameters<typeof heightWords>[1]) => heightWords(path, altitude, format);
  const between = 'Between 198 m (650 ft) and 312 m (1,024 ft) above mean sea level.';
  expect(words(null)).toBe(between);
  expect(words({ meaning: 'sea-level' })).toBe(between);
  expect(words({ meaning: 'pressure', qnh: 1000 })).toBe(
    `${between} From pressure altitudes, with 1000 hPa.`,
  );
  expect(words({ meaning: 'ellipsoid', geoid: 42, tiedBy: -3.25 })).toBe(
    `${between} From heights above the ellipsoid, with sea level 42.0 m above it. Tied to the runway: lowered by 3.3 m.`,
  );
});
