import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { verdictFor } from '../../../src/figures/optics/verdict';
import { outlookOf } from '../../../src/figures/outlook';
import { spotFigures } from '../../../src/figures/spot-figures';
import { flowFor } from '../../../src/figures/traffic/flow/flow-for';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { readTypedWind } from '../../../src/figures/traffic/wind/typed-wind';
import { Answers } from '../../../src/state/answers';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { elsewhereWords, headlineWords } from '../../../src/ui/spot/headline-words';
import { takeWords } from '../../../src/ui/words/sample-words';
import { focal } from '../../../src/units/format';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../../support/contents';

const format = formatsFor(readPreferences(null));
const lenses = [
  { key: 'prime', name: '500 mm f/4', shortest: 500, longest: 500, widestAperture: 4 },
  {
    key: 'zoom',
    name: '150–600 mm f/5–6.3',
    shortest: 150,
    longest: 600,
    widestAperture: 5,
    widestApertureLong: 6.3,
    extenders: [1.4],
  },
];
const airliner = { ...plainSubject, key: 'A320', name: 'A320', length: 37.6, span: 34, height: 11.8 };
const single = {
  ...plainSubject,
  key: 'C172',
  name: 'C172',
  propulsion: 'propeller',
  span: 11,
  groundRun: 290,
  landingRun: 175,
};
const common = {
  site: { elevation: 430, timeZone: 'Europe/Zurich' },
  subjects: [airliner],
  kit: { ...plainKit, lenses },
};

/** What the card says of a lens for a needed focal length in mm. */
function lensSays(key: string, needed: number): string {
  const { kit, body } = contentsOf([], common);
  const lens = kit.lenses.find((l) => l.key === key);
  if (!lens) throw new Error(`expected the lens ${key}`);
  return takeWords(verdictFor(lens, needed, body, kit.fill));
}

/** The head of the card of a spot: 09 arrivals in the afternoon of midsummer. */
function cardOf(at: readonly [number, number], more: object = {}): string {
  const runway = runwayFeature(
    'rwy',
    [8.5, 47.4],
    [8.535, 47.4],
    [{ designator: '09' }, { designator: '27' }],
  );
  const contents = contentsOf([runway, spotFeature('s', at)], { ...common, ...more });
  const paths = pathsOf(contents, (kind, _runway, end) => kind === 'arrival' && end === 0, null);
  const [spot] = contents.spots;
  const [seen] = spot
    ? spotFigures(spot, paths, outlookOf(contents, null), [Date.parse('2026-06-21T15:00:00Z')])
    : [];
  const path = seen?.paths[0];
  if (!path) throw new Error('expected the arrival from the spot');
  const answers = new Answers({ contents } as never);
  const headline = answers.headline(path);
  const take = answers.lensFor(headline.sample.focalLength);
  return [
    `${focal(headline.sample.focalLength)} at ${format.length(headline.sample.slantRange)}`,
    headlineWords(headline, answers.isFlat(seen.sky)),
    take ? takeWords(take) : '',
    ...[elsewhereWords(headline, format)].filter((words) => words !== null),
  ].join(' | ');
}

/** Five situations that practitioners argued about, as the page says them, and what it said before. */
describe('[U440] what the card says', () => {
  test('500.1 mm needed on a 500, and what is a little less or more: it fits', () => {
    // Before: "fits, just"; "too long: fills more than the wanted 80 %"; "too short: crop to 93 %, up to 4,444 px across".
    for (const needed of [500.1, 480, 540])
      expect(lensSays('prime', needed)).toBe('500 mm f/4: 500 mm, f/4, fits');
    expect(lensSays('prime', 900)).toMatch(/too short: crop to \d\d %, up to [\d,]+ px across$/);
  });

  test('700 mm on a 150-600 with a 1.4x extender: it stays bare, a third of a stop and the extender saved', () => {
    // Before: "fits with the 1.4× extender".
    expect(lensSays('zoom', 700)).toBe('150–600 mm f/5–6.3: 600 mm, f/6.3, fits');
    expect(lensSays('zoom', 860)).toMatch(/ with 1\.4×: \d+ mm, f\/[\d.]+, fits$/);
  });

  test('330/12 on a club’s triangle: the grass into wind, and by how much', () => {
    const from = [8.5, 47.4] as const;
    const number = (deg: number) => String(deg / 10).padStart(2, '0');
    const strip = (id: string, bearing: number, length: number) =>
      runwayFeature(
        id,
        from,
        destination(from, bearing, length),
        [{ designator: number(bearing) }, { designator: number(bearing + 180) }],
        { surface: 'grass' },
      );
    const club = contentsOf([strip('a', 30, 800), strip('b', 90, 700), strip('c', 150, 600)], {
      subjects: [single],
      flow: {},
    });
    const wind = readTypedWind('330/12');
    if (!wind.ok) throw new Error(wind.reason);
    const { arrivals, reason } = flowFor(club, wind.value, Date.parse('2026-06-21T10:00:00Z'));
    expect(arrivals).toEqual([{ runway: 'c', end: 1 }]);
    // Before: "Most headwind: 33 (12 kt); ...".
    expect(reason).toMatch(/^Most headwind on 15\/33: 33 \(12 kt of headwind, 0 kt across\)/);
  });

  test('overcast, 3 km: fair at the fence, poor far out, and from either side', () => {
    const sky = { sky: [{ date: '2026-06-21', direct: 0, visibility: 3000 }] };
    // Before, at both: "side-lit, flank in shade", as on a clear day.
    expect(cardOf([8.505, 47.4013], sky)).toMatch(
      /^120 mm at 156 m \| side-on, flat light: either side; fair \|/,
    );
    expect(cardOf([8.505, 47.4072], sky)).toMatch(
      /^610 mm at 800 m \| side-on, flat light: either side; poor \|/,
    );
    expect(cardOf([8.505, 47.3987], sky)).toMatch(/side-on, flat light: either side; fair/);
  });

  test('a clear afternoon: the pass leads, with what it is seen as; nose-on far out stands second (see U950)', () => {
    // Before: the sample of the highest score led, wherever on the path: "160 mm at 177 m, side-lit, flank in shade".
    const north = cardOf([8.505, 47.4013]);
    expect(north).toMatch(/\| (side-on|three-quarters from ahead), side-lit, flank in shade; \w+/);
    const south = cardOf([8.505, 47.3987]);
    expect(south).toMatch(/\| (side-on|three-quarters from ahead), (front|side)-lit; (good|fair)/);
  });
});
