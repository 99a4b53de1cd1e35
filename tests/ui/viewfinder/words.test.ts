import { expect, it } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { nothingPinned, type Pinned } from '../../../src/figures/optics/settings';
import { settingsCard } from '../../../src/figures/optics/settings-card';
import { inspectPath } from '../../../src/figures/spot/inspect-path';
import { outlookOf } from '../../../src/figures/outlook';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import {
  apertureWords,
  bestPointWords,
  panWords,
  pictureWords,
  reasons,
  shutterWords,
} from '../../../src/ui/viewfinder/words';
import { contentsOf, plainKit, plainSubject, spotFeature } from '../../support/contents';
import { oneSamplePath } from '../../support/one-sample';

const format = formatsFor(readPreferences(null));
const spot = [8.56, 47.45] as const;

const inSight = { nose: null, tail: null };

/** What passes `away` m north of a spot, flying east. */
function passing(away: number, speed = 60, pinned: Partial<Pinned> = {}) {
  const contents = contentsOf([spotFeature('s', spot, { ground: 0, eyeHeight: 1.7 })], {
    subjects: [plainSubject],
    kit: plainKit,
  });
  const [standing] = contents.spots;
  const lens = contents.kit.lenses[1];
  if (!standing || !lens) throw new Error('expected a spot and a lens');
  const path = oneSamplePath(destination(spot, 0, away), 30, 90, { speed });
  const sample = inspectPath(
    standing,
    path,
    0,
    outlookOf(contents, null),
    Date.parse('2026-06-21T08:00:00Z'),
  );
  return { sample, card: settingsCard(sample, 40, { ...contents, lens }, { ...nothingPinned, ...pinned }) };
}

it('says how fast to pan, and the seconds across the frame only while they help', () => {
  expect(panWords(passing(300).card)).toMatch(/^Pan at [\d.]+° a second; held still, .* in [\d.]+ s\.$/);
  expect(panWords(passing(80_000).card)).toBe('It hardly moves across the frame.');
  const slow = passing(200, 0.5).card;
  expect(panWords({ ...slow, shown: { ...slow.shown, secondsAcross: 75 } })).toBe('Pan at 0.1° a second.');
});

it('never asks for a crop to nothing, nor to the whole', () => {
  const { sample, card } = passing(2000);
  const words = (crop: number) =>
    pictureWords('Subject', sample, card, { crop, ends: inSight, moon: null }, [], format);
  expect(words(0.003)).toContain('crop to under 1 % of the width');
  expect(words(0.4)).toContain('crop to 40 % of the width');
  expect(words(0.998)).not.toContain('crop');
});

it('says values as cameras engrave them', () => {
  expect([1.8, 4, 7.1, 8, 11].map(apertureWords)).toEqual(['f/1.8', 'f/4', 'f/7.1', 'f/8', 'f/11']);
  expect([1 / 1250, 1 / 4, 0.3, 2, 3.2, 30].map(shutterWords)).toEqual([
    '1/1250 s',
    '1/4 s',
    '0.3 s',
    '2 s',
    '3.2 s',
    '30 s',
  ]);
});

it('says that a pinned value counts for both moments', () => {
  const why = reasons(passing(300, 60, { aperture: 8, iso: 100 }).card, format);
  expect(why.aperture).toMatch(/^pinned for A and B; sharp from/);
  expect(why.iso).toBe('pinned for A and B');
  expect(why.shutter).toBe('follows from f-number and ISO');
});

it('says whose best point both pictures show', () => {
  const best = { a: 40, b: 12 };
  expect(bestPointWords(40, best, 2)).toBe('Both at the best point of A; that of B is another.');
  expect(bestPointWords(12, best, 1)).toBe('At the best point of B; that of A is another.');
  expect(bestPointWords(12.5, best, 2)).toBe('');
  expect(bestPointWords(12, { a: 12, b: 12 }, 2)).toBe('Both at the best point, the same for A and B.');
  expect(bestPointWords(13, { a: 12, b: 12 }, 2)).toBe('');
});

it('says which end is hidden, and behind what', () => {
  const { sample, card } = passing(300);
  const hangar = [{ id: 'h', name: 'Hangar 3' }];
  const words = (ends: { nose: string | null; tail: string | null }, sight = 1) =>
    pictureWords(
      'Subject',
      { ...sample, score: { ...sample.score, sight } },
      card,
      { crop: 1, ends, moon: null },
      hangar,
      format,
    ).replace(/.*; [^.]*\./, '');
  expect(words(inSight)).toBe('');
  expect(words({ nose: 'h', tail: null })).toBe(' Its nose is hidden behind Hangar 3.');
  expect(words({ nose: 'h', tail: 'terrain' })).toBe(
    ' Its nose is hidden behind Hangar 3, its tail is hidden behind the ground.',
  );
  expect(words(inSight, 2 / 3)).toBe(' Part of it is hidden.');
  expect(words({ nose: 'h', tail: 'h' }, 0)).toBe(' Something hides it.');
});

it('says that the moon stands in the frame, or what would hide it', () => {
  const { sample, card } = passing(300);
  const words = (hiddenBy: string | null, atAircraft = false) =>
    pictureWords(
      'Subject',
      sample,
      card,
      { crop: 1, ends: inSight, moon: { phase: 'first-quarter', lit: 0.5, hiddenBy, atAircraft } },
      [{ id: 'h', name: 'Hangar 3' }],
      format,
    );
  expect(words(null)).toMatch(/ The moon \(first quarter, 50 % lit\) stands in the frame\.$/);
  expect(words(null, true)).toMatch(/ stands in the frame, where the aircraft is: it may be covered\.$/);
  expect(words('h', true)).toMatch(/ would stand in the frame, behind Hangar 3\.$/);
});
