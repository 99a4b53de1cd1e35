import { cellOf, monthHours, speedClasses } from '../../src/survey/schema/wind-record';
import { plainSubject, spotFeature, surveyText } from '../support/contents';
import { arrivalOf24, madeFlight, madeRunway } from '../support/made-flights';

export const flownArrival = { glide: 3.4, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1 };

/** The invented site with its runway, a spot and what was flown. */
export const flownSurvey = (flown: readonly unknown[], more: object = {}): string =>
  surveyText([madeRunway.feature, spotFeature('Mound', [18.16, 50.918]), ...flown], {
    subjects: [plainSubject],
    site: { name: 'Tolverby', timeZone: 'Europe/Warsaw', elevation: 186 },
    ...more,
  });

/** Ten years of wind along 06, in every hour of every month. */
export const tenYearsOfWind = {
  from: '2015-01-01',
  to: '2024-12-31',
  timeZone: 'UTC',
  observations: 300 * monthHours,
  classes: speedClasses.map((kt) => ({ meanKt: kt, strongestKt: kt })),
  counts: Array.from({ length: monthHours }, () => [cellOf(4, 7), 300]),
};

/** Landings on 24, two a day. */
export const inJune = (days: number) =>
  Array.from({ length: 2 * days }, (_, i) =>
    madeFlight(
      `j${i}`,
      arrivalOf24({ ...flownArrival, seed: i + 1 }),
      true,
      Date.UTC(2026, 5, 1 + (i % days), 10),
    ),
  );
export const tenDaysInJune = inJune(10);
