import type { Weather } from '../../../survey/schema/weather';
import { clearSky, type SkyThere } from '../../light/sky';
import { spanOf } from './wind-at';

/** A sky that was told, and by what. */
export interface ReportedSky {
  readonly sky: SkyThere;
  readonly from: 'metar' | 'taf';
}

/** The sky that reports tell for an instant (ms since 1970), an observation before a forecast; null where none does. */
export function reportedSky(
  { skies, observed }: Pick<Weather, 'skies' | 'observed'>,
  instant: number,
): ReportedSky | null {
  for (const [i, sky] of skies.entries()) {
    const [from, to] = spanOf(sky);
    if (instant < from || instant >= to || sky.likelihood !== 'throughout') continue;
    return {
      sky: {
        direct: sky.direct ?? clearSky.direct,
        visibility: sky.visibility ?? clearSky.visibility,
      },
      // The observation's stands first (`weatherMember`).
      from: i === 0 && observed !== null ? 'metar' : 'taf',
    };
  }
  return null;
}
