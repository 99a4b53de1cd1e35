import Geodesic from 'geographiclib-geodesic';
import { feature, runwayFeature } from './contents';

const wgs84 = Geodesic.Geodesic.WGS84;

/** A runway of 2,400 m that looks 067 true, its second threshold displaced, its ends 6 m apart in height. */
export const madeRunway = (() => {
  const a = [18.15, 50.92] as const;
  const far = wgs84.Direct(a[1], a[0], 67, 2400);
  const b = [far.lon2 ?? NaN, far.lat2 ?? NaN] as const;
  return {
    a,
    b,
    bearing: 67,
    length: 2400,
    feature: runwayFeature('r1', a, b, [
      { designator: '06', elevation: 180, displaced: 0, glide: 3 },
      { designator: '24', elevation: 186, displaced: 300, glide: 3 },
    ]),
  };
})();

/** Numbers that look random and are the same every time (Mulberry32, public domain). */
export function noise(seed: number): () => number {
  let a = seed;
  const even = () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  // Nearly normal, with a standard deviation of 1.
  return () => (even() + even() + even() + even() - 2) * Math.sqrt(3);
}

export interface MadePoint {
  /** m from the pavement end of 06 along 067, m to the right of that, m of the centre above mean sea level, s. */
  readonly along: number;
  readonly offset: number;
  readonly height: number;
  readonly time: number;
}

/** A recorded flight through points told in the runway's terms; placed by GeographicLib, not by our own geometry. `begins`: ms since 1970. */
export function madeFlight(
  id: string,
  points: readonly MadePoint[],
  timed = true,
  begins = Date.UTC(2026, 5, 21, 12),
) {
  const coordinates = points.map(({ along, offset }) => {
    const on = wgs84.Direct(madeRunway.a[1], madeRunway.a[0], 67, along);
    const ahead = on.azi2 ?? NaN;
    const beside = wgs84.Direct(on.lat2 ?? NaN, on.lon2 ?? NaN, ahead + 90, offset);
    return [beside.lon2, beside.lat2];
  });
  return feature(id, 'flight-path', 'LineString', coordinates, {
    name: id,
    source: 'recorded',
    heights: points.map(({ height }) => height),
    ...(timed ? { times: points.map(({ time }) => new Date(begins + time * 1000).toISOString()) } : {}),
  });
}

const pavement = (along: number) => 180 + (6 * Math.min(2400, Math.max(0, along))) / 2400;

export interface ArrivalPlan {
  readonly glide: number;
  /** m of the centre above the threshold when crossing it. */
  readonly crossing: number;
  readonly speed: number;
  readonly offset: number;
  /** m of the centre above the ground while it rolls. */
  readonly rolling: number;
  /** Standard deviation in m of heights and of positions across. */
  readonly noise: number;
  readonly seed: number;
}

/** A straight arrival of 24 from 9 km, every two seconds, down where its glide meets the pavement, rolling to 150 m before the end. */
export function arrivalOf24(plan: ArrivalPlan): readonly MadePoint[] {
  const random = noise(plan.seed);
  const slope = Math.tan((plan.glide * Math.PI) / 180);
  const threshold = pavement(2100);
  const points: MadePoint[] = [];
  for (let station = 9000; station > -1950; station -= plan.speed * 2) {
    const along = 2100 + station;
    const air = threshold + plan.crossing + station * slope;
    const height = Math.max(air, pavement(along) + plan.rolling);
    points.push({
      along,
      // Right of the flight is left of 067.
      offset: -plan.offset + random() * plan.noise,
      height: height + random() * plan.noise,
      time: (9000 - station) / plan.speed,
    });
  }
  return points;
}

export interface DeparturePlan {
  readonly liftOff: number;
  readonly gradient: number;
  readonly speed: number;
  readonly rolling: number;
  readonly noise: number;
  readonly seed: number;
}

/** A straight departure of 06 from a standstill at the pavement end, every two seconds, to 8 km. */
export function departureOf06(plan: DeparturePlan): readonly MadePoint[] {
  const random = noise(plan.seed);
  const points: MadePoint[] = [];
  for (let along = 5; along < 8000; along += plan.speed * 2)
    points.push({
      along,
      offset: random() * plan.noise,
      height:
        (along < plan.liftOff
          ? pavement(along) + plan.rolling
          : pavement(plan.liftOff) + plan.rolling + (along - plan.liftOff) * plan.gradient) +
        random() * plan.noise,
      time: along / plan.speed,
    });
  return points;
}

/** A made flight as a recorder would write it. */
export function gpxOf({ id, properties, geometry }: ReturnType<typeof madeFlight>): string {
  const { heights, times } = properties as { heights?: readonly number[]; times?: readonly string[] };
  const points = (geometry.coordinates as readonly (readonly [number, number])[]).map(
    ([lng, lat], i) =>
      `<trkpt lat="${lat}" lon="${lng}"><ele>${heights?.[i]}</ele>${times ? `<time>${times[i]}</time>` : ''}</trkpt>`,
  );
  return `<gpx version="1.1" creator="a test" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>${String(id)}</name><trkseg>${points.join('')}</trkseg></trk></gpx>`;
}
