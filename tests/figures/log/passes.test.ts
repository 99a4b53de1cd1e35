import { describe, expect, it } from 'vitest';
import { findPasses } from '../../../src/figures/log/find-passes';
import { frameOf } from '../../../src/figures/log/frame-time';
import { unreadPhoto, type PhotoRecord } from '../../../src/survey/photo-record';
import { predictPass } from '../../../src/figures/log/predict';
import { figuresFor } from '../../../src/figures/figures-for';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../../support/contents';

const spotAt = [8.51, 47.396] as const;
const features = [
  runwayFeature('rwy', [8.5, 47.4], [8.535, 47.4], [{ designator: '09' }, { designator: '27' }]),
  spotFeature('mound', spotAt),
  spotFeature('fence', [8.53, 47.396]),
];
const movement = (id: string, time: string, use = 'arrival', more: object = {}) => ({
  id,
  time,
  use,
  type: 'plain',
  ...more,
});
const survey = (sunside: object = {}) =>
  contentsOf(features, {
    site: { elevation: 430, timeZone: 'Europe/Zurich' },
    subjects: [plainSubject],
    kit: plainKit,
    ...sunside,
  });
const words = (said: string | { readonly words: string }) => (typeof said === 'string' ? said : said.words);
const inUse = { arrivals: [{ runway: 'rwy', end: 1 }], departures: [{ runway: 'rwy', end: 1 }] } as const;

const photo = (file: string, clock: string, more: Partial<PhotoRecord> = {}): PhotoRecord => ({
  ...unreadPhoto(file, ''),
  doubts: [],
  clock: `2026-06-21T${clock}`,
  model: 'One',
  position: spotAt,
  ...more,
});
const passesOf = (contents: ReturnType<typeof survey>, ...photos: readonly PhotoRecord[]) =>
  findPasses(
    photos.map((p) => frameOf(p, contents.site.timeZone)),
    contents,
    inUse,
  );
const files = ({ passes }: ReturnType<typeof passesOf>) =>
  passes.map(({ frames }) => frames.map(({ record }) => record.file).join(''));

describe('[L40] when a photograph was taken', () => {
  const at = (clock: string, offset: number | null, zone: string, correction = 0) => {
    const frame = frameOf(photo('a', '00:00:00', { clock, offset }), zone, correction);
    return [new Date(frame.instant ?? NaN).toISOString(), frame.doubts.length];
  };
  it.each([
    [
      'the camera’s own offset goes first',
      '2026-06-21T18:00:01',
      -330,
      'Europe/Zurich',
      '2026-06-21T23:30:01.000Z',
      0,
    ],
    [
      'else the airfield’s zone, in summer',
      '2026-06-21T18:00:01',
      null,
      'Europe/Zurich',
      '2026-06-21T16:00:01.000Z',
      0,
    ],
    ['and in winter', '2026-12-21T18:00:01', null, 'Europe/Zurich', '2026-12-21T17:00:01.000Z', 0],
    [
      'a time that came twice: the first, and it is said',
      '2026-10-25T02:30:00',
      null,
      'Europe/Zurich',
      '2026-10-25T00:30:00.000Z',
      1,
    ],
    [
      'a time that was skipped: an hour later, and it is said',
      '2026-03-29T02:30:00',
      null,
      'Europe/Zurich',
      '2026-03-29T01:30:00.000Z',
      1,
    ],
    [
      'with an offset neither is in doubt',
      '2026-10-25T02:30:00',
      60,
      'Europe/Zurich',
      '2026-10-25T01:30:00.000Z',
      0,
    ],
  ])('%s', (_, clock, offset, zone, instant, doubts) => {
    expect(at(clock, offset, zone)).toEqual([instant, doubts]);
  });

  it('one correction moves all', () => {
    expect(at('2026-06-21T18:00:01', 120, 'Europe/Zurich', -61)[0]).toBe('2026-06-21T15:59:00.000Z');
  });
});

describe('[L41] passes', () => {
  it('20 s from frame to frame are one pass, 21 s are two; each camera has its own', () => {
    const found = passesOf(
      survey(),
      photo('a', '18:00:00'),
      photo('b', '18:00:20'),
      photo('c', '18:00:41'),
      photo('x', '18:00:10', { model: 'Two' }),
    );
    expect(files(found).sort()).toEqual(['ab', 'c', 'x']);
  });

  it('what belongs to one movement is one, whichever camera took it', () => {
    const found = passesOf(
      survey({ movements: [movement('m', '18:01')] }),
      photo('a', '18:00:00'),
      photo('b', '18:01:00'),
      photo('x', '18:00:50', { model: 'Two' }),
    );
    expect(files(found)).toHaveLength(1);
    expect(found.passes[0]).toMatchObject({
      movement: 'm',
      path: 'rwy/27/arrival',
      subject: 'plain',
      spot: 'mound',
      doubts: [],
    });
  });

  it('over 90 s it is asked', () => {
    const burst = Array.from({ length: 7 }, (_, i) =>
      photo(`${i}`, `18:0${Math.floor((i * 16) / 60)}:${String((i * 16) % 60).padStart(2, '0')}`),
    );
    expect(
      passesOf(survey(), ...burst)
        .passes[0]?.doubts.map(words)
        .join(),
    ).toMatch(/96 s: was it one aircraft/);
    expect(
      passesOf(survey(), ...burst.slice(0, 6))
        .passes[0]?.doubts.map(words)
        .join(),
    ).not.toMatch(/one aircraft/);
  });

  it('frames far away or without a time are of none, and not lost', () => {
    const found = passesOf(
      survey(),
      photo('far', '18:00:00', { position: [8.9, 47.4] }),
      photo('when', '18:00:00', { clock: null }),
      photo('a', '18:00:00'),
    );
    expect(files(found)).toEqual(['a']);
    expect(found.left.map(({ record }) => record.file)).toEqual(['far', 'when']);
    expect(found.left[0]?.doubts.map(words).join()).toMatch(/29 km|30 km/);
  });
});

describe('[L42] what practitioners would argue about', () => {
  it('two movements within 3 minutes: nobody knows which, and that is asked', () => {
    const { passes } = passesOf(
      survey({ movements: [movement('m', '18:01'), movement('n', '18:02')] }),
      photo('a', '18:00:00'),
    );
    expect(passes[0]).toMatchObject({ movement: null });
    expect(passes[0]?.doubts.map(words).join()).toMatch(/Two movements were due/);
  });

  it('the second 4 minutes away leaves no doubt; one an hour ago is not taken for it', () => {
    const { passes } = passesOf(
      survey({ movements: [movement('m', '18:01'), movement('n', '18:04')] }),
      photo('a', '18:00:00'),
    );
    expect(passes[0]?.movement).toBe('m');
    expect(
      passesOf(survey({ movements: [movement('m', '17:00')] }), photo('a', '18:00:00')).passes[0]?.movement,
    ).toBeNull();
  });

  it('120 m from a spot is another place: asked, though the plan has a window there', () => {
    const chosen = [
      { spot: 'fence', path: 'rwy/27/arrival', from: '2026-06-21T15:00:00Z', to: '2026-06-21T17:00:00Z' },
    ];
    const away = [8.5116, 47.396] as const;
    const asked = passesOf(survey({ plan: { chosen } }), photo('a', '18:00:00', { position: away }));
    expect(asked.passes[0]).toMatchObject({ spot: null });
    expect(asked.passes[0]?.doubts.map(words).join()).toMatch(/Taken 12\d m from the nearest spot/);
    const planned = passesOf(survey({ plan: { chosen } }), photo('a', '18:00:00', { position: null }));
    expect(planned.passes[0]).toMatchObject({ spot: 'fence', path: 'rwy/27/arrival' });
  });

  it('an arrival or a departure: without a movement the path is asked, not guessed', () => {
    const { passes } = passesOf(survey(), photo('a', '18:00:00'));
    expect(passes[0]).toMatchObject({ spot: 'mound', path: null });
    expect(passes[0]?.doubts.map(words).join()).toMatch(/27 arrival, 27 departure/);
  });

  it('a type that no subject stands for is asked', () => {
    const { passes } = passesOf(
      survey({ movements: [movement('m', '18:01', 'arrival', { type: 'Q0XY' })] }),
      photo('a', '18:00:00'),
    );
    expect(passes[0]).toMatchObject({ subject: null, movement: 'm', path: 'rwy/27/arrival' });
    expect(passes[0]?.doubts.map(words).join()).toMatch(/Q0XY/);
  });

  it('the wind of that time says which end', () => {
    const weather = { follow: true, winds: [{ direction: 90, speedKt: 15 }] };
    const { passes } = passesOf(
      survey({ weather, movements: [movement('m', '18:01')] }),
      photo('a', '18:00:00'),
    );
    expect(passes[0]?.path).toBe('rwy/09/arrival');
  });
});

it('[L43] what was predicted is what the figures say of that instant', () => {
  const contents = survey();
  const at = Date.parse('2026-06-21T16:00:00Z');
  const pass = { spot: 'fence', path: 'rwy/27/arrival', subject: 'plain' };
  const expected = figuresFor(contents, at, null)
    .spots.find(({ id }) => id === 'fence')
    ?.paths.find(({ ref }) => ref.path === pass.path)?.best;
  expect(predictPass(pass, [at], contents, null)).toEqual([expected]);
  expect(predictPass({ ...pass, spot: null }, [at], contents, null)).toEqual([null]);
});
