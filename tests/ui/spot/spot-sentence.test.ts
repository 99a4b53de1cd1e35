import { describe, expect, test } from 'vitest';
import { spotSummary } from '../../../src/figures/summary/spot-summary';
import { allSpotFigures } from '../../../src/figures/spot-figures';
import { readContents } from '../../../src/survey/contents';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { formatsFor } from '../../../src/ui/formats';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { spotLine, spotSentence } from '../../../src/ui/spot/spot-sentence';
import { Answers } from '../../../src/state/answers';
import { field, instant } from '../../map/field';

const contents = readContents(field);
const format = formatsFor(readPreferences(null));

function lineOf(reaches: boolean) {
  const paths = pathsOf(contents, (kind, _runway, end) => reaches && kind === 'arrival' && end === 0, null);
  const [a, b] = allSpotFigures(contents, paths, [instant, instant], null)[0] ?? [];
  if (!a || !b) throw new Error('expected figures of the first spot');
  return spotLine({ a, b }, spotSummary(a, b).leading, {
    format,
    answers: new Answers({ contents } as never),
    runway: () => '10/28',
    path: () => '10 arrival',
    until: { a: '15:33', b: null },
  });
}

describe('a spot in one line', () => {
  test('[U8] is read out with centreline distance, focal length and light, as one short sentence', () => {
    const said = spotSentence('South bank', lineOf(true));
    expect(said).toBe(
      'South bank: 461 m, south side of 10/28; 10 arrival 350 mm at 461 m; light at A lit from above until 15:33.',
    );
    expect(said.length).toBeLessThan(120);
  });

  test('[U8] says when nothing is within reach', () => {
    expect(spotSentence('South bank', lineOf(false))).toMatch(/; no path within reach\.$/);
  });
});
