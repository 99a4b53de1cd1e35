import { expect, it } from 'vitest';
import { zoneFinder } from '../../src/imports/time-zone';
import { readContents } from '../../src/survey/contents';
import { opened, spotFeature, surveyText } from '../support/contents';

const spot = spotFeature('s', [18.17, 50.93]);
const read = (site: object, features: readonly unknown[] = [spot], zoneAt = () => 'Europe/Warsaw') => {
  const { site: told, problems } = readContents(opened(surveyText(features, { site })), zoneAt);
  return { zone: told.timeZone, from: told.timeZoneFrom, said: problems.map((p) => p.reason) };
};

it('[S330] a stated zone goes', () => {
  expect(read({ timeZone: 'Asia/Tokyo' })).toEqual({ zone: 'Asia/Tokyo', from: 'stated', said: [] });
});

it('[S331] without one the clock is that of the place, and that is said', () => {
  expect(read({})).toEqual({
    zone: 'Europe/Warsaw',
    from: 'place',
    said: [
      'sunside.site.timeZone: expected a time zone, got nothing; Europe/Warsaw, where the airfield lies, is used',
    ],
  });
});

it('[S332] so it is where the stated one does not exist', () => {
  expect(read({ timeZone: 'Europe/Tolverby' })).toMatchObject({
    zone: 'Europe/Warsaw',
    said: [
      'sunside.site.timeZone: there is no time zone "Europe/Tolverby"; Europe/Warsaw, where the airfield lies, is used instead',
    ],
  });
});

it('[S333] an empty survey lies nowhere: UTC, and nothing to say yet', () => {
  expect(read({}, [])).toEqual({ zone: 'UTC', from: 'nowhere', said: [] });
});

it('[S334] while the borders are not there, UTC stands in; without them for good, the longitude does', async () => {
  expect(readContents(opened(surveyText([spot]))).site).toMatchObject({
    timeZone: 'UTC',
    timeZoneFrom: 'nowhere',
  });
  const borders = await zoneFinder();
  expect(borders([18.17, 50.93])).toBe('Europe/Warsaw');
  const without = await zoneFinder(() => Promise.reject(new Error('offline')));
  expect(without([18.17, 50.93])).toBe('Etc/GMT-1');
});
