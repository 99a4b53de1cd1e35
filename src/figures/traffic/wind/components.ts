import { RAD } from '../../geometry/angles';
import type { Wind } from './wind';

export interface WindComponents {
  /** kt against the direction of flight; negative is a tailwind. */
  readonly headwindKt: number;
  /** kt across it, positive from the right. */
  readonly crosswindKt: number;
}

/**
 * The wind's components for a direction of flight (degrees true) at a speed in kt: V cos and V sin of the angle
 * between wind and runway. A calm has none, whatever its direction; null for a wind without direction.
 */
export function windComponents(
  from: Wind['from'],
  speedKt: number,
  bearingDeg: number,
): WindComponents | null {
  if (speedKt === 0) return { headwindKt: 0, crosswindKt: 0 };
  if (from === null) return null;
  const angle = (from - bearingDeg) * RAD;
  return { headwindKt: speedKt * Math.cos(angle), crosswindKt: speedKt * Math.sin(angle) };
}
