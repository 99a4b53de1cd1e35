import { describe, expect, test } from 'vitest';
import { skyAtOf, skySourceAt } from '../../../src/figures/light/sky-at';
import { readWeather } from '../../../src/figures/traffic/wind/read-weather';
import { weatherMember } from '../../../src/figures/traffic/wind/weather-member';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { readContents } from '../../../src/survey/contents';
import { setSky } from '../../../src/survey/edits/set-sky';
import { setWeather } from '../../../src/survey/edits/set-weather';
import { newSurvey } from '../../../src/survey/new-survey';
import { formatsFor } from '../../../src/ui/formats';
import { skiesWords, skyWords } from '../../../src/ui/words/sky-words';

const format = formatsFor(readPreferences(null));
const noon = Date.UTC(2026, 5, 21, 12);
const hour = 3_600_000;
const text =
  'METAR EPTO 211200Z 24008KT 3000 OVC008 12/11 Q1013\nTAF EPTO 211100Z 2112/2121 24010KT 9999 BKN020';

function reported() {
  const read = readWeather(text, noon);
  if (!read.ok) throw new Error(read.reason);
  const site = { name: 'Field', reference: [18.9, 54.2], timeZone: 'UTC' };
  return setWeather(newSurvey(site), weatherMember(text, read.value, null, noon));
}
function said(survey: ReturnType<typeof reported>, instant: number) {
  const contents = readContents(survey);
  return skyWords({ ...skyAtOf(contents)(instant), source: skySourceAt(contents, instant) }, format);
}

describe('[U952] the sky says where it is from', () => {
  test('the METAR for its hour, the TAF after it, no word outside both', () => {
    expect(said(reported(), noon)).toBe('overcast, 3,000 m, from the METAR');
    expect(said(reported(), noon + 4 * hour)).toBe('broken clouds, 10,000 m or more, from the TAF');
    expect(said(reported(), noon + 30 * hour)).toBe('no word of it: clear assumed');
  });
  test('what was said by hand goes before reports, on its own day only', () => {
    const survey = setSky(reported(), '2026-06-21', { direct: 1, visibility: 10_000 });
    expect(said(survey, noon)).toBe('clear or few clouds, 10,000 m or more, as you said');
    expect(said(survey, noon + 24 * hour)).toBe('no word of it: clear assumed');
    expect(said(setSky(survey, '2026-06-21', null), noon)).toMatch(/from the METAR$/);
  });
  test('once for both moments where it is the same', () => {
    const clear = { direct: 1, visibility: 10_000, source: 'assumed' } as const;
    expect(skiesWords({ a: clear, b: clear }, format)).toBe('no word of it: clear assumed');
    const grey = { direct: 0, visibility: 3000, source: 'metar' } as const;
    expect(skiesWords({ a: grey, b: clear }, format)).toBe(
      'A overcast, 3,000 m, from the METAR; B no word of it: clear assumed',
    );
  });
});
