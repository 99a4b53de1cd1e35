import type { Contents } from '../survey/contents';
import type { EndRef } from '../survey/schema/site';
import { flowFor } from '../figures/traffic/flow/flow-for';
import { endPath } from '../figures/traffic/end-name';
import type { GivenWind } from './given-wind';

/** The flow in a wind as the `figures` command prints it. */
export function flowJson(contents: Contents, { wind, remarks }: GivenWind, at: number) {
  const flow = flowFor(contents, wind, at);
  const paths = (refs: readonly EndRef[]) =>
    flow.ends
      .filter(({ ref }) => refs.some((r) => r.runway === ref.runway && r.end === ref.end))
      .map(({ runway, ref }) => endPath(runway, ref.end));
  return {
    wind: { from: wind.from, speedKt: wind.speedKt, gustKt: wind.gustKt },
    ends: flow.ends.map(({ ref, runway, components }) => ({
      runway: ref.runway,
      designator: runway.ends[ref.end].designator,
      headwindKt: components ? components.headwindKt : null,
      crosswindKt: components ? components.crosswindKt : null,
    })),
    arrivals: paths(flow.arrivals),
    departures: paths(flow.departures),
    light: flow.light,
    either: flow.either,
    reason: [flow.reason, ...remarks].join('; '),
  };
}
