import { describe, test } from 'vitest';
import { destination } from '../../src/figures/geometry/earth';
import { arrivalProfile } from '../../src/figures/traffic/arrival';
import { departureState } from '../../src/figures/traffic/departure';
import { endGeometry } from '../../src/figures/traffic/runway-geometry';
import { contentsOf, plainSubject, runwayFeature } from '../support/contents';
import { PublishedTable } from '../support/tolerance';
import {
  departureRows,
  departureSource,
  descentExact,
  descentExactSource,
  descentRows,
  descentSource,
  descentSpeeds,
  pathHeightsRows,
  pathHeightsSource,
} from './fixtures/traffic';
import { tolerances } from './tolerances';

const foot = 0.3048;
const nauticalMile = 1852;
const knot = nauticalMile / 3600;
const threshold = [8.56, 47.45] as const;

/** One end of a runway of 2500 m, 432 m above the sea, with a subject that has no word of its own. */
function endWith(end: Record<string, unknown>, subject: Record<string, unknown> = {}) {
  const ends = [{ designator: '14', elevation: 432, ...end }, { elevation: 432 }] as const;
  const contents = contentsOf([runwayFeature('rwy', threshold, destination(threshold, 137, 2500), ends)], {
    subjects: [{ ...plainSubject, ...subject }],
  });
  const geometry = contents.runways[0] && endGeometry(contents.runways[0], 0, 0);
  if (!geometry) throw new Error('expected a runway');
  return { geometry, subject: contents.subject };
}

const glideSlope = (glide: number) => {
  const { geometry, subject } = endWith({ glide });
  return arrivalProfile(geometry, subject).glideSlope;
};
const feetPerMinute = (knots: number, slope: number) => ((knots * knot * slope) / foot) * 60;

describe('arrivals and departures against published heights', () => {
  test('[R30] the FAA rate of descent table', () => {
    const table = new PublishedTable(`rate of descent (${descentSource})`, {
      rate: tolerances.descentPublished,
    });
    for (const { angle, rates } of descentRows) {
      rates.forEach((rate, i) => {
        table.row(`${angle} degrees at ${descentSpeeds[i]} kt`);
        table.near('rate', feetPerMinute(descentSpeeds[i] ?? NaN, glideSlope(angle)), rate);
      });
    }
    table.close(33);
    const exact = new PublishedTable(`rate of descent, exact (${descentExactSource})`, {
      rate: tolerances.descentExact,
    });
    descentExact.forEach((rate, i) => {
      exact.row(`3 degrees at ${descentSpeeds[i]} kt`);
      exact.near('rate', feetPerMinute(descentSpeeds[i] ?? NaN, glideSlope(3)), rate);
    });
    exact.close(11);
  });

  test('[R31] heights on a 3 degree path, 50 ft over the threshold, by default', () => {
    const table = new PublishedTable(`heights on the glide path (${pathHeightsSource})`, {
      feet: tolerances.heightFeet,
      metres: tolerances.heightMetres,
    });
    const { geometry, subject } = endWith({});
    const { wheelsAt } = arrivalProfile(geometry, subject);
    for (const { nm, feet, metres } of pathHeightsRows) {
      table.row(`${nm} NM`);
      const above = wheelsAt(nm * nauticalMile) - 432;
      table.near('feet', above / foot, feet);
      table.near('metres', above, metres);
    }
    table.close(10);
  });

  test('[R32] heights on the obstacle minima of departures', () => {
    const table = new PublishedTable(`departure heights (${departureSource})`, {
      procedure: tolerances.heightFeet,
      diverse: tolerances.heightFeet,
      helicopter: tolerances.heightFeet,
    });
    /** Feet above the far end, `nm` past it, for a climb that is `over` ft above it there. */
    const above = (climbGradient: number, over: number, nm: number) => {
      const groundRun = 2500 - (over * foot) / climbGradient;
      const { geometry, subject } = endWith({}, { climbGradient, groundRun });
      const centre = departureState(geometry, subject, geometry.length + nm * nauticalMile).height;
      return (centre - subject.height / 2) / foot;
    };
    for (const row of departureRows) {
      table.row(`${row.nm} NM`);
      table.near('procedure', above(0.033, 16, row.nm), row.procedure);
      table.near('diverse', above((200 * foot) / nauticalMile, 35, row.nm), row.diverse);
      table.near('helicopter', above(0.05, 16, row.nm), row.helicopter);
    }
    table.close(4);
  });
});
