import { describe, expect, it } from 'vitest';
import { unreadPhoto } from '../../../src/survey/photo-record';
import type { Pass } from '../../../src/figures/log/find-passes';
import { logEntryOf } from '../../../src/figures/log/log-entry-of';
import type { Sample } from '../../../src/figures/types';
import { correctionWords, readCorrection } from '../../../src/ui/log/clock-words';
import {
  comparedWords,
  keepWords,
  passWords,
  photographsWords,
  withoutSpotWords,
} from '../../../src/ui/log/words';
import { contentsOf, plainSubject, spotFeature } from '../../support/contents';
import { madeRunway } from '../../support/made-flights';

const frame = (file: string, instant: number, rating: number | null, focalLength: number | null) => ({
  record: { ...unreadPhoto(file, ''), rating, focalLength, model: 'One', position: [9.77, 47.1] as const },
  instant,
  doubts: [],
});
const pass: Pass = {
  frames: [frame('secret/a.jpg', 1000, 2, 200), frame('secret/b.jpg', 5000, 4, 300)],
  from: 1000,
  to: 5000,
  spot: 's',
  path: 'r1/24/arrival',
  subject: 'plain',
  movement: null,
  doubts: [],
};
const predicted = { focalLength: 480, light: 'front-lit', lightAngle: 20, slantRange: 700 } as Sample;

describe('[L52] predicted against actual', () => {
  it('the best rated frame counts: used over needed, of the fill that was wanted', () => {
    expect(comparedWords(pass, predicted, 0.8)).toBe(
      '300 mm, 480 mm needed: you framed at 50 %; front-lit by the figures',
    );
  });

  it('nothing is compared with what nobody knows', () => {
    expect(comparedWords({ ...pass, subject: null }, predicted, 0.8)).toBe(
      '300 mm; front-lit by the figures',
    );
    expect(comparedWords(pass, null, 0.8)).toBe('300 mm');
  });

  it('what is not known of a pass is said', () => {
    const contents = contentsOf([madeRunway.feature, spotFeature('s', [18.16, 50.9])], {
      subjects: [plainSubject],
    });
    expect(passWords(contents, pass)).toBe('s, 24 arrival, Plain');
    expect(passWords(contents, { spot: null, path: null, subject: null })).toBe(
      'spot not known, path not known, aircraft not known',
    );
  });
});

it('[L53] what is kept names no file and no place but the spot’s', () => {
  const contents = contentsOf([spotFeature('s', [18.16, 50.9])]);
  const [spot] = contents.spots;
  if (!spot) throw new Error('expected a spot');
  const kept = logEntryOf(pass, spot, predicted);
  expect(kept.position).toEqual([18.16, 50.9]);
  expect(kept.properties).toMatchObject({ time: '1970-01-01T00:00:01Z', frames: 2, kept: 4, camera: 'One' });
  expect(JSON.stringify(kept)).not.toMatch(/secret|9\.77|jpg/);
});

it('[B1062] nothing to keep is not called 0 passes, and one pass is one', () => {
  expect(keepWords(0)).toBe('Keep in the log');
  expect(keepWords(1)).toBe('Keep 1 pass in the log');
  expect(withoutSpotWords(1)).toMatch(/^1 pass without a spot.* it is left out/);
  expect(withoutSpotWords(2)).toMatch(/^2 passes without a spot.* they are left out/);
  expect(photographsWords(1)).toBe('1 photograph');
});

describe('[L54] a correction of the clock', () => {
  it.each([
    ['', 0],
    ['45', 45],
    ['-45', -45],
    ['+1:30', 90],
    ['−1:00:00', -3600],
    ['soon', null],
    ['1:2:3:4', null],
  ])('%s', (text, seconds) => {
    expect(readCorrection(text)).toBe(seconds);
  });
});

it('[L64] a correction reads back as it is written', () => {
  for (const seconds of [1, -59, 90, 3600, -3645, 46_368_000])
    expect(readCorrection(correctionWords(seconds))).toBe(seconds);
});
