import { expect, it } from 'vitest';
import { foldForSearch } from '../../../src/imports/catalogue/fold';

it.each([
  ['Zürich Airport', 'zurich airport'],
  ['Łódź Władysław', 'lodz wladyslaw'],
  ["Chicago O'Hare", 'chicago ohare'],
  ['Kahului/Maui — ʻĪao', 'kahului maui iao'],
  ['Ærøskøbing', 'aeroskobing'],
  ['Straße', 'strasse'],
  // Accents written as signs of their own.
  ['Sa\u0303o Paulo', 'sao paulo'],
  ['İstanbul Havalimanı', 'istanbul havalimani'],
  ['EG-7 (disused)', 'eg 7 disused '],
])('%s is searched as "%s"', (text, folded) => {
  expect(foldForSearch(text)).toBe(folded);
});

it('keeps the lines of a column apart', () => {
  expect(foldForSearch('Ö\n東京\n\nB').split('\n')).toHaveLength(4);
});
