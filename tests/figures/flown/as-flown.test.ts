import { describe, expect, it } from 'vitest';
import { bandAt } from '../../../src/figures/flown/band-at';
import { focalAsFlown, spreadAt } from '../../../src/figures/flown/as-flown';
import { learnFrom } from '../../../src/figures/flown/learn';
import { passedOver } from '../../../src/figures/flown/passed-over';
import { whatToTake } from '../../../src/figures/flown/what-to-take';
import { outlookOf } from '../../../src/figures/outlook';
import { eyeAt } from '../../../src/figures/spot/eye-at';
import { inspectPath } from '../../../src/figures/spot/inspect-path';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { flownBands } from '../../../src/map/overlays/flown-bands';
import { readContents } from '../../../src/survey/contents';
import { takeLearned } from '../../../src/survey/edits/take-learned';
import {
  contentsOf,
  feature,
  opened,
  plainKit,
  plainSubject,
  spotFeature,
  surveyText,
} from '../../support/contents';
import { arrivalOf24, departureOf06, madeFlight, madeRunway } from '../../support/made-flights';

// Eleven arrivals without noise, each 4 m farther to the right than the one before: -20 to 20 m.
const flights = Array.from({ length: 11 }, (_, i) =>
  madeFlight(
    `a${i}`,
    arrivalOf24({ glide: 3.4, crossing: 21, speed: 66, offset: -20 + 4 * i, rolling: 5, noise: 0, seed: 1 }),
  ),
);
const survey = opened(
  surveyText([madeRunway.feature, spotFeature('mound', [18.2, 50.93], { ground: 180 }), ...flights], {
    subjects: [plainSubject],
    kit: plainKit,
    site: { elevation: 186 },
  }),
);
const before = readContents(survey);
const take = whatToTake(before, learnFrom(before));
if (!take) throw new Error('expected something to take');
const contents = readContents(takeLearned(survey, take));
const path = (of = contents) => {
  const [found] = pathsOf(of, (kind, _, end) => kind === 'arrival' && end === 1, null);
  if (!found) throw new Error('expected the arrival of 24');
  return found;
};

describe('[F730] what was flown goes into the survey, and figures carry its spread', () => {
  it('bands are kept with the end, read back without a doubt', () => {
    const [band] = contents.runways[0]?.ends[1].flown ?? [];
    expect(band).toMatchObject({ kind: 'arrival', flights: 11, step: 100 });
    expect(contents.problems).toEqual([]);
    const there = band && bandAt(band, 2050);
    // tan 3.4 degrees of 2,050 m above 21 m, and the tenth and nineteenth of twenty equal steps.
    expect(there?.height[1]).toBeCloseTo(21 + 2050 * Math.tan((3.4 * Math.PI) / 180), 0);
    expect(there?.offset?.[0]).toBeCloseTo(-16, 0);
    expect(there?.offset?.[2]).toBeCloseTo(16, 0);
    expect(band && bandAt(band, 90_000)).toBeNull();
  });

  it('the focal length of nearer and farther flights is as their slant range', () => {
    const outlook = outlookOf(contents, null);
    const [spot] = contents.spots;
    if (!spot) throw new Error('expected a spot');
    const sample = inspectPath(spot, path(), 1500, outlook, Date.UTC(2026, 5, 21, 12));
    const spread = spreadAt(path().ref && path(), sample, contents, null);
    if (!spread || sample.focalLength === null) throw new Error('expected a spread');
    // The path is the median now: to the precision with which glide and crossing height are kept.
    expect(Math.abs(spread.up[1])).toBeLessThan(1);
    const range = focalAsFlown(spread, path(), sample, eyeAt(spot, 180));
    if (!range) throw new Error('expected a range');
    expect(range.shortest).toBeLessThan(sample.focalLength);
    expect(range.longest).toBeGreaterThan(sample.focalLength);
    // 16 m to each side of a flight seen from the side.
    const side =
      Math.sin(((sample.aspect ?? NaN) * Math.PI) / 180) *
      Math.cos(((sample.elevation ?? NaN) * Math.PI) / 180);
    const expected = (2 * 16 * side * sample.focalLength) / sample.slantRange;
    expect(Math.abs((range.longest - range.shortest) / expected - 1)).toBeLessThan(0.1);
  });

  it('before anything was taken there is none', () => {
    expect(spreadAt(path(before), { station: 1500, height: 100 }, before, null)).toBeNull();
  });

  it('on the map it is one shape beside each path that is drawn', () => {
    const [band, ...more] = flownBands(contents.runways, 186, [path()]);
    expect(more).toEqual([]);
    expect(band?.geometry.type).toBe('Polygon');
    expect(flownBands(before.runways, 186, [path(before)])).toEqual([]);
  });
});

describe('[F731] a recorded flight does not lead where its end is not in use', () => {
  const of = (arrivals: readonly { runway: string; end: 0 | 1 }[], field = before) =>
    passedOver(field, { arrivals, departures: [{ runway: 'r1', end: 0 }] }, null);

  it('arrivals of 24 while 06 is in use; not while 24 is', () => {
    expect(of([{ runway: 'r1', end: 0 }]).size).toBe(11);
    expect(of([{ runway: 'r1', end: 1 }]).size).toBe(0);
  });

  it('nor where the path of its end has been learned from such flights: that is what comes again', () => {
    expect(of([{ runway: 'r1', end: 1 }], contents).size).toBe(11);
  });

  it('what was learned of arrivals says nothing of a departure', () => {
    const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 0, seed: 1 };
    const left = madeFlight('d', departureOf06(departure));
    const both = opened(surveyText([madeRunway.feature, ...flights, left], { site: { elevation: 186 } }));
    const over = of([{ runway: 'r1', end: 1 }], readContents(takeLearned(both, take)));
    expect(over.size).toBe(11);
    expect(over.has('d')).toBe(false);
  });

  it('one that used no runway, and one that somebody drew, are nobody’s end', () => {
    const line = [
      [18.1, 50.9],
      [18.2, 50.95],
    ];
    const crossing = feature('x', 'flight-path', 'LineString', line, {
      source: 'recorded',
      heights: [900, 900],
    });
    const drawn = feature('d', 'flight-path', 'LineString', line, { heights: [900, 900] });
    const other = contentsOf([madeRunway.feature, crossing, drawn]);
    expect(passedOver(other, { arrivals: [], departures: [] }, null).size).toBe(0);
  });
});
