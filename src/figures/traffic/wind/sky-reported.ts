import type { Weather } from '../../../survey/schema/weather';
import { clearSky, type SkyThere } from '../../light/sky';
import { spanOf } from './wind-at';

/** The sky that reports tell for an instant (ms since 1970), an observation before a forecast; null where none does. */
export function reportedSky({ skies }: Pick<Weather, 'skies'>, instant: number): SkyThere | null {
  for (const sky of skies) {
    const [from, to] = spanOf(sky);
    if (instant < from || instant >= to || sky.likelihood !== 'throughout') continue;
    return {
      direct: sky.direct ?? clearSky.direct,
      visibility: sky.visibility ?? clearSky.visibility,
    };
  }
  return null;
}
