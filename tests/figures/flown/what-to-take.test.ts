import { describe, expect, it } from 'vitest';
import { learnFrom } from '../../../src/figures/flown/learn';
import { whatToTake } from '../../../src/figures/flown/what-to-take';
import { readContents } from '../../../src/survey/contents';
import { takeLearned } from '../../../src/survey/edits/take-learned';
import { opened, plainSubject, surveyText } from '../../support/contents';
import { arrivalOf24, departureOf06, madeFlight, madeRunway } from '../../support/made-flights';

const arrival = { glide: 3.4, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1 };
const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 1 };
const many = (count: number, make: (i: number) => unknown) =>
  Array.from({ length: count }, (_, i) => make(i));
const arrivals = (count: number, change: Partial<typeof arrival> = {}) =>
  many(count, (i) => madeFlight(`a${i}`, arrivalOf24({ ...arrival, ...change, seed: i + 1 })));
const departures = many(6, (i) => madeFlight(`d${i}`, departureOf06({ ...departure, seed: i + 1 })));

const subjects = [
  plainSubject,
  { ...plainSubject, key: 'steep', name: 'Steep', approachAngle: 5.5, crossingHeight: 12 },
];
const surveyOf = (...flights: readonly unknown[]) =>
  opened(surveyText([madeRunway.feature, ...flights], { subjects, current: { subject: 'plain' } }));
const takeOf = (survey: ReturnType<typeof surveyOf>) => {
  const contents = readContents(survey);
  return whatToTake(contents, learnFrom(contents));
};

describe('[L24] the circle closes: what really flies goes into the survey', () => {
  const survey = surveyOf(...arrivals(9), ...departures);
  const take = takeOf(survey);
  if (!take) throw new Error('expected something to take');
  const after = readContents(takeLearned(survey, take));

  it('the end that was used gets glide and height of the wheels, the other end keeps its own', () => {
    expect(after.runways[0]?.ends[1].glide).toBeCloseTo(3.4, 1);
    expect(Math.abs((after.runways[0]?.ends[1].crossingHeight ?? NaN) - 16)).toBeLessThan(1);
    expect(after.runways[0]?.ends[1].displaced).toBe(300);
    // Its departures leave glide and crossing height as they are.
    expect(after.runways[0]?.ends[0]).toMatchObject({
      ...readContents(survey).runways[0]?.ends[0],
      flown: [{ kind: 'departure' }],
    });
  });

  it('the current subject gets run and climb, other subjects keep theirs', () => {
    expect(Math.abs(after.subject.groundRun - 1280)).toBeLessThan(40);
    expect(after.subject.climbGradient).toBeCloseTo(0.09, 2);
    expect(after.subject).toMatchObject({ key: 'plain', name: 'Plain', landingRun: 900 });
    expect(after.subjects[1]?.groundRun).toBe(1500);
    expect(after.problems).toEqual([]);
  });

  it('a second time changes nothing, since flights are what they are', () => {
    expect(takeOf(takeLearned(survey, take))).toEqual(take);
  });
});

describe('[L25] what practitioners would argue about', () => {
  it('a subject with its own approach angle does not follow the end, and that is said', () => {
    expect(takeOf(surveyOf(...arrivals(6)))?.overriding).toMatchObject([
      { name: 'Steep', approachAngle: 5.5, crossingHeight: 12 },
    ]);
    expect(takeOf(surveyOf(...departures))?.overriding).toEqual([]);
  });

  it('a recorder that is 8 m too high says nothing wrong of the wheels', () => {
    const high = many(6, (i) =>
      madeFlight(
        `h${i}`,
        arrivalOf24({ ...arrival, noise: 0, seed: i }).map((p) => ({ ...p, height: p.height + 8 })),
      ),
    );
    expect(takeOf(surveyOf(...high))?.ends[0]?.crossingHeight).toBeCloseTo(16, 0);
  });

  it('four flights are nothing to go by', () => {
    expect(takeOf(surveyOf(...arrivals(4)))).toBeNull();
  });

  it('a glide that no field can hold leaves the end as it is', () => {
    const flat = surveyOf(...arrivals(6, { glide: 0.6, crossing: 40, noise: 0 }));
    const take = takeOf(flat);
    expect(take?.ends[0]?.glide ?? null).toBeNull();
  });
});
