import type { EndIndex } from '../../survey/schema/runway';
import type { EndGeometry } from '../traffic/runway-geometry';
import { fromOtherEnd, trackFrom, type RecordedFlight, type Track } from './track';

export type FlownKind = 'arrival' | 'departure' | 'circuit';

/** Which end of which runway a recorded flight used, and how. */
export interface Way {
  readonly kind: FlownKind;
  readonly geometry: EndGeometry;
  readonly track: Track;
  /** Index of the first point of the landing's stretch near the ground, and of the last one of the take-off's. */
  readonly down: number;
  readonly up: number;
}

/** m above the runway under which an aircraft has come down to it (design part two, section 12). */
const lowBelow = 15;
/** m to each side of the centreline within which it is on or over the runway, however wide that is. CP. */
const besideLine = 60;
/** Cosine of the angle to the runway within which a landing or take-off follows it: 30 degrees. CP. */
const follows = Math.cos(Math.PI / 6);

/**
 * An arrival comes under 15 m above a runway between its ends and stays there; a departure is the same backwards; a
 * circuit is both. Null for a go-around, a crossing, a flight that was lost before it landed, and all else.
 * `ends`: the geometry of both ends of each runway.
 */
export function wayOf(
  flight: RecordedFlight,
  ends: readonly (readonly [EndGeometry, EndGeometry])[],
): Way | null {
  let best: { readonly way: Way; readonly beside: number } | null = null;
  for (const pair of ends) {
    const track = trackFrom(flight, pair[0]);
    const down = lowAtEnd(track);
    const up = lowAtStart(track);
    // Never above 15 m: it taxied.
    if (down === null ? up === null : down === 0) continue;
    const landed = down === null ? null : onRunway(track, pair[0], down, track.count - 1);
    const left = up === null ? null : onRunway(track, pair[0], 0, up);
    const used = landed ?? left;
    if (!used || (landed && left && landed.end !== left.end)) continue;
    const kind = landed && left ? 'circuit' : landed ? 'arrival' : 'departure';
    const way: Way = {
      kind,
      geometry: pair[used.end],
      track: used.end === 0 ? track : fromOtherEnd(track, pair[0], pair[1]),
      down: down ?? track.count,
      up: up ?? -1,
    };
    if (!best || used.beside < best.beside) best = { way, beside: used.beside };
  }
  return best?.way ?? null;
}

function lowAtEnd({ count, low }: Track): number | null {
  let first = count;
  while (first > 0 && (low[first - 1] as number) < lowBelow) first--;
  return first === count ? null : first;
}

function lowAtStart({ count, low }: Track): number | null {
  let last = -1;
  while (last + 1 < count && (low[last + 1] as number) < lowBelow) last++;
  return last < 0 ? null : last;
}

/** Which end is used where some of the points `from` to `to` are on the runway; null where none is. */
function onRunway(
  { along, offset, course }: Track,
  { length }: EndGeometry,
  from: number,
  to: number,
): { readonly end: EndIndex; readonly beside: number } | null {
  let beside = Infinity;
  let forward = 0;
  for (let i = from; i <= to; i++) {
    const side = Math.abs(offset[i] as number);
    if ((along[i] as number) < 0 || (along[i] as number) > length || side > besideLine) continue;
    beside = Math.min(beside, side);
    // A turn-off at the end of the roll-out is no direction of landing.
    if (Math.abs(course[i] as number) >= follows) forward += Math.sign(course[i] as number);
  }
  return beside === Infinity || forward === 0 ? null : { end: forward > 0 ? 0 : 1, beside };
}
