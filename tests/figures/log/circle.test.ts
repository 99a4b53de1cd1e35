import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { learnFrom } from '../../../src/figures/flown/learn';
import { whatToTake } from '../../../src/figures/flown/what-to-take';
import { findPasses } from '../../../src/figures/log/find-passes';
import { frameOf } from '../../../src/figures/log/frame-time';
import { logEntryOf } from '../../../src/figures/log/log-entry-of';
import { measurePass } from '../../../src/figures/log/measure-pass';
import { measuredPairs } from '../../../src/figures/log/measured-pairs';
import { predictPass } from '../../../src/figures/log/predict';
import { whatItTeaches } from '../../../src/figures/log/what-it-teaches';
import { positionOf, type Vec3 } from '../../../src/figures/geometry/earth';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { readContents, type Contents } from '../../../src/survey/contents';
import { addFeature } from '../../../src/survey/edits/add-feature';
import { addLogEntries } from '../../../src/survey/edits/add-log-entries';
import { setRunwayEnd } from '../../../src/survey/edits/set-properties';
import { takeLearned } from '../../../src/survey/edits/take-learned';
import { unreadPhoto } from '../../../src/survey/photo-record';
import { opened } from '../../support/contents';
import { noise } from '../../support/made-flights';

/** The lay-by before 25, and what flies there in truth: steeper, and higher over the threshold, than the survey says. */
const spotId = 's7d1kc';
const runwayId = 'r8k2v4';
const truth = { glide: 3.6, crossingHeight: 22 };
const instant = Date.parse('2026-06-21T16:00:00Z');
const pass = { spot: spotId, path: `${runwayId}/25/arrival`, subject: 'A320' };

const sample = opened(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
const arrivalOf = (contents: Contents) => {
  const subject = contents.subjects.find(({ key }) => key === pass.subject) ?? contents.subject;
  const [path] = pathsOf(
    { ...contents, subject },
    (k, id, end) => k === 'arrival' && id === runwayId && end === 1,
    null,
  );
  if (!path) throw new Error('expected the arrival of 25');
  return path;
};
const centreAt = ({ samples: { centre } }: ReturnType<typeof arrivalOf>, i: number): Vec3 => [
  centre[3 * i] as number,
  centre[3 * i + 1] as number,
  centre[3 * i + 2] as number,
];

/** A recorded flight along a path: a point every 60 m, heights with a metre of noise. */
function recorded(survey: Contents, seed: number) {
  const path = arrivalOf(survey);
  const random = noise(seed);
  const elevation = survey.runways.find(({ id }) => id === runwayId)?.ends[1].elevation ?? NaN;
  const slope = ((survey.runways[0]?.ends[0].elevation ?? NaN) - elevation) / 2470;
  const points = Array.from({ length: Math.floor(path.samples.count / 3) }, (_, k) => k * 3);
  return {
    line: points.map((i) => positionOf(centreAt(path, i))),
    heights: points.map((i) => (path.samples.height[i] as number) + elevation + 240 * slope + random()),
    times: points.map((_, k) => new Date(instant + k * 900).toISOString()),
  };
}

it('[L67] the circle closed once on the sample site: a visit, its log, the correction, the figures after', () => {
  const before = readContents(sample);
  const flownAs = readContents(setRunwayEnd(sample, runwayId, 1, truth));
  const spot = before.spots.find(({ id }) => id === spotId);
  if (!spot) throw new Error('expected the lay-by');

  // The visit: one frame, side-on, by a pinhole camera on what really flew; its clock a minute slow.
  const { body } = before;
  const side = measurePass(
    pass,
    { part: 'fuselage', way: 'side-on', extent: 1000, focalLength: 200, pixelsPerMm: 100 },
    flownAs,
    null,
  );
  if (!side || typeof side.told === 'string') throw new Error('expected it to pass side-on');
  const subject = before.subjects.find(({ key }) => key === 'A320');
  const pixels = body.pixelsWide / body.sensorWidth;
  const extent = ((subject?.length ?? NaN) * 200 * pixels) / side.told.pathRange;
  const photo = {
    ...unreadPhoto('one.jpg', ''),
    doubts: [],
    clock: '2026-06-21T17:59:00',
    position: spot.position,
    focalLength: 200,
    rating: 4,
  };
  const planned = {
    ...before,
    movements: [{ ...movement, runway: '25' }],
  } as unknown as Contents;
  const { passes } = findPasses([frameOf(photo, 'Europe/Warsaw', 60)], planned, {
    arrivals: [],
    departures: [],
  });
  expect(passes[0]).toMatchObject({ ...pass, doubts: [] });

  // Its log.
  const marks = { part: 'fuselage', way: 'side-on', extent, focalLength: 200, pixelsPerMm: pixels } as const;
  const first = measurePass(pass, marks, before, null);
  if (!first || typeof first.told === 'string' || !passes[0]) throw new Error('expected a measure');
  const [predicted] = predictPass(pass, [instant], before, null);
  const entry = logEntryOf(passes[0], spot, predicted ?? null, {
    ...first.told,
    part: 'fuselage',
    way: 'side-on',
  });
  const logged = addLogEntries(sample, [entry]);
  expect(whatItTeaches(spotId, readContents(logged))?.visits).toBe(1);
  expect(measuredPairs('range', readContents(logged).logEntries)).toHaveLength(1);

  // The correction: eight recorded flights, one click.
  const withFlights = Array.from({ length: 8 }, (_, seed) => recorded(flownAs, seed + 1)).reduce(
    (survey, { line, ...rest }, i) =>
      addFeature(
        survey,
        `flight${i}`,
        'flight-path',
        { type: 'LineString', coordinates: line },
        { source: 'recorded', ...rest },
      ),
    logged,
  );
  const learned = learnFrom(readContents(withFlights));
  const take = whatToTake(readContents(withFlights), learned);
  if (!take) throw new Error('expected something to take');
  const after = readContents(takeLearned(withFlights, take));
  const end = after.runways.find(({ id }) => id === runwayId)?.ends[1];
  expect(Math.abs((end?.glide ?? NaN) - truth.glide)).toBeLessThan(0.05);
  expect(Math.abs((end?.crossingHeight ?? NaN) - truth.crossingHeight)).toBeLessThan(1);

  // The figures after: nearer to the truth than before, at the same instant.
  const focal = (contents: Contents) => predictPass(pass, [instant], contents, null)[0]?.focalLength ?? NaN;
  const [was, is, really] = [focal(before), focal(after), focal(flownAs)];
  expect(Math.abs(is - really)).toBeLessThan(Math.abs(was - really));
  expect(Math.abs(is / really - 1)).toBeLessThan(0.01);
  const second = measurePass(pass, marks, after, null);
  if (!second || typeof second.told === 'string') throw new Error('expected a measure');
  const off = ({ slantRange, pathRange }: typeof first.told & object) => Math.abs(slantRange - pathRange);
  expect(off(second.told)).toBeLessThan(off(first.told));
});

const movement = {
  id: 'm',
  date: '2026-06-21',
  time: '18:00',
  use: 'arrival',
  type: 'A320',
  subject: 'A320',
  flight: '',
  place: '',
  starred: false,
} as const;
