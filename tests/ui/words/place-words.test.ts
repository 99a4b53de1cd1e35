import { describe, expect, test } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import type { Candidate } from '../../../src/sweep/candidates';
import { formatsFor } from '../../../src/ui/formats';
import {
  groundWords,
  hourWords,
  noneWords,
  placeLegend,
  placeName,
  placeSentence,
  rankWords,
  refusedWords,
} from '../../../src/ui/words/place-words';
import { contentsOf, plainKit } from '../../support/contents';

const format = formatsFor(readPreferences(null));
const contents = contentsOf([], { kit: plainKit });
const hour = 3_600_000;
const clock = (instant: number) => `${String(instant / hour).padStart(2, '0')}:00`;

const path = (
  name: string,
  ...spells: readonly (readonly [number, number])[]
): Candidate['paths'][number] => ({
  path: name,
  name,
  goodMinutes: 60,
  from: (spells[0]?.[0] ?? 0) * hour,
  to: (spells.at(-1)?.[1] ?? 0) * hour,
  spells: spells.map(([from, to]) => ({ from: from * hour, to: to * hour })),
  focal: { shortest: 160, longest: 220 },
});
const candidate: Candidate = {
  position: [18, 50],
  ground: 'open',
  veryClose: false,
  way: 'Mill Lane',
  goodMinutes: 265,
  pathMinutes: 265,
  worth: 0.9,
  bestInstant: 0,
  focalLength: 200,
  lens: { key: 'long', extender: null, throughout: true },
  visibleShare: 0.8,
  hiddenBy: ['h'],
  paths: [path('07 arrival', [16, 21])],
  side: 'south',
  nearestSpot: 138,
  deck: null,
};
const say = (changed: Partial<Candidate>) =>
  placeSentence({ ...candidate, ...changed }, contents, format, clock);

describe('what a line of the list says', () => {
  test('[P1] side, distance to the nearest spot, paths and hours, focal range, lens, what hides, ground', () => {
    expect(say({})).toBe(
      'south side, 140 m from the nearest spot; 07 arrival good 16:00–21:00; 160–220 mm (Long fits); 80 % in sight; an obstacle hides part of it; public way.',
    );
  });

  test('[P70] the figure by which places are ranked comes first, and how long one stays for it', () => {
    expect(rankWords(candidate)).toBe('265 good min');
    const paths = [path('25 arrival', [5, 9]), path('25 departure', [5, 11])];
    expect(rankWords({ paths, goodMinutes: 360, pathMinutes: 600 })).toBe(
      '600 good min over 2 paths, 360 by the clock',
    );
    expect(rankWords({ paths, goodMinutes: 600, pathMinutes: 1080 })).toMatch(/^1,080 good min/);
  });

  // From 30 mm overhead to 230 mm far out no zoom of the kit frames all of it.
  test('[P71] a lens that does not frame all that is good there fits at its best only', () => {
    expect(say({ lens: { key: 'long', extender: null, throughout: false } })).toContain(
      '160–220 mm (Long fits at its best)',
    );
  });

  test('[P14] what no lens of the kit fits is said, not left out', () => {
    expect(say({ lens: null })).toContain('160–220 mm (no lens of the kit fits: to be cropped)');
  });

  test('[P8] a deck is no public way: one stands on top of it', () => {
    expect(say({ way: 'Car park', deck: 193.7 })).toMatch(/; up on top of it\.$/);
    expect(say({ way: 'Car park', deck: 193.7, ground: 'unknown' })).toMatch(/check first\.$/);
  });

  // A photographer who reads "good from 5 to 21" would wait through the noon for nothing.
  test('[P2] a morning and an evening are two spells, not the whole day; paths of the same spells are told together', () => {
    expect(
      say({ paths: [path('25 arrival', [5, 6], [17, 21]), path('25 departure', [5, 6], [17, 21])] }),
    ).toContain('25 arrival and 25 departure good 05:00–06:00 and 17:00–21:00');
  });

  // A field without a path over it may be anybody's: never silently recommended.
  test('[P3] unknown ground says "check first", and a way in the buffer says that it is very close', () => {
    expect(say({ ground: 'unknown', way: null })).toMatch(/unknown ground: check first\.$/);
    expect(say({ veryClose: true })).toContain('very close: stand back from the fence');
    expect(placeName({ way: null, side: 'south', ground: 'unknown' })).toBe('Open country, south side');
    expect(placeName({ way: null, side: null, ground: 'open' })).toBe('Public way');
  });

  test('[P4] closed ground says why, and whose', () => {
    const there = { id: 'r', veryClose: false } as const;
    expect(groundWords({ ...there, ground: 'closed', closedBy: 'runway', name: '07/25' })).toBe(
      'Closed: too close to a runway (07/25).',
    );
    expect(groundWords({ ...there, ground: 'closed', closedBy: 'jet-blast', name: '' })).toMatch(
      /^Closed: jet blast/,
    );
    expect(groundWords({ ...there, ground: 'unknown', closedBy: null, name: '' })).toMatch(/check first/);
  });

  test('[P5] what cannot be asked names the mend', () => {
    expect(refusedWords({ ok: false, about: 'runways', reason: 'x' })).toMatch(/^No runway drawn yet/);
    expect(refusedWords({ ok: false, about: 'lenses', reason: 'x' })).toMatch(/^No lens in the kit/);
    expect(refusedWords({ ok: false, about: 'pole', reason: 'the area lies over a pole' })).toBe(
      'The area lies over a pole.',
    );
    // Of what the reason speaks the page has nothing to choose.
    expect(refusedWords({ ok: false, about: 'antimeridian', reason: 'a smaller side' })).toMatch(
      /180th meridian.*choose its ends under “Ends in use”/,
    );
    expect(noneWords['nothing-good']).toMatch(/would help/);
  });

  test('[P6] the colours of each layer have words; out of reach only where focal lengths are shown', () => {
    expect(placeLegend('minutes', 400).map(({ words }) => words)).toEqual([
      'to 30 min',
      'to 90 min',
      'to 3 h',
      'to 6 h',
      'over 6 h',
    ]);
    expect(placeLegend('focal', 250).map(({ words }) => words)).toEqual([
      'to 100 mm',
      'to 200 mm',
      'to 300 mm',
      'out of reach',
    ]);
  });

  test('[P7] hours of a month that are worth at least half of the best', () => {
    const byHour = Array<number>(24).fill(0);
    [byHour[9], byHour[10], byHour[17], byHour[18]] = [10, 6, 9, 4];
    expect(hourWords(byHour, (text) => text)).toBe('09:00 to 11:00 and 17:00 to 18:00');
    expect(hourWords(Array<number>(24).fill(0), String)).toBe('');
  });
});
