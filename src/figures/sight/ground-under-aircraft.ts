import { alongRunway } from '../geometry/along-runway';
import { positionOf } from '../geometry/earth';
import type { Outlook } from '../outlook';
import { endElevations } from '../traffic/runway-geometry';
import type { Path } from '../traffic/paths';
import type { Runway } from '../../survey/schema/runway';
import { groundAt } from './ground';
import type { Terrain } from './terrain';
import type { Position } from '../../survey/document';

/**
 * m above mean sea level of the ground under the aircraft at sample `i`, as its height was reckoned from it: where it
 * rolls, what its wheels are on; over a runway its pavement between its ends' elevations, stated or not; elsewhere the
 * terrain, else the nearest runway. `centreHeight`: m above mean sea level of its centre.
 */
export function groundUnderAircraft(
  path: Path,
  i: number,
  centreHeight: number,
  {
    around,
    runways,
    fieldElevation,
    framing,
  }: Pick<Outlook, 'around' | 'runways' | 'fieldElevation' | 'framing'>,
): number {
  const { centre, onGround } = path.samples;
  if (onGround[i] === 1) return centreHeight - framing.height / 2;
  const position = positionOf([
    centre[3 * i] as number,
    centre[3 * i + 1] as number,
    centre[3 * i + 2] as number,
  ]);
  return groundUnderFlight(position, runways, fieldElevation, around?.terrain ?? null);
}

/** m above mean sea level of the ground under what flies: pavement over a runway, else the terrain, else the nearest runway. */
export const groundUnderFlight = (
  position: Position,
  runways: readonly Runway[],
  field: number,
  terrain: Terrain | null,
): number => pavementUnder(position, runways, field) ?? groundAt(position, runways, field, terrain).elevation;

/** The pavement's height at a place on a runway; null beside it. */
function pavementUnder(position: Position, runways: readonly Runway[], field: number): number | null {
  for (const runway of runways) {
    const place = alongRunway(runway, position);
    if (!place || Math.abs(place.offset) > runway.width / 2) continue;
    if (place.station < 0 || place.station > place.length) continue;
    const [a, b] = endElevations(runway, field);
    return a + ((b - a) * place.station) / place.length;
  }
  return null;
}
