import { describe, expect, test } from 'vitest';
import { apertureForDepth, depthOfField, hyperfocal } from '../../src/figures/optics/depth-of-field';
import { exposureValue, isoFor, sceneExposure, shutterFor } from '../../src/figures/optics/exposure';
import { bladeAngle, panRate, pixelsPerSecond } from '../../src/figures/optics/motion';
import { PublishedTable } from '../support/tolerance';
import {
  bladeRows,
  bladeSource,
  depthRows,
  depthSource,
  exposureRows,
  exposureSource,
  guideRows,
  guideSource,
  hyperfocalRows,
  hyperfocalSource,
  isoRows,
  makersConfusion,
  makersDepthRows,
  makersDepthSource,
  motionRows,
  motionSource,
} from './fixtures/settings';
import { tolerances } from './tolerances';

describe('settings against published values', () => {
  test('[R100] hyperfocal distance and depth of field', () => {
    const share = tolerances.depthShare;
    const table = new PublishedTable(`depth of field (${depthSource})`, {
      hyperfocal: share,
      near: share,
      far: share,
    });
    for (const { f, n, c, focus, h, near, far } of depthRows) {
      table.row(`${f} mm f/${n} at ${focus} m`);
      const got = depthOfField(f, n, focus, c);
      table.near('hyperfocal', hyperfocal(f, n, c) / h, 1);
      table.near('near', got.near / near, 1);
      table.near('far', (got.far ?? NaN) / far, 1);
      // Solved the other way round, the near limit asks for the same aperture.
      expect(apertureForDepth(f, focus, focus - got.near, c)).toBeCloseTo(n, 9);
    }
    table.close(9);
    expect(depthOfField(50, 8, hyperfocal(50, 8, 0.03), 0.03).far).toBeNull();
  });

  test('[R101] hyperfocal distances of a handbook and two tables', () => {
    const table = new PublishedTable(`hyperfocal (${hyperfocalSource})`, {
      distance: tolerances.hyperfocalRead,
    });
    for (const { f, n, c, h } of hyperfocalRows) {
      table.row(`${f} mm f/${n}`);
      // These sources leave out the "+ f".
      table.near('distance', (hyperfocal(f, n, c) - f / 1000) / h, 1);
    }
    table.close(5);
    // Focused at 10.6 m, the 70 mm at f/22 is sharp from 5.3 m on.
    expect(depthOfField(70, 22, 10.6, 0.021).near).toBeCloseTo(5.3, 1);
    // Focused there, everything from half of it on is sharp (10.4 ft of 20.8).
    const h = hyperfocal(50.8, 8, 0.0508);
    expect(depthOfField(50.8, 8, h, 0.0508).near / 0.3048).toBeCloseTo(10.4, 0);
  });

  test('[R107] depth of field as a maker of lenses prints it', () => {
    const table = new PublishedTable(`depth of field (${makersDepthSource})`, {
      near: tolerances.makersNear,
      far: tolerances.makersFar,
    });
    for (const { f, n, focus, near, far } of makersDepthRows) {
      table.row(`${f} mm f/${n} at ${focus.toFixed(1)} m`);
      const got = depthOfField(f, n, focus, makersConfusion);
      table.near('near', got.near / focus, near / focus);
      if (far !== null) table.near('far', (got.far ?? NaN) / focus, far / focus);
    }
    table.close(23);
  });

  test('[R102] exposure values and ISO', () => {
    const table = new PublishedTable(`exposure value (${exposureSource})`, { ev: tolerances.exposureValue });
    for (const { n, t, ev } of exposureRows) {
      table.row(`f/${n} ${t} s`);
      table.near('ev', exposureValue(n, t), ev);
      expect(isoFor(n, t, exposureValue(n, t) - 3)).toBeCloseTo(800, 6);
    }
    table.close(8);
    for (const { ev100, iso, n, perSecond } of isoRows)
      expect(1 / shutterFor(n, iso, ev100)).toBeCloseTo(perSecond, 0);
  });

  test('[R103] the exposure guide: skies, directions of the light, sunset', () => {
    process.stdout.write(`exposure guide: ${guideSource}\n`);
    let rows = 0;
    for (const { words, altitudes, sky, light, ev } of guideRows) {
      for (const altitude of altitudes) {
        const { ev100 } = sceneExposure(altitude, light, sky);
        expect(ev100, `${words} at ${altitude}`).toBeGreaterThanOrEqual(ev[0] - 1e-9);
        expect(ev100, `${words} at ${altitude}`).toBeLessThanOrEqual(ev[1] + 1e-9);
        rows++;
      }
    }
    expect(rows).toBe(25);
    // Directions count where there are shadows, that is from half of the direct sun on, and more sun is never less light.
    expect(sceneExposure(30, 'back-lit', 'hazy').ev100).toBe(12);
    expect(sceneExposure(30, 'back-lit', 0.5).ev100).toBeCloseTo(15 - 1.375 - 2, 9);
    expect(sceneExposure(30, 'back-lit', 'overcast').ev100).toBe(13);
    for (let a = -20; a < 40; a += 0.5)
      expect(sceneExposure(a + 0.5, 'front-lit', 'clear').ev100).toBeGreaterThanOrEqual(
        sceneExposure(a, 'front-lit', 'clear').ev100,
      );
  });

  test('[R104] pan rate and motion blur', () => {
    const table = new PublishedTable(`motion blur (${motionSource})`, {
      rate: tolerances.motionShare,
      blur: tolerances.motionShare,
    });
    for (const { knots, range, angle, f, t, rate, blur } of motionRows) {
      table.row(`${knots} kt at ${range} m`);
      const got = panRate(knots * 0.514444, angle, range);
      table.near('rate', got / rate, 1);
      const body = {
        key: '',
        name: '',
        sensorWidth: 36,
        sensorHeight: 24,
        pixelsWide: 6000,
        pixelsHigh: 4000,
      };
      table.near('blur', (pixelsPerSecond(got, f, body) * t * 0.006) / blur, 1);
    }
    table.close(5);
  });

  test('[R105] blade angles', () => {
    const table = new PublishedTable(`blade angle (${bladeSource})`, { angle: tolerances.bladeAngle });
    for (const { rpm, t, angle } of bladeRows) {
      table.row(`${rpm} rpm ${t} s`);
      table.near('angle', bladeAngle(rpm, t), angle);
    }
    table.close(4);
  });
});
