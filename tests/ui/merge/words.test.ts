import { describe, expect, it } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { memberWords, valueWords } from '../../../src/ui/merge/words';

describe('[G30] what differs, in words', () => {
  const format = formatsFor(readPreferences('{"lengths":"m"}'));

  it('names a member as the sheets do, and one of other programs as it stands in the file', () => {
    expect(memberWords('/properties/eyeHeight')).toBe('eye height');
    expect(memberWords('/properties/ends/1/elevation')).toBe('end 2, elevation');
    expect(memberWords('/sunside/site/icao')).toBe('site, ICAO code');
    expect(memberWords('/properties/x~1y~0z')).toBe('x/y~z');
    expect(memberWords('/geometry')).toBe('place');
  });

  it('says values with their units, and what is not there as that', () => {
    expect(valueWords(1.7, '/properties/eyeHeight', format)).toBe('1.7 m');
    expect(valueWords(undefined, '/properties/notes', format)).toBe('not there');
    expect(valueWords(undefined, '', format)).toBe('deleted');
    expect(valueWords('', '/properties/notes', format)).toBe('not stated');
    expect(valueWords(['a', 'b'], '/properties/list', format)).toBe('a; b');
    expect(valueWords({ status: 'ask', ladder: false }, '/properties/access', format)).toBe(
      'status ask, ladder no',
    );
    expect(valueWords({ type: 'LineString', coordinates: [] }, '/geometry', format)).toBe(
      'as drawn on the map',
    );
  });
});
