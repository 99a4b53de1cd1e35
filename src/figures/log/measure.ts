import type { Subject } from '../../survey/schema/subject';
import { DEG, RAD } from '../geometry/angles';
import { along, dot, minus, type Vec3 } from '../geometry/earth';
import type { EyeThere } from '../spot/eye-at';
import type { PathSamples } from '../traffic/samples';
import { angleWithin, focalWithin, leastAngle, leastElevation, markWithin, sideOnWithin } from './practice';

/** Two marks on a frame: nose and tail, or both wing tips. */
export interface Marks {
  readonly part: 'fuselage' | 'wings';
  /** How the aircraft was seen; side-on is where its track stands square to the sight line. */
  readonly way: 'coming' | 'side-on' | 'going';
  /** px between the marks, and px by which each may be off where the picture was looked at smaller than it is. */
  readonly extent: number;
  readonly within?: number;
  /** mm, extender included; pixels of the picture a mm of the sensor. */
  readonly focalLength: number;
  readonly pixelsPerMm: number;
}

/** Where an aircraft was when it was photographed: m and degrees; heights as the path counts them. */
export interface Measured {
  readonly station: number;
  readonly slantRange: number;
  readonly slantRangeError: number;
  /** Between the marked axis and the sight line. */
  readonly angle: number;
  /** Of the centre; null where the range says nothing of it. */
  readonly height: number | null;
  readonly heightError: number | null;
  /** What the path says of that station. */
  readonly pathRange: number;
  readonly pathHeight: number;
}

/** Why a frame cannot be measured. */
export type NoMeasure =
  'no-heading' | 'no-wings' | 'too-close' | 'nowhere' | 'never-abeam' | 'several' | 'edge-on';

/**
 * Slant range from an aircraft's size on a picture (design part two, section 12): D sin(t) x focal length x pixels a mm /
 * extent. Coming or going, the station is the one at which the path's aircraft looks that large: where it was follows,
 * while the range is the path's own. Side-on the station is known without the extent, so the range is measured against the
 * path, and from 30 degrees of elevation on so is the height. Errors are added in squares.
 */
export function measure(
  marks: Marks,
  eye: EyeThere,
  samples: PathSamples,
  subject: Pick<Subject, 'length' | 'span' | 'propulsion'>,
): Measured | NoMeasure {
  if (!samples.headingKnown) return 'no-heading';
  if (marks.part === 'wings' && subject.propulsion === 'rotor') return 'no-wings';
  // Marks that lie on one another would be infinitely far away.
  if (!(marks.extent > 2 * (marks.within ?? markWithin))) return 'too-close';
  const size = marks.part === 'fuselage' ? subject.length : subject.span;
  const scale = size * marks.focalLength * marks.pixelsPerMm;
  const looks = Array.from({ length: samples.count }, (_, i) => lookAt(i, marks.part, eye, samples));
  const tells = (look: Look) =>
    marks.way === 'side-on' ? look.towards : (scale * look.sin) / look.range - marks.extent;
  const found = looks.flatMap((look, i) => {
    const next = looks[i + 1];
    if (!next || !isOf(marks.way, look, next)) return [];
    const [a, b] = [tells(look), tells(next)];
    return (a < 0 && b >= 0) || (a >= 0 && b < 0) ? [between(look, next, a / (a - b))] : [];
  });
  const [there, second] = found;
  if (!there) return marks.way === 'side-on' ? 'never-abeam' : 'nowhere';
  if (second) return 'several';
  return there.sin < Math.sin(leastAngle * RAD) ? 'edge-on' : told(marks, there, scale);
}

/** What one sees of the aircraft at a sample. m; `towards`: share of its flight that is towards the eye. */
interface Look {
  readonly station: number;
  readonly height: number;
  readonly range: number;
  /** m above the eye, and level from it. */
  readonly above: number;
  readonly away: number;
  readonly sin: number;
  readonly towards: number;
}

function lookAt(i: number, part: Marks['part'], eye: EyeThere, samples: PathSamples): Look {
  const vector = (list: Float64Array): Vec3 => [
    list[3 * i] as number,
    list[3 * i + 1] as number,
    list[3 * i + 2] as number,
  ];
  const [forward, up] = [vector(samples.forward), vector(samples.up)];
  const attitude = samples.attitude[i] as number;
  const axis =
    part === 'fuselage'
      ? along(along([0, 0, 0], forward, Math.cos(attitude)), up, Math.sin(attitude))
      : cross(up, forward);
  const sight = minus(vector(samples.centre), eye.point);
  const range = Math.sqrt(dot(sight, sight));
  const flight = along(forward, up, samples.slope[i] as number);
  const above = dot(sight, eye.frame.up);
  const [x, y, z] = cross(axis, sight);
  return {
    station: samples.station[i] as number,
    height: samples.height[i] as number,
    range,
    above,
    away: Math.sqrt(Math.max(0, range * range - above * above)),
    sin: Math.hypot(x, y, z) / range,
    towards: -dot(flight, sight) / (range * Math.sqrt(dot(flight, flight))),
  };
}

const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The step in which it passes abeam belongs to both ways. */
const isOf = (way: Marks['way'], a: Look, b: Look): boolean =>
  way === 'side-on' || (way === 'coming' ? a.towards > 0 : b.towards < 0);

function between(a: Look, b: Look, t: number): Look {
  const at = (member: keyof Look) => a[member] + (b[member] - a[member]) * t;
  return {
    station: at('station'),
    height: at('height'),
    range: at('range'),
    above: at('above'),
    away: at('away'),
    sin: at('sin'),
    towards: at('towards'),
  };
}

function told(marks: Marks, there: Look, scale: number): Measured {
  const { sin, away, above } = there;
  const slantRange = (scale * sin) / marks.extent;
  const cot = Math.sqrt(Math.max(0, 1 - sin * sin)) / sin;
  const share = Math.hypot(
    Math.max(markWithin, marks.within ?? 0) / marks.extent,
    cot * angleWithin * RAD,
    focalWithin,
    marks.way === 'side-on' ? 1 - Math.cos(sideOnWithin * RAD) : 0,
  );
  const slantRangeError = slantRange * share;
  // Right above, no range fixes what lies level.
  const measuredAbove = Math.sqrt(slantRange * slantRange - away * away);
  const tellsHeight =
    marks.way === 'side-on' && Math.atan2(above, away) * DEG > leastElevation && measuredAbove > 0;
  return {
    station: there.station,
    slantRange,
    slantRangeError,
    angle: Math.asin(Math.min(1, sin)) * DEG,
    height: tellsHeight ? there.height + measuredAbove - above : null,
    heightError: tellsHeight ? (slantRangeError * slantRange) / measuredAbove : null,
    pathRange: there.range,
    pathHeight: there.height,
  };
}
