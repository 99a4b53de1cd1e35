import type { Frame, Vec3 } from './geometry/earth';
import type { Framing } from './optics/framing';
import type { PathSamples } from './traffic/samples';

/** A photographer's eye: earth-centred position and the directions of east, north and up there. */
export interface Eye {
  readonly point: Vec3;
  readonly frame: Frame;
}

/**
 * A path as seen from an eye, one entry a sample: what does not depend on the sun. East, north and up are those at
 * the eye. The caller owns it and may use it again: nothing is allocated while a spot is dragged.
 */
export interface View {
  capacity: number;
  /** The aircraft's centre from the eye, in m. */
  east: Float64Array;
  north: Float64Array;
  up: Float64Array;
  range: Float64Array;
  /** Cosine of the aspect. */
  cosAspect: Float64Array;
  /** Needed focal length in mm; NaN where the eye is inside the aircraft. */
  focal: Float64Array;
  /** The level direction to the aircraft's left, a unit vector. */
  leftEast: Float64Array;
  leftNorth: Float64Array;
  leftUp: Float64Array;
}

export function newView(capacity = 1024): View {
  const array = () => new Float64Array(capacity);
  return {
    capacity,
    east: array(),
    north: array(),
    up: array(),
    range: array(),
    cosAspect: array(),
    focal: array(),
    leftEast: array(),
    leftNorth: array(),
    leftUp: array(),
  };
}

/** Elevation in radians above which the camera is rolled so that the fuselage lies along the long side. */
const sinRollFrom = Math.sin((75 * Math.PI) / 180);

/**
 * Looks from an eye at every sample of a path and writes the view into `out`, which grows when it must.
 *
 * The needed focal length is that of a level pinhole camera whose axis meets the aircraft's centre: six points of
 * the subject are projected, and the shorter of the two focal lengths counts that let the projected width and the
 * projected height each take `fill` of the sensor.
 *
 * Plain on purpose: this loop runs over thousands of samples within one pointer move (design, section 8).
 */
export function lookAlong(samples: PathSamples, eye: Eye, framing: Framing, out: View): void {
  const { count, centre, forward, up, slope, attitude } = samples;
  if (out.capacity < count) Object.assign(out, newView(count * 2));
  const [px, py, pz] = eye.point;
  const [ex, ey, ez] = eye.frame.east;
  const [nx, ny, nz] = eye.frame.north;
  const [ux, uy, uz] = eye.frame.up;
  const halfLength = framing.length / 2;
  const halfSpan = framing.span / 2;
  const halfHeight = framing.height / 2;
  const finBack = 0.45 * framing.length;
  const wantedWidth = framing.fill * framing.sensorWidth;
  const wantedHeight = framing.fill * framing.sensorHeight;

  for (let i = 0; i < count; i++) {
    const k = 3 * i;
    const dx = (centre[k] as number) - px;
    const dy = (centre[k + 1] as number) - py;
    const dz = (centre[k + 2] as number) - pz;
    const e = dx * ex + dy * ey + dz * ez;
    const n = dx * nx + dy * ny + dz * nz;
    const u = dx * ux + dy * uy + dz * uz;
    const range = Math.sqrt(dx * dx + dy * dy + dz * dz);

    // Track and local up of the aircraft, seen from the eye.
    const hx = forward[k] as number;
    const hy = forward[k + 1] as number;
    const hz = forward[k + 2] as number;
    const he = hx * ex + hy * ey + hz * ez;
    const hn = hx * nx + hy * ny + hz * nz;
    const hu = hx * ux + hy * uy + hz * uz;
    const vx = up[k] as number;
    const vy = up[k + 1] as number;
    const vz = up[k + 2] as number;
    const ve = vx * ex + vy * ey + vz * ez;
    const vn = vx * nx + vy * ny + vz * nz;
    const vu = vx * ux + vy * uy + vz * uz;
    // Left is up x forward.
    const le = vn * hu - vu * hn;
    const ln = vu * he - ve * hu;
    const lu = ve * hn - vn * he;

    const rise = slope[i] as number;
    const run = Math.sqrt(1 + rise * rise);
    out.cosAspect[i] = -((he + ve * rise) * e + (hn + vn * rise) * n + (hu + vu * rise) * u) / (run * range);
    out.east[i] = e;
    out.north[i] = n;
    out.up[i] = u;
    out.range[i] = range;
    out.leftEast[i] = le;
    out.leftNorth[i] = ln;
    out.leftUp[i] = lu;

    // Nose and body-up, turned by the nose attitude.
    const pitch = attitude[i] as number;
    const c = Math.cos(pitch);
    const s = Math.sin(pitch);
    const be = c * he + s * ve;
    const bn = c * hn + s * vn;
    const bu = c * hu + s * vu;
    const te = c * ve - s * he;
    const tn = c * vn - s * hn;
    const tu = c * vu - s * hu;

    // Camera: forward to the centre, right level, top square to both.
    const fe = e / range;
    const fn = n / range;
    const fu = u / range;
    const ground = Math.sqrt(fe * fe + fn * fn);
    // Straight overhead there is no level right; any will do, since the camera is rolled there.
    let re = ground > 0 ? fn / ground : 1;
    let rn = ground > 0 ? -fe / ground : 0;
    let ru = 0;
    if (Math.abs(fu) > sinRollFrom) {
      const inLine = be * fe + bn * fn + bu * fu;
      const we = be - inLine * fe;
      const wn = bn - inLine * fn;
      const wu = bu - inLine * fu;
      const w = Math.sqrt(we * we + wn * wn + wu * wu);
      if (w > 0) {
        re = we / w;
        rn = wn / w;
        ru = wu / w;
      }
    }
    const qe = rn * fu - ru * fn;
    const qn = ru * fe - re * fu;
    const qu = re * fn - rn * fe;

    // Body axes in camera axes: right, top, forward.
    const br = be * re + bn * rn + bu * ru;
    const bq = be * qe + bn * qn + bu * qu;
    const bf = be * fe + bn * fn + bu * fu;
    const lr = le * re + ln * rn + lu * ru;
    const lq = le * qe + ln * qn + lu * qu;
    const lf = le * fe + ln * fn + lu * fu;
    const tr = te * re + tn * rn + tu * ru;
    const tq = te * qe + tn * qn + tu * qu;
    const tf = te * fe + tn * fn + tu * fu;

    // Depths of the six points; one behind the lens means that the eye is inside the aircraft.
    const zNose = range + halfLength * bf;
    const zTail = range - halfLength * bf;
    const zLeft = range + halfSpan * lf;
    const zRight = range - halfSpan * lf;
    const zFin = range - finBack * bf + halfHeight * tf;
    const zWheels = range - halfHeight * tf;
    if (Math.min(zNose, zTail, zLeft, zRight, zFin, zWheels) <= 0) {
      out.focal[i] = NaN;
      continue;
    }
    const xNose = (halfLength * br) / zNose;
    const xTail = (-halfLength * br) / zTail;
    const xLeft = (halfSpan * lr) / zLeft;
    const xRight = (-halfSpan * lr) / zRight;
    const xFin = (halfHeight * tr - finBack * br) / zFin;
    const xWheels = (-halfHeight * tr) / zWheels;
    const yNose = (halfLength * bq) / zNose;
    const yTail = (-halfLength * bq) / zTail;
    const yLeft = (halfSpan * lq) / zLeft;
    const yRight = (-halfSpan * lq) / zRight;
    const yFin = (halfHeight * tq - finBack * bq) / zFin;
    const yWheels = (-halfHeight * tq) / zWheels;
    const width =
      Math.max(xNose, xTail, xLeft, xRight, xFin, xWheels) -
      Math.min(xNose, xTail, xLeft, xRight, xFin, xWheels);
    const height =
      Math.max(yNose, yTail, yLeft, yRight, yFin, yWheels) -
      Math.min(yNose, yTail, yLeft, yRight, yFin, yWheels);
    out.focal[i] = Math.min(wantedWidth / width, wantedHeight / height);
  }
}
