import { describe, expect, it } from 'vitest';
import { searchCatalogue } from '../../../src/imports/catalogue/search';
import { airfield, decoded, invented } from './airfields';

const { catalogue } = decoded(invented);
const names = (text: string, limit = 10) =>
  searchCatalogue(catalogue, text, limit).map((m) => m.airfield.name);
const first = (text: string) => searchCatalogue(catalogue, text, 10)[0];

describe('searching the catalogue', () => {
  it.each([
    ['EGXQ', 'Farthing Airport'],
    ['fqx', 'Farthing Airport'],
    ['  nfqx ', 'Tidewater Field'],
    ['7q2', 'Tidewater Field'],
    ['gxq', 'Lower Farthing Strip'],
    ['xq-7', 'Łužice O’Dell International Airport'],
  ])('[C3] the exact code %s comes first', (code, name) => {
    expect(first(code)).toMatchObject({ by: 'code', airfield: { name } });
  });

  it('[C3] an exact code goes before larger airfields whose code begins so', () => {
    expect(names('egx')).toEqual(['Mercy Heliport', 'Farthing Airport']);
  });

  it('[C3] accents, case and punctuation do not matter', () => {
    expect(names("LUZICE o'dell")).toEqual(['Łužice O’Dell International Airport']);
    expect(names('gross ubersee')).toEqual(['Łužice O’Dell International Airport']);
  });

  it('[C3] start of a name, then start of a word, then the inside; larger airfields first', () => {
    expect(searchCatalogue(catalogue, 'farth', 10).map((m) => [m.airfield.name, m.by])).toEqual([
      ['Farthing Airport', 'name-prefix'],
      ['Tidewater Field', 'word-prefix'],
      ['Lower Farthing Strip', 'word-prefix'],
      ['Mercy Heliport', 'word-prefix'],
    ]);
    expect(first('idewat')).toMatchObject({ by: 'inside', airfield: { name: 'Tidewater Field' } });
  });

  it('[C3] a large airport whose town fits goes before an airstrip whose name begins so', () => {
    const { catalogue: two } = decoded([
      airfield({ name: 'Grand Central Airport', town: 'Sparrow' }),
      airfield({ name: 'Sparrow Strip', town: 'Elm', kind: 'small-airport', icao: null }),
    ]);
    expect(searchCatalogue(two, 'sparrow', 5).map((m) => m.airfield.name)).toEqual([
      'Grand Central Airport',
      'Sparrow Strip',
    ]);
  });

  it('[C3] words may come in any order, with the state as two letters', () => {
    expect(names('bay tidewater')).toEqual(['Tidewater Field']);
    expect(names('farthing il')).toEqual(['Lower Farthing Strip', 'Mercy Heliport']);
    expect(first('farthing il')).toMatchObject({ by: 'words' });
    expect(names('farthing zz')).toEqual([]);
  });

  it('[C3] one letter gives codes that begin with it, and no more than asked for', () => {
    expect(searchCatalogue(catalogue, 'E', 2).map((m) => m.airfield.icao)).toEqual(['EDQX', 'EGXQ']);
  });

  it('finds each airfield once, though its name, town and code all fit', () => {
    expect(names('farthing').filter((name) => name === 'Farthing Airport')).toHaveLength(1);
  });

  it.each(['', '   ', '\n', '---', '東京', '^', '#', '_'])('finds nothing for %j', (text) => {
    expect(names(text)).toEqual([]);
  });

  it('cannot be led astray by the marks of its own text', () => {
    expect(names('# egxq^ farthing')).toEqual(names('egxq farthing'));
    expect(names('farthing\nmercy')).toEqual(['Mercy Heliport']);
  });
});
