import type { Runway } from '../../survey/schema/runway';
import { RAD } from '../geometry/angles';
import { compassPoint } from '../geometry/compass';
import { groundLine } from '../geometry/earth';
import { remembered } from '../remembered';
import { litFrom } from '../practice';
import type { LitSide, LitSpan } from '../types';
import { sunAt, sunriseAltitude } from './sun';
import { bisect } from './sun-times';

/**
 * Which side of a runway is lit: stand there, and the flank of an aircraft on it has the sun on it. Null for a
 * runway without direction. The side that is lit is the one towards the sun, named by the compass.
 */
export function litSide(runway: Runway, instant: number): LitSide | null {
  const { azimuth } = groundLine(runway.line[0], runway.line[1]);
  if (azimuth === null) return null;
  const sun = sunAt(runway.line[0], instant);
  if (sun.geometricAltitude < sunriseAltitude) return { sun, side: null, why: 'sun-down' };
  // The flank's normal points to the right of the runway: its dot product with the direction to the sun.
  const right = Math.cos(sun.altitude * RAD) * Math.sin((sun.azimuth - azimuth) * RAD);
  if (Math.abs(right) <= litFrom) return { sun, side: null, why: 'along-runway' };
  return { sun, side: compassPoint(azimuth + (right > 0 ? 90 : -90)), why: 'lit' };
}

const stepMs = 300_000;

/** The stretches between two instants in which a side is lit, in order: when the light changes over. */
export const litSpans = remembered(function (runway: Runway, from: number, to: number): LitSpan[] {
  const sideAt = (t: number) => litSide(runway, t)?.side ?? null;
  const spans: LitSpan[] = [];
  let begun = from;
  let side = sideAt(from);
  const close = (at: number) => {
    if (side !== null) spans.push({ from: begun, to: at, side });
  };
  for (let t = from; t < to; t += stepMs) {
    const next = Math.min(t + stepMs, to);
    const after = sideAt(next);
    if (after === side) continue;
    const before = side;
    const change = bisect((x) => sideAt(x) !== before, t, next);
    close(change);
    begun = change;
    side = after;
  }
  close(to);
  return spans;
});
