import { describe, expect, it } from 'vitest';
import { setMomentRule, setMoments } from '../../../src/survey/edits/set-members';
import { setPermission } from '../../../src/survey/edits/set-permission';
import { setRules } from '../../../src/survey/edits/set-rules';
import { setSky } from '../../../src/survey/edits/set-sky';
import { readContents } from '../../../src/survey/contents';
import { contentsOf, feature, opened, plainSubject, spotFeature, surveyText } from '../../support/contents';

const empty = () => opened(surveyText([]));
const reasons = (contents: { readonly problems: readonly { readonly reason: string }[] }) =>
  contents.problems.map((problem) => problem.reason);

describe('[S310] moments that follow the sun', () => {
  it('are read, and a typed time removes the rule', () => {
    const survey = setMomentRule(empty(), 'b', { event: 'sunset', minutes: -90 });
    expect(readContents(survey).moments).toMatchObject({
      aRule: null,
      bRule: { event: 'sunset', minutes: -90 },
    });
    expect(readContents(setMoments(survey, { a: '07:00' })).moments.bRule).not.toBeNull();
    expect(readContents(setMoments(survey, { b: '19:00' })).moments).toMatchObject({
      b: '19:00',
      bRule: null,
    });
    expect(setMomentRule(survey, 'b', null).sunside['moments']).toEqual({});
  });

  it('an unknown event or a day of minutes is a doubt', () => {
    const contents = contentsOf([], {
      moments: { aRule: { event: 'dusk', minutes: 0 }, bRule: { event: 'noon', minutes: 9000 } },
    });
    expect(contents.moments).toMatchObject({ aRule: null, bRule: null });
    expect(reasons(contents)).toEqual([
      'sunside.moments.aRule.event: expected one of sunrise, sunset, noon, got "dusk"; it is left out',
      'sunside.moments.bRule.minutes: expected minutes from -720 to 720, got 9000; it is left out',
    ]);
  });
});

describe('[S311] the sky of a day', () => {
  it('is read with its defaults; a day that is not there is set aside', () => {
    const contents = contentsOf([], {
      sky: [
        { date: '2026-06-21', direct: 0.35, visibility: 6000 },
        { date: '2026-06-22', direct: 1.5 },
        { date: '2026-02-30', direct: 0 },
        { date: '2026-06-21', direct: 0 },
      ],
    });
    expect(contents.sky).toEqual([
      { date: '2026-06-21', direct: 0.35, visibility: 6000 },
      { date: '2026-06-22', direct: 1, visibility: 10_000 },
    ]);
    expect(reasons(contents)).toEqual([
      'sunside.sky.1.direct: expected a number from 0 to 1, got 1.5; 1 is used instead',
      'sunside.sky.2.date: expected a date of the calendar like 2026-06-21, from 1900 to 2199, got "2026-02-30"',
      'sunside.sky.3.date: 2026-06-21 is there already; the first one is used',
    ]);
  });

  it('is kept in the order of the days, and forgotten without a trace', () => {
    const later = setSky(empty(), '2026-06-22', { direct: 0, visibility: 4000 });
    const both = setSky(later, '2026-06-21', { direct: 0.8, visibility: 10_000 });
    expect(readContents(both).sky.map((day) => day.date)).toEqual(['2026-06-21', '2026-06-22']);
    const changed = setSky(both, '2026-06-21', { direct: 0.5, visibility: 10_000 });
    expect(readContents(changed).sky.map((day) => day.direct)).toEqual([0.5, 0]);
    const none = setSky(setSky(changed, '2026-06-21', null), '2026-06-22', null);
    expect(none.sunside).not.toHaveProperty('sky');
  });
});

describe('[S312] what the field allows', () => {
  it('is unknown until somebody says so', () => {
    expect(readContents(empty()).rules).toMatchObject({
      photography: 'unknown',
      ladders: 'unknown',
      phone: null,
    });
    const survey = setRules(empty(), { photography: 'ask', checkedOn: '2026-05-01' });
    expect(readContents(survey).rules).toMatchObject({ photography: 'ask', checkedOn: '2026-05-01' });
    const none = setRules(survey, { photography: undefined, checkedOn: undefined });
    expect(none.sunside).not.toHaveProperty('rules');
    const odd = contentsOf([], { rules: { tripods: 'yes', checkedOn: '2026-02-30' } });
    expect(odd.rules).toMatchObject({ tripods: 'unknown', checkedOn: null });
    expect(odd.problems).toHaveLength(2);
  });
});

describe('[S313] a permission', () => {
  const at = [18.17, 50.93] as const;
  it('is null where nobody asked, waits until answered, and leaves the rest of the record alone', () => {
    const survey = opened(
      surveyText([spotFeature('s', at, { access: { status: 'ask', contact: 'Tower' } })]),
    );
    expect(readContents(survey).spots[0]?.access.permission).toBeNull();
    const asked = setPermission(survey, 's', { askedOn: '2026-06-01' });
    expect(readContents(asked).spots[0]?.access).toMatchObject({
      status: 'ask',
      contact: 'Tower',
      permission: { askedOn: '2026-06-01', answer: 'waiting', until: null },
    });
    const granted = setPermission(asked, 's', { answer: 'granted', until: '2026-06-30' });
    expect(readContents(granted).spots[0]?.access.permission).toMatchObject({
      askedOn: '2026-06-01',
      answer: 'granted',
    });
    expect(setPermission(granted, 's', null).features[0]?.properties?.['access']).toEqual({
      status: 'ask',
      contact: 'Tower',
    });
  });

  it('that ends before it begins is a doubt', () => {
    const permission = { answer: 'granted', from: '2026-07-01', until: '2026-06-01' };
    expect(reasons(contentsOf([spotFeature('s', at, { access: { permission } })]))).toContain(
      'access.permission.until: 2026-06-01 lies before its first day, 2026-07-01; it covers no day',
    );
  });
});

describe('[S314] smaller members', () => {
  const line = [
    [18.17, 50.93],
    [18.18, 50.93],
  ];
  it('tailplanes, new uses of the ground, and what one may stand on', () => {
    const contents = contentsOf(
      [
        feature('w', 'ground-use', 'LineString', line, { use: 'rail' }),
        feature('x', 'ground-use', 'LineString', line, { use: 'moor' }),
        feature('d', 'obstacle', 'LineString', line, { standOn: true }),
      ],
      {
        subjects: [
          { ...plainSubject, tailSpan: 10.5 },
          { ...plainSubject, key: 'b' },
        ],
      },
    );
    expect(contents.subjects.map((s) => s.tailSpan)).toEqual([10.5, null]);
    expect(contents.groundUses.map((g) => g.use)).toEqual(['rail', 'road']);
    expect(contents.obstacles[0]?.standOn).toBe(true);
    expect(reasons(contents)).toContain(
      'use: expected one of road, path, parking, green, water, rail, motorway, aerodrome, building, got "moor"; "road" is used instead',
    );
  });
});
