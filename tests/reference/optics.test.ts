import { describe, expect, test } from 'vitest';
import { cosPhaseAt } from '../../src/figures/light-on-view';
import { sunThere } from '../../src/figures/light/sun-there';
import { PathInView } from '../../src/figures/path-in-view';
import { equivalent35, framingOf, halfDiagonal } from '../../src/figures/optics/framing';
import { destination } from '../../src/figures/geometry/earth';
import { contentsOf, plainKit, plainSubject } from '../support/contents';
import { eyeOver, oneSamplePath } from '../support/one-sample';
import { PublishedTable } from '../support/tolerance';
import {
  angleReadRows,
  angleReadSource,
  cropRows,
  cropSource,
  equivalentRows,
  equivalentSource,
  fieldOfViewRows,
  fieldOfViewSource,
  fillRows,
  fillSource,
  saidFactorRows,
  saidFactorSource,
} from './fixtures/optics';
import { sunFromAxisRows, sunFromAxisSource } from './fixtures/sun-positions';
import { tolerances } from './tolerances';

const DEG = 180 / Math.PI;
const contents = contentsOf([], { subjects: [plainSubject], kit: plainKit });

/** A frame of a sensor in mm round a subject of some size in m. */
const framing = (sensorWidth: number, sensorHeight: number, size = {}, fill = 0.8) =>
  framingOf({ ...contents.subject, ...size }, { ...contents.body, sensorWidth, sensorHeight }, fill);

describe('optics against published values', () => {
  test('[R40] field of view', () => {
    const table = new PublishedTable(`field of view (${fieldOfViewSource})`, {
      horizontal: tolerances.fieldOfView,
      vertical: tolerances.fieldOfView,
      diagonal: tolerances.fieldOfView,
    });
    for (const { focal, width, height, ...angles } of fieldOfViewRows) {
      table.row(`${focal} mm on ${width} x ${height}`);
      // A sensor without height has its width as diagonal.
      table.near('horizontal', 2 * halfDiagonal(focal, framing(width, 0)), angles.horizontal);
      table.near('vertical', 2 * halfDiagonal(focal, framing(0, height)), angles.vertical);
      table.near('diagonal', 2 * halfDiagonal(focal, framing(width, height)), angles.diagonal);
    }
    table.close(8);
  });

  test('[R41] focal length to fill the frame with an aircraft seen from the side', () => {
    const table = new PublishedTable(`focal length to fill (${fillSource})`, {
      pinhole: tolerances.pinholeFocal,
      thinLens: tolerances.thinLensShare,
      equivalent: tolerances.thinLensShare,
    });
    const spot = [8.56, 47.45] as const;
    for (const row of fillRows) {
      table.row(`${row.subject} m at ${row.distance} m on ${row.width} mm`);
      // Flat and level with the eye, nose to the left: its length alone counts.
      const frame = framing(row.width, row.height, { length: row.subject, span: 1, height: 1 }, row.fill);
      const place = destination(spot, 60, row.distance);
      const view = new PathInView();
      view.look(oneSamplePath(place, 500, 330).samples, eyeOver(spot, 500), frame);
      const [focal, range] = [view.focalAt(0), view.range[0] ?? NaN];
      // 500 m above the ellipsoid the two are a little farther apart than on it.
      table.near('pinhole', (focal * row.distance) / range, row.pinhole);
      table.near('thinLens', focal / row.thinLens, 1);
      // The source goes by the frame's width, the design by its diagonal: 3.8 % apart on a 4:3 sensor.
      const byDiagonal = (Math.hypot(36, 24) / Math.hypot(row.width, row.height)) * (row.width / 36);
      table.near('equivalent', equivalent35(focal, frame) / (row.equivalent * byDiagonal), 1);
      // The pinhole's answer is the longer one, by 1 + magnification.
      const magnification = (row.fill * row.width) / row.subject / 1000;
      expect(row.pinhole / row.thinLens).toBeCloseTo(1 + magnification, 4);
    }
    table.close(8);
  });

  test('[R42] crop factors by the diagonal', () => {
    const table = new PublishedTable(`crop factor (${cropSource})`, { factor: tolerances.equivalentFactor });
    for (const { width, height, factor } of cropRows) {
      table.row(`${width} x ${height}`);
      table.near('factor', equivalent35(1, framing(width, height)), factor);
    }
    table.close(4);
  });

  test('[R44] crop factors, equivalent focal lengths and an angle of view as they are printed', () => {
    const factors = new PublishedTable(`crop factor (${saidFactorSource})`, {
      factor: tolerances.publishedFactor,
    });
    for (const { width, height, factor } of saidFactorRows) {
      factors.row(`${width} x ${height}`);
      factors.near('factor', equivalent35(1, framing(width, height)), factor);
    }
    factors.close(4);
    const examples = new PublishedTable(`equivalent focal length (${equivalentSource})`, {
      equivalent: tolerances.publishedEquivalent,
    });
    for (const { focal, width, height, equivalent } of equivalentRows) {
      examples.row(`${focal} mm on ${width} x ${height}`);
      examples.near('equivalent', equivalent35(focal, framing(width, height)), equivalent);
    }
    examples.close(2);
    const angles = new PublishedTable(`field of view (${angleReadSource})`, {
      diagonal: tolerances.publishedAngle,
    });
    for (const { focal, width, height, diagonal } of angleReadRows) {
      angles.row(`${focal} mm`);
      angles.near('diagonal', 2 * halfDiagonal(focal, framing(width, height)), diagonal);
    }
    angles.close(1);
  });

  test('[R43] angle between the line of sight and the sun', () => {
    const table = new PublishedTable(`sun from the axis (${sunFromAxisSource})`, {
      angle: tolerances.sunFromAxis,
    });
    for (const row of sunFromAxisRows) {
      table.row(`sun ${row.sunAzimuth}/${row.sunAltitude}, view ${row.bearing}/${row.elevation}`);
      const [bearing, elevation] = [row.bearing / DEG, row.elevation / DEG];
      const view = new PathInView();
      const unit = Float64Array.of(
        Math.cos(elevation) * Math.sin(bearing),
        Math.cos(elevation) * Math.cos(bearing),
        Math.sin(elevation),
      );
      [view.east, view.north, view.up] = [unit.subarray(0, 1), unit.subarray(1, 2), unit.subarray(2)];
      view.range = Float64Array.of(1);
      const altitude = row.sunAltitude;
      const sun = sunThere({ azimuth: row.sunAzimuth, altitude, geometricAltitude: altitude });
      const phase = Math.acos(Math.max(-1, Math.min(1, cosPhaseAt(view, 0, sun)))) * DEG;
      // The phase angle is at the aircraft, between the sun and the eye: the other way round.
      table.near('angle', 180 - phase, row.angle);
    }
    table.close(8);
  });
});
