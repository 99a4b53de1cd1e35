import type { Contents } from '../../survey/contents';
import { otherFlows, type OtherFlow } from '../plan/flow-spans';
import { flowFor } from '../traffic/flow/flow-for';
import { inUse } from '../traffic/in-use';
import { windAt } from '../traffic/wind/wind-at';

/**
 * The ends in use at an instant and those that may come instead, in the order in which one turns through them: by the
 * survey's wind where its ends follow one that holds then, else its configuration (by index).
 */
export function flowsNow(contents: Contents, configuration: number, instant: number): readonly OtherFlow[] {
  const { weather } = contents;
  const wind = weather?.follow ? windAt(weather, instant) : null;
  const byWind = wind && flowFor(contents, wind.wind, instant);
  const chosen = inUse(contents, configuration);
  const now: OtherFlow =
    byWind && byWind.arrivals.length + byWind.departures.length > 0
      ? {
          name:
            byWind.configuration === null ? '' : (contents.configurations[byWind.configuration]?.name ?? ''),
          arrivals: byWind.arrivals,
          departures: byWind.departures,
        }
      : { name: chosen.name, arrivals: chosen.arrivals, departures: chosen.departures };
  return [now, ...otherFlows(contents, now)];
}
