import { Memo } from '../../survey/memo';
import type { Runway } from '../../survey/schema/runway';
import { RAD } from '../geometry/angles';
import { compassPoint } from '../geometry/compass';
import { groundLine } from '../geometry/earth';
import { litFrom } from '../practice';
import type { LitSide, LitSpan } from '../types';
import { stretches } from './stretches';
import { sunAt, sunriseAltitude } from './sun';

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

const kept = new Memo<LitSpan[]>();

/** The stretches between two instants in which a side is lit, in order: when the light changes over. */
export const litSpans = (runway: Runway, from: number, to: number): LitSpan[] =>
  kept.get([runway, from, to], () =>
    stretches((instant) => litSide(runway, instant)?.side ?? null, from, to).flatMap((stretch) =>
      stretch.value === null ? [] : [{ from: stretch.from, to: stretch.to, side: stretch.value }],
    ),
  );
