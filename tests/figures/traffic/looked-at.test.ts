import { describe, expect, it } from 'vitest';
import { placeProblems } from '../../../src/figures/checks/place-checks';
import { learnFrom } from '../../../src/figures/flown/learn';
import { lookedAt, mostRecordedPaths } from '../../../src/figures/traffic/looked-at';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { readContents } from '../../../src/survey/contents';
import { contentsOf, opened, surveyText } from '../../support/contents';
import { arrivalOf24, madeFlight, madeRunway } from '../../support/made-flights';

const arrival = { glide: 3.2, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1 };
const points = arrivalOf24({ ...arrival, seed: 1 });
const flight = (id: string, fromSpots?: boolean, source = 'recorded') => {
  const made = madeFlight(id, points.slice(0, 40));
  return {
    ...made,
    properties: { ...made.properties, source, ...(fromSpots === undefined ? {} : { fromSpots }) },
  };
};
const season = (count: number, change: (i: number) => boolean | undefined = () => undefined) =>
  Array.from({ length: count }, (_, i) => flight(`f${i}`, change(i)));
const looked = (features: readonly unknown[]) => {
  const contents = contentsOf([madeRunway.feature, ...features]);
  const worked = pathsOf(contents, (kind) => kind === 'flight-path', null).map(({ ref }) => ref.path);
  expect(worked).toEqual(lookedAt(contents.flightPaths).map(({ id }) => id));
  return { worked, said: placeProblems(contents).map(({ reason }) => reason) };
};

describe('[L100] which recorded flights are looked at from the spots, as practitioners would argue', () => {
  it('three flights over the hill that one flew along with oneself: each of them', () => {
    expect(looked(season(3))).toEqual({ worked: ['f0', 'f1', 'f2'], said: [] });
  });

  it('a season of 500: a bounded number one by one, all of them as evidence, and it is said', () => {
    const { worked, said } = looked(season(500));
    expect(worked).toHaveLength(mostRecordedPaths);
    expect(said).toHaveLength(1);
    expect(said[0]).toContain(`${500 - mostRecordedPaths} more recorded flights`);
    const whole = Array.from({ length: 40 }, (_, i) =>
      madeFlight(`w${i}`, arrivalOf24({ ...arrival, seed: i })),
    );
    expect(learnFrom(contentsOf([madeRunway.feature, ...whole])).flown[0]?.flights).toHaveLength(40);
  });

  it('the odd one of that season, chosen by hand, goes before those that nobody chose', () => {
    const { worked } = looked(season(500, (i) => (i === 400 ? true : undefined)));
    expect(worked).toHaveLength(mostRecordedPaths);
    expect(worked.at(-1)).toBe('f400');
    expect(worked).not.toContain(`f${mostRecordedPaths - 1}`);
  });

  it('one that was put aside by hand is never looked at, is no matter of doubt, and teaches all the same', () => {
    const { worked, said } = looked(season(4, (i) => (i === 1 ? false : undefined)));
    expect(worked).toEqual(['f0', 'f2', 'f3']);
    expect(said).toEqual([]);
    const whole = Array.from({ length: 5 }, (_, i) => {
      const made = madeFlight(`w${i}`, arrivalOf24({ ...arrival, seed: i }));
      return { ...made, properties: { ...made.properties, fromSpots: false } };
    });
    expect(learnFrom(contentsOf([madeRunway.feature, ...whole])).flown[0]?.flights).toHaveLength(5);
  });

  it('more chosen than can be: the first of those', () => {
    const { worked, said } = looked(season(60, (i) => (i >= 10 ? true : undefined)));
    expect(worked[0]).toBe('f10');
    expect(worked).toHaveLength(mostRecordedPaths);
    expect(said[0]).toContain(`${60 - mostRecordedPaths} more recorded flights`);
  });

  it('what was drawn by hand always is', () => {
    const { worked } = looked([...season(500), flight('mine', undefined, 'drawn')]);
    expect(worked).toHaveLength(mostRecordedPaths + 1);
    expect(worked.at(-1)).toBe('mine');
  });
});

it('[L101] a choice that is none is a doubt, and the file keeps what it said', () => {
  const made = flight('f');
  const survey = opened(
    surveyText([{ ...made, properties: { ...made.properties, fromSpots: 'yes please' } }]),
  );
  const contents = readContents(survey);
  expect(contents.flightPaths[0]?.fromSpots).toBeNull();
  expect(contents.problems.map(({ reason }) => reason)).toEqual([
    expect.stringContaining('fromSpots') as string,
  ]);
  expect(survey.features[0]?.properties?.['fromSpots']).toBe('yes please');
});
