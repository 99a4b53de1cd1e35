import Geodesic from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import { alongRunway } from '../../src/figures/geometry/along-runway';
import { destination, groundLine } from '../../src/figures/geometry/earth';
import { outlookOf } from '../../src/figures/outlook';
import { spotFigures } from '../../src/figures/spot-figures';
import { contentsOf, runwayFeature, spotFeature } from '../support/contents';
import { oneSamplePath } from '../support/one-sample';
import { PublishedTable } from '../support/tolerance';
import {
  centrelineRows,
  centrelineSource,
  geodTestRows,
  geodTestSource,
  shortLinesRows,
  shortLinesSource,
  slantRows,
  slantSource,
} from './fixtures/geodesy';
import { tolerances } from './tolerances';

const dms = (degrees: number, minutes: number, seconds: number) => degrees + minutes / 60 + seconds / 3600;

describe('distances and bearings on WGS84', () => {
  test('[R10] the second opinion gives its own published test set', () => {
    const table = new PublishedTable(`GeodTest by geographiclib-geodesic (${geodTestSource})`, {
      s12: tolerances.geodTestDistance,
      azi1: tolerances.geodTestAzimuth,
      azi2: tolerances.geodTestAzimuth,
    });
    for (const row of geodTestRows) {
      table.row(`from ${row.lat1}, ${row.lng1}`);
      const line = Geodesic.Geodesic.WGS84.Inverse(row.lat1, row.lng1, row.lat2, row.lng2);
      table.near('s12', line.s12 ?? NaN, row.s12);
      table.nearAngle('azi1', line.azi1 ?? NaN, row.azi1);
      table.nearAngle('azi2', line.azi2 ?? NaN, row.azi2);
    }
    table.close(6);
  });

  test('[R11] Flinders Peak to Buninyong, Geoscience Australia / ICSM GDA technical manual', () => {
    const table = new PublishedTable('GDA technical manual, Vincenty example', {
      distance: tolerances.longDistance,
      azimuth: tolerances.longAzimuth,
    });
    const flindersPeak = [dms(144, 25, 29.5244), -dms(37, 57, 3.7203)] as const;
    const buninyong = [dms(143, 55, 35.3839), -dms(37, 39, 10.1561)] as const;
    table.row('forward');
    const there = groundLine(flindersPeak, buninyong);
    table.near('distance', there.distance, 54_972.271);
    table.nearAngle('azimuth', there.azimuth ?? NaN, dms(306, 52, 5.37));
    table.row('reverse');
    const back = groundLine(buninyong, flindersPeak);
    table.near('distance', back.distance, 54_972.271);
    table.nearAngle('azimuth', back.azimuth ?? NaN, dms(127, 10, 25.07));
    table.close(2);
  });

  test('[R12] airfield-scale lines, the antimeridian and one point twice included', () => {
    const table = new PublishedTable(`airfield-scale lines (${shortLinesSource})`, {
      distance: tolerances.shortDistance,
      azimuth: tolerances.shortAzimuth,
      destination: tolerances.shortDistance,
    });
    let directionless = 0;
    for (const { lat1, lng1, lat2, lng2, s12, azi1 } of shortLinesRows) {
      table.row(`${lat1}, ${lng1} to ${lat2}, ${lng2}`);
      const line = groundLine([lng1, lat1], [lng2, lat2]);
      table.near('distance', line.distance, s12);
      if (azi1 === null) {
        directionless++;
        expect(line.azimuth).toBeNull();
        continue;
      }
      table.nearAngle('azimuth', line.azimuth ?? NaN, azi1);
      const [lng, lat] = destination([lng1, lat1], azi1, s12);
      const miss = Geodesic.Geodesic.WGS84.Inverse(lat2, lng2, lat, lng).s12 ?? NaN;
      table.near('destination', miss, 0);
    }
    expect(directionless).toBe(1);
    table.close(20);
  });

  test('[R13] spot to centreline: the endless line, not the runway itself', () => {
    const table = new PublishedTable(`centreline (${centrelineSource})`, {
      length: tolerances.runwayLength,
      bearing: tolerances.runwayBearing,
      station: tolerances.station,
      distance: tolerances.centrelineDistance,
    });
    let beyondTheEnds = 0;
    for (const row of centrelineRows) {
      table.row(row.note);
      const at = ([lat, lng]: readonly [number, number]) => [lng, lat] as const;
      const contents = contentsOf([
        runwayFeature('rwy', at(row.a), at(row.b), [{ designator: '01' }, { designator: '19' }]),
        spotFeature('spot', at(row.p)),
      ]);
      const [runway, spot] = [contents.runways[0], contents.spots[0]];
      if (!runway || !spot) throw new Error('expected a runway and a spot');
      const place = alongRunway(runway, spot.position);
      table.near('length', place?.length ?? NaN, row.length);
      table.nearAngle('bearing', place?.azimuth ?? NaN, row.bearing);
      const seen = spotFigures(spot, [], outlookOf(contents, null), [0])[0]?.runways[0];
      table.near('station', seen?.station ?? NaN, row.along);
      table.near('distance', seen?.centrelineDistance ?? NaN, row.extended);
      expect(seen?.side, row.note).toBe(row.side === 'on' ? null : row.side);
      // Turf's pointToLineDistance answers `segment` here, hundreds of metres more.
      if (Math.abs(row.segment - row.extended) > 100) beyondTheEnds++;
    }
    expect(beyondTheEnds).toBe(5);
    table.close(8);
  });

  test('[R14] slant range, bearing and elevation from the eye', () => {
    const table = new PublishedTable(`slant range (${slantSource})`, {
      groundRange: tolerances.groundRange,
      slantRange: tolerances.slantRange,
      elevation: tolerances.elevation,
      bearing: tolerances.bearing,
    });
    const eyeHeight = 2;
    for (const row of slantRows) {
      table.row(row.note);
      const [lat, lng, height] = row.eye;
      const [targetLat, targetLng, targetHeight] = row.target;
      const contents = contentsOf([
        spotFeature('spot', [lng, lat], { eyeHeight, ground: height - eyeHeight }),
      ]);
      const spot = contents.spots[0];
      if (!spot) throw new Error('expected a spot');
      const path = oneSamplePath([targetLng, targetLat], targetHeight, 0);
      const sample = spotFigures(spot, [path], outlookOf(contents, null), [0])[0]?.paths[0]?.closest;
      table.near('groundRange', sample?.groundRange ?? NaN, row.ground);
      table.near('slantRange', sample?.slantRange ?? NaN, row.slant);
      table.near('elevation', sample?.elevation ?? NaN, row.elevation);
      table.nearAngle('bearing', sample?.bearing ?? NaN, row.azimuth);
    }
    table.close(7);
  });
});
