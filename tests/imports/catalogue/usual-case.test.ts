import fc from 'fast-check';
import { expect, test } from 'vitest';
import { foldForSearch } from '../../../src/imports/catalogue/fold';
import { fromShorthand, toShorthand } from '../../../src/imports/catalogue/shorthand';
import { fromUsualCase, toUsualCase, turned } from '../../../src/imports/catalogue/usual-case';

test.each([
  ['Farthing Airport', 'farthing airport'],
  ["O'Dell Field", "o'|dell field"],
  ['RAF Éire de Sol', 'r|a|f éire |de |sol'.replace('|sol', 'sol')],
  ['1St 2nd', '1|st 2nd'],
  ['ßa Iß', '|ßa iß'],
])('[I142] %s is kept as %s', (written, kept) => {
  expect(toUsualCase(written)).toBe(kept);
  expect(fromUsualCase(kept)).toBe(written);
});

const text = fc
  .string({ unit: 'grapheme', maxLength: 40 })
  .map((s) => s.replaceAll(turned, '').replace(/[ǅǈǋǲᾈ-ᾯᾼῌῼ]/g, ''));

test('[I142] any text is written again as it was, and has no large ASCII letter meanwhile (seeded)', () => {
  fc.assert(
    fc.property(fc.oneof(text, fc.stringMatching(/^[A-Za-zßİıŞéÖ0-9' .-]{0,30}$/)), (written) => {
      const kept = toUsualCase(written);
      expect(kept).not.toMatch(/[A-Z]/);
      expect(fromUsualCase(kept)).toBe(written);
    }),
    { seed: 142, numRuns: 2000 },
  );
});

test('[I142] kept text is searched as the written one would be (seeded)', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[A-Za-zßıŞéÖł0-9' .-]{0,30}$/), (written) => {
      expect(foldForSearch(toUsualCase(written).replaceAll(turned, ''))).toBe(foldForSearch(written));
    }),
    { seed: 142, numRuns: 1000 },
  );
});

test('[I142] what stands in most names is one letter', () => {
  expect(toShorthand('=|municipal airport;farthing field;')).toMatch(/^.{2,12}[A-Z]farthing[A-Z]$/);
  for (const long of ['=municipal airport;', 'a strip;b ranch airport;', ' air; air base;'])
    expect(fromShorthand(toShorthand(long))).toBe(long);
});
