import * as Astronomy from 'astronomy-engine';
import Geodesic from 'geographiclib-geodesic';
import { geodetic, NaiveEye, type NaiveGround, type NaiveObstacle } from './naive-sight';

/**
 * SAMPLE of the design, section 5, once more, straight from its text and by other means than the program: places
 * from GeographicLib, the sun from astronomy-engine at the aircraft, framing by a 4 x 4 camera matrix in
 * earth-centred coordinates. Slow and plain. Shares no line with src.
 */

const rad = Math.PI / 180;
const wgs84 = Geodesic.Geodesic.WGS84;

interface LatLng {
  readonly lat: number;
  readonly lng: number;
}
export interface Scenario {
  /** Pavement ends, with their elevations in m. */
  readonly ends: readonly [NaiveEnd, NaiveEnd];
  readonly spot: LatLng & { readonly ground: number; readonly eyeHeight: number };
  readonly subject: {
    readonly length: number;
    readonly span: number;
    readonly height: number;
    readonly propulsion: 'jet' | 'rotor';
    readonly tailSpan: number | null;
    readonly groundRun: number;
    readonly landingRun: number;
    readonly climbGradient: number;
    readonly approachAngle: number | null;
  };
  readonly sensor: readonly [width: number, height: number];
  readonly fill: number;
  readonly lenses: readonly { readonly shortest: number; readonly longest: number }[];
  readonly instant: number;
  readonly obstacles: readonly NaiveObstacle[];
  /** A model of the ground and the m between its samples; null where there is none. */
  readonly terrain: { readonly ground: NaiveGround; readonly step: number } | null;
}
interface NaiveEnd extends LatLng {
  readonly elevation: number;
  readonly displaced: number;
  readonly glide: number;
  readonly crossingHeight: number;
}

export interface NaiveSample {
  readonly station: number;
  readonly height: number;
  readonly groundRange: number;
  readonly slantRange: number;
  readonly bearing: number;
  readonly elevation: number;
  readonly aspect: number;
  readonly focalLength: number;
  readonly focalLength35: number;
  readonly lightAngle: number;
  readonly phaseAngle: number;
  readonly flankLit: boolean | null;
  readonly light: string;
  /** Degrees by which the sun is inside (+) or outside (-) the reach of glare; -Infinity when it is down. */
  readonly glaring: number;
  /** Without sight: `total` is what it comes to in full view. */
  readonly score: { total: number; light: number; reach: number; aspect: number; haze: number };
  /** Worked out when asked: share of wheels, centre and fin tip in sight. */
  readonly sight: () => { readonly share: number; readonly doubtful: boolean };
  /** Of the sun, for what is ill-conditioned when it is overhead. */
  readonly cosSunAltitude: number;
  /** m of path that the sample stands for. */
  readonly share: number;
  readonly usable: boolean;
  /** So near to a threshold of the flank or of the underside that rounding decides. */
  readonly onEdge: boolean;
}

type Vector = readonly [number, number, number];
const add = (a: Vector, b: Vector, t = 1): Vector => [a[0] + t * b[0], a[1] + t * b[1], a[2] + t * b[2]];
const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => add([0, 0, 0], a, 1 / Math.sqrt(dot(a, a)));
const angle = (a: Vector, b: Vector) => {
  const c = cross(a, b);
  return Math.atan2(Math.sqrt(dot(c, c)), dot(a, b)) / rad;
};
const clamp = (x: number) => Math.min(1, Math.max(0, x));

function earthCentred({ lat, lng }: LatLng, height: number): Vector {
  // By the reduced latitude: tan(beta) = (b / a) tan(phi), a point of the ellipse plus the height along the normal.
  const [a, b] = [6378137, 6378137 * (1 - 1 / 298.257223563)];
  const beta = Math.atan2(b * Math.sin(lat * rad), a * Math.cos(lat * rad));
  const foot: Vector = [
    a * Math.cos(beta) * Math.cos(lng * rad),
    a * Math.cos(beta) * Math.sin(lng * rad),
    b * Math.sin(beta),
  ];
  return add(foot, upAt({ lat, lng }), height);
}
const upAt = ({ lat, lng }: LatLng): Vector => [
  Math.cos(lat * rad) * Math.cos(lng * rad),
  Math.cos(lat * rad) * Math.sin(lng * rad),
  Math.sin(lat * rad),
];
/** Direction of an azimuth and altitude at a place, in earth-centred coordinates. */
function direction(place: LatLng, azimuth: number, altitude: number): Vector {
  const up = upAt(place);
  const east = unit(cross([0, 0, 1], up));
  const north = cross(up, east);
  const level = add(add([0, 0, 0], east, Math.sin(azimuth * rad)), north, Math.cos(azimuth * rad));
  return add(add([0, 0, 0], level, Math.cos(altitude * rad)), up, Math.sin(altitude * rad));
}

interface NaiveSun {
  readonly azimuth: number;
  readonly apparent: number;
  readonly geometric: number;
}

/** The sun as everybody near `spot` sees it: its parallax over an airfield is nothing. */
function sunNear(spot: LatLng, instant: number): (place: LatLng) => NaiveSun {
  const date = new Date(instant);
  const observer = ({ lat, lng }: LatLng) => new Astronomy.Observer(lat, lng, 0);
  const { ra, dec } = Astronomy.Equator(Astronomy.Body.Sun, date, observer(spot), true, true);
  return (place) => {
    const { azimuth, altitude } = Astronomy.Horizon(date, observer(place), ra, dec);
    return { azimuth, apparent: altitude + Astronomy.Refraction('normal', altitude), geometric: altitude };
  };
}

/** Where the aircraft is at a station: m from the pavement end along the line, its wheels, its way up, its nose. */
interface Flown {
  readonly station: number;
  readonly along: number;
  readonly wheels: number;
  readonly rise: number;
  readonly nose: number;
  readonly datum: number;
}

function stations(from: number, to: number): number[] {
  const inside: number[] = [];
  for (let k = -2000; k <= 2000; k++)
    if (20 * k > Math.min(from, to) + 1e-6 && 20 * k < Math.max(from, to) - 1e-6) inside.push(20 * k);
  if (from > to) inside.reverse();
  return [from, ...inside, to];
}

export type NaiveKind = 'arrival' | 'departure';

function flown(scenario: Scenario, end: 0 | 1, kind: NaiveKind): Flown[] {
  const { subject } = scenario;
  const [here, there] = [scenario.ends[end], scenario.ends[end === 0 ? 1 : 0]];
  const length = wgs84.Inverse(here.lat, here.lng, there.lat, there.lng).s12 ?? NaN;
  const pavement = (along: number) => here.elevation + ((there.elevation - here.elevation) * along) / length;
  const level = (there.elevation - here.elevation) / length;
  if (kind === 'departure') {
    const run = Math.min(subject.groundRun, length);
    return stations(0, length + 6000).map((station) =>
      station <= run
        ? { station, along: station, wheels: pavement(station), rise: level, nose: 0, datum: here.elevation }
        : {
            station,
            along: station,
            wheels: pavement(run) + subject.climbGradient * (station - run),
            rise: subject.climbGradient,
            nose: 8,
            datum: here.elevation,
          },
    );
  }
  const threshold = pavement(here.displaced);
  const tangent = Math.tan((subject.approachAngle ?? here.glide) * rad);
  const glideAt = (station: number) => threshold + here.crossingHeight + station * tangent;
  // Ground contact by bisection between the threshold and the far end.
  const far = -(length - here.displaced);
  let [high, low] = [0, far];
  if (glideAt(far) < pavement(length))
    for (let i = 0; i < 60; i++) {
      const middle = (high + low) / 2;
      if (glideAt(middle) > pavement(here.displaced - middle)) high = middle;
      else low = middle;
    }
  const contact = low;
  return stations(10_000, Math.max(contact - subject.landingRun, far)).map((station) =>
    station > contact
      ? {
          station,
          along: here.displaced - station,
          wheels: glideAt(station),
          rise: -tangent,
          nose: 3,
          datum: threshold,
        }
      : {
          station,
          along: here.displaced - station,
          wheels: pavement(here.displaced - station),
          rise: level,
          nose: 0,
          datum: threshold,
        },
  );
}

/** Every sample of a path as seen from the scenario's spot. */
export function naiveSamples(scenario: Scenario, end: 0 | 1, kind: NaiveKind): NaiveSample[] {
  const [here, there] = [scenario.ends[end], scenario.ends[end === 0 ? 1 : 0]];
  const line = wgs84.InverseLine(here.lat, here.lng, there.lat, there.lng);
  const path = flown(scenario, end, kind);
  const eye = naiveEye(scenario);
  const sunFrom = sunNear(scenario.spot, scenario.instant);
  const atSpot = sunFrom(scenario.spot);
  return path.map((point, i) => {
    const { lat2, lon2, azi2 } = line.Position(point.along);
    const place = { lat: lat2 ?? NaN, lng: lon2 ?? NaN };
    const [before, after] = [path[i - 1] ?? point, path[i + 1] ?? point];
    const share = Math.abs(after.station - before.station) / 2;
    return naiveSample(scenario, point, place, azi2 ?? NaN, share, sunFrom(place), atSpot, eye);
  });
}

export const naiveEye = ({ spot, obstacles, terrain }: Scenario): NaiveEye =>
  new NaiveEye(spot, spot.ground + spot.eyeHeight, obstacles, terrain);

/** Whether something stands before the sun, seen from the spot. */
export function naiveSunLine({ spot, instant, ...scenario }: Scenario) {
  const sun = sunNear(spot, instant)(spot);
  return naiveEye({ spot, instant, ...scenario }).look({ azimuth: sun.azimuth, altitude: sun.apparent });
}

function naiveSample(
  scenario: Scenario,
  point: Flown,
  place: LatLng,
  heading: number,
  share: number,
  sun: NaiveSun,
  atSpot: NaiveSun,
  naive: NaiveEye,
): NaiveSample {
  const { spot, subject, sensor, lenses } = scenario;
  const eye = earthCentred(spot, spot.ground + spot.eyeHeight);
  const height = point.wheels + subject.height / 2;
  const centre = earthCentred(place, height);
  const sight = add(centre, eye, -1);
  const slantRange = Math.sqrt(dot(sight, sight));
  const elevation = Math.asin(dot(unit(sight), upAt(spot))) / rad;
  const ground = wgs84.Inverse(spot.lat, spot.lng, place.lat, place.lng);
  const toEye = wgs84.Inverse(place.lat, place.lng, spot.lat, spot.lng);

  const flight = direction(place, heading, Math.atan(point.rise) / rad);
  const aspect = angle(flight, add([0, 0, 0], sight, -1));

  const focalLength = framed(scenario, centre, place, heading, point.nose, eye, elevation);
  const equivalent = Math.hypot(36, 24) / Math.hypot(sensor[0], sensor[1]);

  const toSun = direction(place, sun.azimuth, sun.apparent);
  const lightAngle = Math.abs(((((sun.azimuth - (toEye.azi1 ?? NaN)) % 360) + 540) % 360) - 180);
  const phaseAngle = angle(toSun, add([0, 0, 0], sight, -1));

  const left = direction(place, heading - 90, 0);
  const onEyesSide = dot(left, sight) < 0 ? dot(left, toSun) : -dot(left, toSun);
  // The same on the ground: how far the eye is from straight ahead or behind.
  const levelAspect = Math.abs(((((heading - (toEye.azi1 ?? NaN)) % 360) + 540) % 360) - 180);
  const overhead = elevation > 80;
  const noFlank = overhead || aspect <= 10 || aspect >= 170 || levelAspect <= 10 || levelAspect >= 170;
  const flankLit = noFlank ? null : onEyesSide > 0.1;

  const fromBelow = elevation > 30;
  const lit = fromBelow ? phaseAngle : lightAngle;
  const light = classOf(atSpot.geometric, lit, flankLit);

  const longest = Math.max(...lenses.map((l) => l.longest));
  // The lens to take: fits (0.75 of the fill to 0.95 of the frame) before tight before the least loss.
  const filling = lenses.map(({ shortest, longest: most }) => {
    const at = Math.min(most, Math.max(shortest, focalLength));
    const filled = (scenario.fill * at) / focalLength;
    const short = filled / (0.75 * scenario.fill);
    const off = Math.abs(filled - scenario.fill);
    const fits = short >= 1 && filled <= Math.max(0.95, scenario.fill);
    const loss = fits ? off : short >= 1 && filled <= 1 ? 10 + off : 20 - Math.min(short, 1 / filled);
    return { at, loss, reach: Math.min(1, short, 1 / filled) ** 2 };
  });
  const taken = filling.reduce((a, b) => (b.loss < a.loss ? b : a)).at;
  const halfDiagonal = Math.atan2(Math.hypot(sensor[0], sensor[1]) / 2, taken) / rad;
  const glaring = atSpot.geometric > -0.833 ? halfDiagonal + 10 - (180 - phaseAngle) : -Infinity;

  const byAngle = lit <= 60 ? 1 : lit <= 110 ? 1 - 0.4 * ((lit - 60) / 50) : 0.6 - 0.4 * ((lit - 110) / 70);
  const byAltitude = 1 - 0.4 * clamp((atSpot.geometric - 45) / 15);
  const lightScore =
    atSpot.geometric < -6
      ? 0
      : atSpot.geometric < -0.833
        ? 0.2
        : byAngle * byAltitude * (flankLit === false ? 0.5 : 1);
  const reach = Math.max(...filling.map((f) => f.reach));
  const aspectScore =
    aspect < 45 ? 0.25 + (0.75 * aspect) / 45 : aspect <= 100 ? 1 : 1 - (0.85 * (aspect - 100)) / 80;
  const haze =
    1 - 0.7 * clamp((slantRange - 500) / 1500) * clamp(atSpot.geometric / 30) * clamp((10 - elevation) / 8);

  return {
    station: point.station,
    height: height - point.datum,
    groundRange: ground.s12 ?? NaN,
    slantRange,
    bearing: ground.azi1 ?? NaN,
    elevation,
    aspect,
    focalLength,
    focalLength35: focalLength * equivalent,
    lightAngle,
    phaseAngle,
    flankLit,
    light,
    glaring,
    score: {
      total: lightScore * reach * aspectScore * haze,
      light: lightScore,
      reach,
      aspect: aspectScore,
      haze,
    },
    sight: () => {
      const forward = direction(place, heading, point.nose);
      const top = cross(forward, direction(place, heading - 90, 0));
      const half = subject.height / 2;
      const lines = [
        add(centre, top, -half),
        centre,
        add(add(centre, forward, -0.45 * subject.length), top, half),
      ].map((part) => {
        const at = geodetic(part);
        const { s12 = NaN, azi1 = NaN } = wgs84.Inverse(spot.lat, spot.lng, at.lat, at.lng);
        return naive.look({ azimuth: azi1, distance: s12, height: at.height });
      });
      return {
        share: lines.filter((line) => !line.hidden).length / 3,
        doubtful: lines.some((line) => line.doubtful),
      };
    },
    cosSunAltitude: Math.cos(sun.geometric * rad),
    share,
    usable: focalLength <= 1.5 * longest,
    onEdge:
      Math.abs(onEyesSide - 0.1) < 0.001 ||
      Math.min(Math.abs(aspect - 10), Math.abs(aspect - 170)) < 0.01 ||
      // Level at the eye is not quite level at the aircraft, and a centimetre near by is an angle.
      Math.min(Math.abs(levelAspect - 10), Math.abs(levelAspect - 170)) <
        0.1 + 0.02 / (ground.s12 ?? NaN) / rad ||
      Math.abs(elevation - 30) < 0.01,
  };
}

function classOf(sunAltitude: number, lit: number, flankLit: boolean | null): string {
  if (sunAltitude < -6) return 'dark';
  if (sunAltitude < -0.833) return 'civil-twilight';
  if (sunAltitude >= 60) return 'top-lit';
  if (lit <= 60 && (flankLit ?? true)) return 'front-lit';
  return lit <= 110 ? 'side-lit' : 'back-lit';
}

/** The focal length at which a level camera at the eye, aimed at the centre, frames nose, tail, tips, fin, wheels or rim. */
function framed(
  { spot, subject, sensor, fill }: Scenario,
  centre: Vector,
  place: LatLng,
  heading: number,
  nose: number,
  eye: Vector,
  elevation: number,
): number {
  const { length, span, height, propulsion, tailSpan } = subject;
  const forward = direction(place, heading, nose);
  const left = direction(place, heading - 90, 0);
  const top = cross(forward, left);
  const body: readonly Vector[] = [
    [length / 2, 0, 0],
    [-length / 2, 0, 0],
    ...(propulsion === 'rotor'
      ? [0, 30, 60, 90, 120, 150, 180, 210, 240, 270, 300, 330].map((a): Vector => [
          (span / 2) * Math.cos(a * rad),
          (span / 2) * Math.sin(a * rad),
          0.4 * height,
        ])
      : ([1, -1] as const).flatMap((side): Vector[] => [
          [0, (side * span) / 2, 0],
          [-0.45 * length, (side * (tailSpan ?? 0.34 * span)) / 2, 0.1 * height],
        ])),
    [-0.45 * length, 0, height / 2],
    [0, 0, -height / 2],
  ];
  const points = body.map(([x, y, z]) => add(add(add(centre, forward, x), left, y), top, z));

  const ahead = unit(add(centre, eye, -1));
  const right = unit(cross(ahead, upAt(spot)));
  const above = cross(right, ahead);
  const camera = [
    [...right, -dot(right, eye)],
    [...above, -dot(above, eye)],
    [...ahead, -dot(ahead, eye)],
    [0, 0, 0, 1],
  ];
  // Above 75 degrees the camera is rolled: the picture is turned so that the fuselage lies along its long side.
  const roll = elevation > 75 ? Math.atan2(dot(forward, above), dot(forward, right)) : 0;
  const picture = points.map((p) => {
    const [x = NaN, y = NaN, z = NaN] = camera.map(
      (row) => (row[0] ?? 0) * p[0] + (row[1] ?? 0) * p[1] + (row[2] ?? 0) * p[2] + (row[3] ?? 0),
    );
    const [px, py] = [x / z, y / z];
    return [px * Math.cos(roll) + py * Math.sin(roll), py * Math.cos(roll) - px * Math.sin(roll)] as const;
  });
  const extent = (axis: 0 | 1) =>
    Math.max(...picture.map((p) => p[axis])) - Math.min(...picture.map((p) => p[axis]));
  return Math.min((fill * sensor[0]) / extent(0), (fill * sensor[1]) / extent(1));
}
