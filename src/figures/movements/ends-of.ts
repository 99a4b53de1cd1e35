import type { Contents } from '../../survey/contents';
import type { Movement } from '../../survey/schema/movement';
import type { EndRef } from '../../survey/schema/site';
import { flowFor } from '../traffic/flow/flow-for';
import { windAt } from '../traffic/wind/wind-at';
import { namesEnd } from './names-end';

/** Where a movement's end is from: it was given, the wind of that moment asks for it, or it is in use as chosen. */
export type EndFrom = 'given' | 'wind' | 'in-use' | 'none';

/** Ends in use for each. */
export type EndsByUse = Readonly<Record<'arrivals' | 'departures', readonly EndRef[]>>;

/**
 * Ends that a movement may use at an instant (ms since 1970). `inUse`: the ends chosen, for moments of which the survey
 * tells no wind, or whose wind the ends do not follow.
 */
export function endsOf(
  movement: Pick<Movement, 'runway' | 'use'>,
  contents: Contents,
  inUse: EndsByUse,
  instant: number,
): { readonly refs: readonly EndRef[]; readonly from: EndFrom } {
  const { runways } = contents;
  if (movement.runway !== '') {
    const refs = runways.flatMap((r) =>
      ([0, 1] as const).flatMap((end) =>
        namesEnd(movement.runway, r.ends[end].designator) ? [{ runway: r.id, end }] : [],
      ),
    );
    if (refs.length > 0) return { refs, from: 'given' };
  }
  const byWind = byWindAt(contents, instant);
  const refs = (byWind ?? inUse)[movement.use === 'arrival' ? 'arrivals' : 'departures'];
  return { refs, from: refs.length === 0 ? 'none' : byWind ? 'wind' : 'in-use' };
}

/** As the plan does: a wind that the ends in use do not follow is not asked. Null without one. */
export function byWindAt(contents: Contents, instant: number): EndsByUse | null {
  const { weather } = contents;
  const wind = weather?.follow ? windAt(weather, instant) : null;
  return wind && flowFor(contents, wind.wind, instant);
}
