import * as Astronomy from 'astronomy-engine';
import Geodesic from 'geographiclib-geodesic';
import { describe, test } from 'vitest';
import { alongRunway } from '../../src/figures/geometry/along-runway';
import { destination, groundLine } from '../../src/figures/geometry/earth';
import { sunAt } from '../../src/figures/light/sun';
import { contentsOf, runwayFeature } from '../support/contents';
import { PublishedTable, seeded } from '../support/tolerance';

const RAD = Math.PI / 180;
const wgs84 = Geodesic.Geodesic.WGS84;

/** Evenly over the sphere, the poles left out by a hair: there an azimuth means nothing. */
const anywhere = (random: () => number) =>
  [random() * 360 - 180, (Math.asin(2 * random() - 1) / RAD) * 0.999] as const;

describe('a second opinion over random points', () => {
  test('[R50] the sun by astronomy-engine, 2015 to 2045', () => {
    const limit = { limit: 0.02, unit: 'deg', why: 'what the design of this check asks' };
    const table = new PublishedTable('astronomy-engine over random points', {
      geometric: limit,
      apparent: limit,
      azimuth: limit,
    });
    const random = seeded(20_260_621);
    for (let i = 0; i < 400; i++) {
      const [lng, lat] = anywhere(random);
      const date = new Date(Date.UTC(2015, 0, 1) + random() * 30 * 365.25 * 86_400_000);
      table.row(`${lat.toFixed(3)}, ${lng.toFixed(3)} at ${date.toISOString()}`);
      const observer = new Astronomy.Observer(lat, lng, 0);
      const place = Astronomy.Equator(Astronomy.Body.Sun, date, observer, true, true);
      const bare = Astronomy.Horizon(date, observer, place.ra, place.dec);
      const bent = Astronomy.Horizon(date, observer, place.ra, place.dec, 'normal');
      const sun = sunAt([lng, lat], date.getTime());
      table.near('geometric', sun.geometricAltitude, bare.altitude);
      table.nearAngle('azimuth', sun.azimuth, bare.azimuth, Math.cos(bare.altitude * RAD));
      // Below the horizon every author fades refraction out in another way.
      if (bare.altitude > -0.9) table.near('apparent', sun.altitude, bent.altitude);
    }
    table.close(400);
  });

  test('[R51] distance, bearing and destination by GeographicLib, up to 15 km', () => {
    const table = new PublishedTable('GeographicLib over random lines up to 15 km', {
      distance: { limit: 0.02, unit: 'm', why: 'the design allows 0.5 m or 0.1 %' },
      azimuth: { limit: 0.0002, unit: 'deg', why: 'normal section instead of geodesic' },
      destination: { limit: 0.02, unit: 'm', why: 'the same' },
    });
    const random = seeded(51);
    for (let i = 0; i < 500; i++) {
      const from = anywhere(random);
      const azimuth = random() * 360;
      const distance = 1 + random() ** 2 * 15_000;
      table.row(`${from.join(', ')} towards ${azimuth}, ${distance} m`);
      const { lat2, lon2 } = wgs84.Direct(from[1], from[0], azimuth, distance);
      const to = [lon2 ?? NaN, lat2 ?? NaN] as const;
      const line = groundLine(from, to);
      table.near('distance', line.distance, distance);
      // Close by, an azimuth is worth no more than the digits of the coordinates.
      if (distance > 20) table.nearAngle('azimuth', line.azimuth ?? NaN, azimuth);
      const [lng, lat] = destination(from, azimuth, distance);
      table.near('destination', wgs84.Inverse(to[1], to[0], lat, lng).s12 ?? NaN, 0);
    }
    table.close(500);
  });

  test('[R52] station and centreline distance by GeographicLib, up to 15 km from the runway', () => {
    const table = new PublishedTable('GeographicLib over random centrelines', {
      station: { limit: 0.5, unit: 'm', why: 'the design allows 0.5 m or 0.1 %' },
      distance: { limit: 0.5, unit: 'm', why: 'the same' },
    });
    const random = seeded(52);
    for (let i = 0; i < 300; i++) {
      const a = anywhere(random);
      const azimuth = random() * 360;
      const along = random() * 18_000 - 12_000;
      const off = (random() - 0.5) * 18_000;
      table.row(`${a.join(', ')} towards ${azimuth}, ${along} along, ${off} off`);
      const b = wgs84.Direct(a[1], a[0], azimuth, 3000);
      // The foot on the geodesic, and from it a geodesic square to it.
      const foot = wgs84.Direct(a[1], a[0], azimuth, along);
      const spot = wgs84.Direct(foot.lat2 ?? NaN, foot.lon2 ?? NaN, (foot.azi2 ?? NaN) + 90, off);
      const ends = [a, [b.lon2 ?? NaN, b.lat2 ?? NaN]] as const;
      const contents = contentsOf([runwayFeature('rwy', ends[0], ends[1], [{}, {}])]);
      const runway = contents.runways[0];
      const place = runway && alongRunway(runway, [spot.lon2 ?? NaN, spot.lat2 ?? NaN]);
      table.near('station', place?.station ?? NaN, along);
      table.near('distance', place?.offset ?? NaN, off);
    }
    table.close(300);
  });
});
