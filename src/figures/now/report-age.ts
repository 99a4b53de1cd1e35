import type { Weather } from '../../survey/schema/weather';
import { parseInstant } from '../../time/local-time';
import { reportHolds } from '../practice';

/** How old what the survey says of the wind is. */
export interface ReportAge {
  readonly minutes: number;
  /** It no longer holds: the wind may have turned since. */
  readonly stale: boolean;
}

/** Null where it does not say when it was observed or typed. A report of the future (a forecast's) is as new as can be. */
export function reportAge({ observed, entered, forecastTo }: Weather, instant: number): ReportAge | null {
  const until = forecastTo === null ? null : parseInstant(forecastTo);
  const at = observed ?? entered;
  const from = at === null ? null : parseInstant(at);
  if (from === null) return null;
  const minutes = Math.max(0, Math.floor((instant - from) / 60_000));
  return { minutes, stale: until === null ? minutes > reportHolds : instant >= until };
}
