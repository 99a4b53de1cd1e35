import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { groundLine } from '../geometry/earth';
import { atSpotWithin, awayFrom, roughFrom } from '../practice';
import { spotThere } from '../spot/spot-there';

/** Where the device says it is. `accuracy`: m, the radius within which it is at 95 % (W3C Geolocation). */
export interface DevicePosition {
  readonly position: Position;
  readonly accuracy: number;
}

/** What a device's position is good for. */
export type PlaceNow =
  /** At a spot of the survey: its eye height and access hold. */
  | { readonly kind: 'spot'; readonly spot: StandingSpot }
  /** Somewhere else at the field: a spot stands in that nobody has made yet. */
  | { readonly kind: 'here'; readonly spot: StandingSpot }
  /** Too rough to tell anything of what comes past. */
  | { readonly kind: 'rough'; readonly accuracy: number }
  /** Not at the field at all; m to it. */
  | { readonly kind: 'away'; readonly distance: number };

export function placeNow(
  { position, accuracy }: DevicePosition,
  { spots, site }: Pick<Contents, 'spots' | 'site'>,
): PlaceNow {
  const distance = groundLine(site.reference, position).distance;
  if (distance - accuracy > awayFrom) return { kind: 'away', distance };
  if (accuracy > roughFrom) return { kind: 'rough', accuracy };
  let [nearest, least]: [StandingSpot | null, number] = [null, Math.max(atSpotWithin, accuracy)];
  for (const spot of spots) {
    const apart = groundLine(spot.position, position).distance;
    if (apart <= least) [nearest, least] = [spot, apart];
  }
  return nearest
    ? { kind: 'spot', spot: nearest }
    : { kind: 'here', spot: spotThere(position, null, { id: 'here', name: 'Here' }) };
}
