import type { Position } from '../../survey/document';
import type { DisplayLine } from '../../survey/schema/flying';
import { datePlus, dayStart } from '../../time/local-time';
import { wrap180 } from '../geometry/angles';
import { groundLine } from '../geometry/earth';
import { sunAt } from '../light/sun';
import { frontLitTo, sideLitTo, topLitFrom } from '../practice';
import { holdsUntil } from '../when/holds-until';
import type { Act } from './programme-acts';

/** Where the sun stands for somebody who looks at a display. */
export type DisplayLit =
  'dark' | 'overhead' | 'behind-you' | 'from-the-left' | 'from-the-right' | 'in-your-eyes';

/** How an act is lit as it begins. */
export interface ActLight {
  readonly lit: DisplayLit;
  /** When it is so no longer, ms since 1970 to the minute; null when it stays so for the rest of the day. */
  readonly until: number | null;
  /** Of the sun, degrees; altitude apparent, azimuth from true north. */
  readonly altitude: number;
  readonly azimuth: number;
}

/** The middle of the line from a display line's first position to its last, whichever meridian it crosses. */
export function middleOfLine({ line }: Pick<DisplayLine, 'line'>): Position {
  const [from, to] = [line[0], line[line.length - 1]] as [Position, Position];
  return [wrap180(from[0] + wrap180(to[0] - from[0]) / 2), (from[1] + to[1]) / 2];
}

/** From a place, looking at another, as an act begins; null for one without a time. */
export function actLight(
  { slot, date }: Pick<Act, 'slot' | 'date'>,
  at: Position,
  from: Position,
  timeZone: string,
): ActLight | null {
  const view = groundLine(from, at).azimuth;
  if (!slot || view === null) return null;
  const litAt = (instant: number): DisplayLit => {
    const { altitude, azimuth } = sunAt(at, instant);
    if (altitude < 0) return 'dark';
    if (altitude >= topLitFrom) return 'overhead';
    // Degrees to the right of whoever looks at the line; behind them at 180.
    const right = wrap180(azimuth - view);
    const behind = 180 - Math.abs(right);
    if (behind <= frontLitTo) return 'behind-you';
    if (behind > sideLitTo) return 'in-your-eyes';
    return right > 0 ? 'from-the-right' : 'from-the-left';
  };
  const lit = litAt(slot.from);
  const { altitude, azimuth } = sunAt(at, slot.from);
  const until = holdsUntil(
    (instant) => litAt(instant) === lit,
    slot.from,
    dayStart(datePlus(date, 1), timeZone),
  );
  return { lit, until, altitude, azimuth };
}
