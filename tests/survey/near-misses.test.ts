import { describe, expect, it } from 'vitest';
import { figuresFor } from '../../src/figures/figures-for';
import { momentsOf } from '../../src/figures/light/moments';
import { readContents } from '../../src/survey/contents';
import { kinds, type Kind } from '../../src/survey/kinds';
import { openSurvey } from '../../src/survey/open';
import { saveSurvey } from '../../src/survey/save';
import { contentsOf, feature, opened, plainKit, plainSubject, surveyText } from '../support/contents';
import { thorough } from '../support/thorough';

type Value = unknown;
type Path = readonly (string | number)[];

/** Values that look right, are nearly right, or are of another sort. */
const nearMisses: readonly Value[] = [
  ...['2026-02-30', '2026-02-29', '0000-00-00', '2026-13-01', '99999-01-01', '-000001-01-01', '1582-10-10'],
  ...['24:00', '23:60', '25:61', '2026-02-30T10:00:00Z', '2026-06-21T25:00:00Z', '+275760-09-13T00:00:01Z'],
  ...['', ' ', '0', 'null', 'Europe/Tolverby', 'x'.repeat(400), '\u0000', '🛩'],
  ...[0, -0, -1, 1e-320, 0.1 + 0.2, 13, 361, 1e9, 1e308, -1e308, 2 ** 53],
  ...[null, true, false, [], {}, [null], [[]], [{}], { key: 1 }, [0, 1, 2], ['a', 'a']],
];

const [a, b, c] = [
  [18.17, 50.93],
  [18.19, 50.94],
  [18.18, 50.95],
] as const;
const coordinates = { Point: a, LineString: [a, b], Polygon: [[a, b, c, a]] } as const;

/** A feature of every kind and shape, with every member that the design names. */
const properties: Readonly<Record<Kind, object>> = {
  runway: {
    name: '07/25',
    width: 30,
    surface: 'asphalt',
    doubts: ['odd'],
    patterns: [
      {
        ...{ pattern: 'break', end: 0, side: 'left', height: 450, speed: 180 },
        ...{ aircraft: 2, spacing: 900, interval: 5, offset: 2, meets: 1000 },
      },
    ],
    ends: [
      {
        designator: '07',
        elevation: 100,
        displaced: 50,
        glide: 3,
        crossingHeight: 15,
        circuit: 'left',
        closed: false,
        flown: [
          {
            ...{ kind: 'arrival', flights: 5, from: 0, step: 20 },
            ...{ height: [[15, 16, 17]], offset: [[-2, 0, 2]] },
          },
        ],
      },
      { designator: '25' },
    ],
  },
  'standing-spot': {
    name: 'Spot',
    eyeHeight: 1.7,
    ground: 100,
    notes: 'n',
    access: {
      status: 'ask',
      contact: 'c',
      hours: 'h',
      ladder: true,
      parking: 'p',
      checkedOn: '2026-06-21',
      permission: {
        askedOn: '2026-06-01',
        answer: 'granted',
        by: 'x',
        from: '2026-06-01',
        until: '2026-07-01',
        reference: 'r',
      },
    },
  },
  'taxi-route': { name: 'A', heading: 90 },
  apron: { name: 'Apron', heading: 90 },
  'no-go': { name: 'N', reason: 'r' },
  obstacle: {
    name: 'O',
    height: 5,
    base: 100,
    sight: 'hedge',
    leafMonths: [5, 6],
    heightFrom: 'map',
    underside: 1,
    width: 2,
    standOn: true,
  },
  'flight-path': {
    name: 'F',
    heights: [300, 200],
    times: ['2026-06-21T17:00:00Z', '2026-06-21T17:00:20Z'],
    source: 'recorded',
    turnBank: 20,
    fromSpots: true,
  },
  'display-line': {
    name: 'Display',
    passes: ['level', 'topside'],
    height: 90,
    speed: 140,
    programme: [{ time: '13:05', to: '13:20', name: 'First', type: 'F-16', date: '2026-06-21' }],
    aircraft: 2,
    spacing: 20,
    late: { date: '2026-06-21', minutes: 20 },
  },
  'crowd-line': { name: 'Crowd' },
  helipad: { name: 'Pad', courses: [240], elevation: 101 },
  'winch-run': { name: 'Winch' },
  'ground-use': { name: 'G', use: 'road', access: 'public' },
  'log-entry': {
    ...{ time: '2026-06-21T17:00:00Z', frames: 3, spot: 's', path: 'p', subject: 'plain', camera: 'c' },
    ...{ name: 'n', kept: 3, note: 'n' },
    settings: { focalLength: 400, fNumber: 8, exposure: 0.001, iso: 400 },
    predicted: { focalLength: 380, light: 'front-lit', lightAngle: 30, slantRange: 700 },
    measured: {
      ...{ part: 'length', way: 'coming', station: 500, slantRange: 700, slantRangeError: 20 },
      ...{ height: 40, heightError: 5, pathRange: 690, pathHeight: 41 },
    },
  },
};
const features = (Object.keys(kinds) as Kind[]).flatMap((kind) =>
  kinds[kind].shapes.map((shape) =>
    feature(`${kind} ${shape}`, kind, shape, coordinates[shape], { ...properties[kind] }),
  ),
);
const sunside = {
  version: 1,
  site: {
    name: 'Tolverby',
    icao: null,
    elevation: 100,
    military: false,
    timeZone: 'Europe/Berlin',
    reference: [18.17, 50.93],
    frequencies: [{ use: 'tower', name: 'x', mhz: 118.5 }],
  },
  kit: plainKit,
  subjects: [
    {
      ...plainSubject,
      ...{ tailSpan: 9, wing: 'low', engines: 2, approachAngle: 3, crossingHeight: 15, approachAttitude: 3 },
      ...{ climbAttitude: 8, rpm: 1000, blades: 4, seaplane: false },
    },
  ],
  current: { subject: 'plain', body: 'full', lenses: ['a'] },
  moments: {
    date: '2026-06-21',
    a: '08:00',
    b: '18:00',
    aRule: { event: 'sunrise', minutes: 30 },
    bRule: null,
  },
  sky: [{ date: '2026-06-21', direct: 0.5, visibility: 8000 }],
  rules: {
    ...{ photography: 'ask', radio: 'allowed', ladders: 'ask', tripods: 'allowed', office: 'o', phone: '1' },
    ...{ email: 'e', hours: 'Mo-Fr 09:00-17:00', notes: 'n', checkedOn: '2026-06-21', source: 's' },
  },
  flow: {
    configurations: [
      {
        name: 'West',
        arrivals: [{ runway: 'runway LineString', end: 0 }],
        departures: [],
        hours: '06:00-22:00',
        maxTailwindKt: 5,
        maxCrosswindKt: 15,
      },
    ],
    calm: 'West',
    sharesFrom: 'winds',
  },
  weather: {
    text: '24010KT',
    entered: '2026-06-21T06:00:00Z',
    source: 'typed',
    follow: true,
    observed: '2026-06-21T06:00:00Z',
    ...{ magnetic: false, station: 'EDDF', issued: '2026-06-21T05:00:00Z', remarks: ['r'] },
    ...{ forecastFrom: '2026-06-21T06:00:00Z', forecastTo: '2026-06-21T20:00:00Z' },
    winds: [
      {
        ...{ from: '2026-06-21T06:00:00Z', to: '2026-06-21T20:00:00Z', direction: 240, speedKt: 10 },
        ...{ gustKt: 20, variesFrom: 200, variesTo: 280, likelihood: 'throughout', probability: 30 },
      },
    ],
    skies: [
      {
        ...{ from: '2026-06-21T06:00:00Z', to: '2026-06-21T20:00:00Z', direct: 0.8, visibility: 8000 },
        ...{ likelihood: 'chance', probability: 30 },
      },
    ],
  },
  movements: [
    {
      ...{ id: 'm', date: '2026-06-21', time: '14:25', use: 'arrival', type: 'A', runway: '07' },
      ...{ subject: 'plain', flight: 'X1', place: 'p', starred: true },
    },
  ],
  plan: {
    moves: [{ between: ['a', 'b'], minutes: 4 }],
    by: 'foot',
    chosen: [{ spot: 'a', path: 'p', from: '2026-06-21T17:00:00Z', to: '2026-06-21T18:00:00Z' }],
  },
  windRecord: {
    source: 'x',
    from: '2021-01-01',
    to: '2021-12-31',
    timeZone: 'UTC',
    observations: 1,
    unread: 0,
    classes: [],
    counts: [],
  },
};
/** Members of a reading, by path, that what was read has nothing of. */
function unsaid(read: Value, given: Value, at = ''): string[] {
  if (typeof read !== 'object' || read === null) return [];
  const has = typeof given === 'object' && given !== null ? (given as Record<string, Value>) : {};
  return Object.entries(read).flatMap(([key, value]) =>
    Object.hasOwn(has, key) ? unsaid(value, has[key], `${at}.${key}`) : [`${at}.${key}`],
  );
}
const whole = { type: 'FeatureCollection', sunside, features };

/** Every place in a value, lists and objects included. */
function placesIn(value: Value, at: Path = []): Path[] {
  const inside =
    typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, member]) =>
          placesIn(member, [...at, Array.isArray(value) ? Number(key) : key]),
        )
      : [];
  return at.length === 0 ? inside : [at, ...inside];
}

/** The value with another one at a place. */
function withAt(value: Value, [key, ...rest]: Path, put: Value): Value {
  if (key === undefined) return put;
  const member = (value as Record<string | number, Value>)[key];
  const changed = withAt(member, rest, put);
  return Array.isArray(value)
    ? (value as readonly Value[]).with(key as number, changed)
    : { ...(value as object), [key]: changed };
}

/** The engine's own words and valibot's: none of them is for a photographer. */
const rawWords = /Invalid|Expected|undefined|NaN|received|\[object|null is used|\[\] is used|"" is used/;

/** What is put into one place: in `npm test` a third of the values, the next places taking the other thirds in turn. */
const missesAt = (nth: number) => nearMisses.filter((_, i) => thorough || i % 3 === nth % 3);

const now = Date.UTC(2026, 5, 21, 12);
let accepted = 0;

/** `timed`: whether what was put in may bear upon the moments, which cost as much as all the rest. */
function holds(text: string, place: string, timed: boolean): void {
  const survey = opened(text);
  const contents = readContents(survey);
  let instant = now;
  if (timed) {
    const { a, day } = momentsOf(contents, now);
    expect(Number.isFinite(a) && day.to > day.from, place).toBe(true);
    instant = a;
  }
  for (const { reason } of contents.problems) expect(reason, place).not.toMatch(rawWords);
  // What a reader doubts it replaces by the default, whose figures the accepted values have; a path is dear, so that
  // `npm test` computes those of every ninth value that is accepted, and `npm run thorough` of all.
  const isAccepted = contents.problems.every(({ used }) => !used);
  if (isAccepted && (thorough || accepted++ % 9 === 0))
    for (const { reason } of figuresFor(contents, instant, null).problems)
      expect(reason, place).not.toMatch(rawWords);
  const saved = saveSurvey(survey);
  expect(saveSurvey(opened(saved)), place).toBe(saved);
}

describe('[S320] near misses: nothing throws, nothing is lost, every message is plain', () => {
  const small = { ...whole, features: [] };
  const members = placesIn(sunside).map((place) => ['sunside', ...place] as Path);
  it.each([...new Set(members.map(([, member]) => String(member)))])('in sunside.%s', (member) => {
    for (const [nth, place] of members.filter(([, m]) => m === member).entries())
      for (const value of missesAt(nth))
        holds(
          JSON.stringify(withAt(small, place, value)),
          `${place.join('.')} = ${JSON.stringify(value)}`,
          place[1] === 'site' || place[1] === 'moments',
        );
  });

  it.each(features.map(({ id }) => id))('in a %s', (id) => {
    const one = features.find((f) => f.id === id);
    for (const [nth, place] of placesIn({
      properties: one?.properties,
      geometry: one?.geometry,
    }).entries())
      for (const value of missesAt(nth)) {
        // Of a kind that is not there nothing is read.
        if (place.at(-1) === 'kind') continue;
        holds(
          surveyText([withAt(one, place, value)], { site: sunside.site, kit: plainKit }),
          `${id} ${place.join('.')} = ${JSON.stringify(value)}`,
          false,
        );
      }
  });
});

describe('[S1080] every member that a reader reads is among those that are missed', () => {
  /** Where a feature lies, and the other end of a runway, which is read as the first. */
  const own = /^\.(id|line|rings|position|ends\.1)\b/;
  const contents = readContents(opened(JSON.stringify(whole)));
  it.each(Object.keys(kinds) as Kind[])('in a %s', (kind) => {
    const [read] = contents[kinds[kind].list] as readonly Value[];
    expect(unsaid(read, properties[kind]).filter((at) => !own.test(at))).toEqual([]);
  });
  it.each(['site', 'moments', 'rules', 'weather', 'movements', 'plan', 'sky', 'subjects'] as const)(
    'in sunside.%s',
    (member) => {
      const left = unsaid(contents[member], sunside[member]);
      expect(left.filter((at) => at !== '.timeZoneFrom')).toEqual([]);
    },
  );
});

describe('[S321] what is doubtful says where it is, what it is and what is done', () => {
  const reasons = (members: object) => contentsOf([], members as never).problems.map((p) => p.reason);
  it.each([
    [
      { moments: { date: '2026-02-30' } },
      'sunside.moments.date: expected a date of the calendar like 2026-06-21, from 1900 to 2199, got "2026-02-30"; it is left out',
    ],
    [
      { movements: [{ id: 'm', time: '25:00', use: 'arrival' }] },
      'sunside.movements.0.time: expected a time of day like 18:30, got "25:00"',
    ],
    [
      { movements: [{ id: 'm', use: 'arrival' }] },
      'sunside.movements.0.time: expected a movement: {id, time, use}, got nothing',
    ],
    [
      { plan: { chosen: [{ spot: 'a', path: 'p', from: '2026-02-30T10:00:00Z', to: 'x' }] } },
      'sunside.plan.chosen.0.from: expected an instant that exists, like 2026-06-21T17:00:00Z, got "2026-02-30T10:00:00Z"; nothing of the list is used',
    ],
    [
      { subjects: [{ ...plainSubject, approachSpeed: undefined }] },
      /^sunside\.subjects\.0\.approachSpeed: expected a number from 1 to 400 m\/s, got nothing; \d+ is used instead, as of the .*, which is nearest in size$/,
    ],
    [
      { subjects: [{ ...plainSubject, span: undefined }] },
      'sunside.subjects.0.span: expected a number from 0.5 to 150 m, got nothing',
    ],
  ])('%j', (members, reason) => {
    expect(reasons(members)).toContainEqual(
      typeof reason === 'string' ? reason : expect.stringMatching(reason),
    );
  });

  it('a subject without performance is not set aside, and takes that of its propulsion and size', () => {
    const bare = { key: 'b', length: 9, span: 11, height: 3, propulsion: 'propeller' };
    const { subject } = contentsOf([], { subjects: [bare] });
    expect(subject).toMatchObject(bare);
    expect(subject.approachSpeed).toBeGreaterThan(20);
    expect(subject.approachSpeed).toBeLessThan(50);
    const jet = contentsOf([], { subjects: [{ ...bare, propulsion: 'jet', span: 60, length: 70 }] }).subject;
    expect(jet.approachSpeed).toBeGreaterThan(60);
  });
});

it('[S322] a number as id is listed', () => {
  const result = openSurvey(JSON.stringify({ ...whole, features: [{ ...features[0], id: 7 }] }));
  expect(result).toMatchObject({ ok: true, survey: { features: [{ id: '7' }] } });
  expect(result.ok && result.problems).toEqual([
    { id: '7', used: true, reason: 'features.0.id: expected text, got the number 7; it is "7" now' },
  ]);
});
