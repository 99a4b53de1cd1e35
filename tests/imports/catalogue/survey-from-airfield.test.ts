import { describe, expect, it } from 'vitest';
import { surveyFromAirfield } from '../../../src/imports/catalogue/survey-from-airfield';
import type { AirfieldToStart, CatalogueRunway } from '../../../src/imports/catalogue/types';
import { readContents } from '../../../src/survey/contents';
import { openSurvey } from '../../../src/survey/open';
import { wholeAirfield } from '../../support/catalogue';
import { airfield, decoded, end, invented, runway } from './airfields';

function start(row = invented[1] ?? airfield()) {
  let n = 0;
  return surveyFromAirfield(wholeAirfield(decoded([row]), 0), () => `id${++n}`, 'Europe/London');
}
const withRunway = (over: Partial<CatalogueRunway>) => start(airfield({ runways: [runway(over)] }));
const doubtsOf = (over: Partial<CatalogueRunway>) =>
  withRunway(over).survey.features[0]?.properties?.['doubts'];

describe('a survey from the catalogue', () => {
  it('[C4] has the site filled in, in metres', () => {
    const { survey, doubts } = start();
    expect(readContents(survey).site).toEqual({
      name: 'Farthing Airport',
      icao: 'EGXQ',
      elevation: 25.3,
      timeZone: 'Europe/London',
      timeZoneFrom: 'stated',
      military: false,
      reference: [-0.4736, 51.4649],
      frequencies: [
        { use: 'tower', mhz: 118.505 },
        { use: 'atis', mhz: 127.4 },
      ],
    });
    expect(doubts).toEqual([]);
  });

  it('[C4] has the runway with its ends in the order of the line', () => {
    const contents = readContents(start().survey);
    expect(contents.problems).toEqual([]);
    expect(contents.runways).toMatchObject([
      {
        id: 'id1',
        name: '09/27',
        width: 45.11,
        surface: 'asphalt',
        line: [
          [-0.486772, 51.464901],
          [-0.460444, 51.464988],
        ],
        ends: [
          { designator: '09', elevation: 22.86, displaced: 308.76 },
          { designator: '27', elevation: 23.47, displaced: 0 },
        ],
      },
    ]);
  });

  it('[C4] survives being saved and opened, doubts and licence included', () => {
    const { survey } = start(invented[2]);
    const opened = openSurvey(JSON.stringify(survey));
    expect(opened).toMatchObject({
      ok: true,
      problems: [],
      survey: JSON.parse(JSON.stringify(survey)) as object,
    });
    expect(JSON.stringify(survey.sunside['sources'])).toContain('Open Database License');
  });

  it('leaves out what the data do not say', () => {
    const { survey } = start(
      airfield({
        icao: null,
        runways: [
          runway({
            width: null,
            surface: '',
            ends: [end({ elevation: null }), end({ designator: '27', position: [-0.45, 51.46] })],
          }),
        ],
      }),
    );
    expect(survey.sunside['site']).not.toHaveProperty('icao');
    expect(survey.sunside['site']).not.toHaveProperty('frequencies');
    expect(Object.keys(survey.features[0]?.properties ?? {})).toEqual(['kind', 'name', 'ends', 'doubts']);
    expect(survey.features[0]?.properties?.['ends']).toMatchObject([{ designator: '09', displaced: 0 }, {}]);
  });

  it('[C5] a runway that is in order has no doubts', () => {
    expect(doubtsOf({})).toBeUndefined();
  });

  it.each<[string, Partial<CatalogueRunway>, string[]]>([
    [
      'length off',
      { length: 2300.0208, flags: [{ kind: 'length-off', measured: 1870 }] },
      ['The data give a length of 2,300 m, but the two ends lie 1,870 m apart. Check both ends on the map.'],
    ],
    [
      'points at the thresholds',
      { flags: [{ kind: 'at-thresholds', measured: 1520 }] },
      [
        'The two ends lie 1,520 m apart; with 309 m of displaced thresholds that makes the published 1,829 m. The points seem to be the landing thresholds: move the ends out to the ends of the pavement.',
      ],
    ],
    [
      'far away',
      { flags: [{ kind: 'far-away', away: 14_210 }] },
      ["An end of this runway lies 14,210 m from the airfield's own position. Check where the runway is."],
    ],
    [
      'ends swapped',
      { flags: [{ kind: 'ends-swapped', magnetic: 277 }] },
      [
        'The ends seem to be swapped: from end 09 to end 27 the line points to 277° magnetic, against its number. Check which end is which.',
      ],
    ],
    [
      'thresholds too far in',
      {
        ends: [
          end({ displaced: 304.8 }),
          end({ designator: '27', position: [-0.45, 51.46], displaced: 762 }),
        ],
      },
      [
        'The displaced thresholds (305 m at end 09, 762 m at end 27) take more than half of the 1,829 m. Check them.',
      ],
    ],
    [
      'a width that cannot be one',
      { width: 2156.46 },
      ['The data give a width of 2,156 m, which is left out. Type it if you know it.'],
    ],
    [
      'one elevation missing',
      { ends: [end(), end({ designator: '27', position: [-0.45, 51.46], elevation: null })] },
      ['The data give no elevation for end 27; that of end 09 stands in. Type it if you know it.'],
    ],
    [
      'both elevations missing',
      {
        ends: [
          end({ elevation: null }),
          end({ designator: '27', position: [-0.45, 51.46], elevation: null }),
        ],
      },
      [
        "The data give no elevation for either end; the airfield's 25 m stand in. Type them if you know them.",
      ],
    ],
  ])('[C5] %s is said on the runway in plain words', (_, over, doubts) => {
    expect(doubtsOf(over)).toEqual(doubts);
    expect(withRunway(over).doubts).toEqual([]);
    expect(readContents(withRunway(over).survey).problems).toEqual([]);
  });

  it('[C5] says every doubt about a runway, not the first only', () => {
    const doubts = start(invented[2]).survey.features[0]?.properties?.['doubts'];
    expect(doubts).toHaveLength(3);
  });

  it.each<[string, Partial<CatalogueRunway>, string]>([
    [
      'both ends at one point',
      { flags: [{ kind: 'zero-length' }] },
      'The data put both ends of runway 09/27 of 1,829 m (asphalt) at one point. Draw it by its two ends.',
    ],
    [
      'no ends',
      { ends: [null, null], surface: '' },
      'The data name a runway of 1,829 m but not where it lies. Draw it by its two ends.',
    ],
    [
      'the second end only',
      { ends: [null, end({ designator: '27' })], length: null },
      'The data locate only end 27 of a runway (asphalt). Draw it by its two ends.',
    ],
  ])('[C6] a runway with %s is not invented, but told of', (_, over, doubt) => {
    const { survey, doubts } = withRunway(over);
    expect(survey.features).toEqual([]);
    expect(doubts).toEqual([doubt]);
  });

  it('[C6] an airfield without any runway opens where it is, to be drawn', () => {
    const { survey, doubts } = start(invented[0]);
    expect(survey.features).toEqual([]);
    expect(readContents(survey).site.reference).toEqual([14.0213, 51.3391]);
    expect(doubts).toEqual(['The data have no runway here. Draw it by its two ends.']);
  });

  it('[C11] starts without what could not be loaded, and says so', () => {
    const whole = wholeAirfield(decoded(invented), 1);
    const without = (over: Partial<AirfieldToStart>) =>
      surveyFromAirfield({ ...whole, ...over }, () => 'r', 'Europe/London');
    const noRunways = without({ runways: null });
    expect(noRunways.survey.features).toEqual([]);
    expect(noRunways.doubts).toEqual([
      'The list of runways could not be loaded. Draw them by their two ends, or start again with a network.',
    ]);
    const noFrequencies = without({ frequencies: null });
    expect(noFrequencies.survey.features).toHaveLength(1);
    expect(noFrequencies.survey.sunside['site']).not.toHaveProperty('frequencies');
    expect(noFrequencies.doubts).toEqual([
      'The list of frequencies could not be loaded: none are filled in.',
    ]);
  });

  it('draws the runways that are located beside those that are not', () => {
    const { survey, doubts } = start(invented[2]);
    expect(survey.features.map((f) => f.id)).toEqual(['id1', 'id2']);
    expect(doubts).toHaveLength(2);
  });
});
