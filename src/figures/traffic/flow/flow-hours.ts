import type { Contents } from '../../../survey/contents';
import type { Weather } from '../../../survey/schema/weather';
import { spanOf, windAt, type OtherWind } from '../wind/wind-at';
import type { Wind } from '../wind/wind';
import { chooseFlow, type FlowChoice } from './choose-flow';
import { flowRules, siteMinute } from './flow-for';
import { sameEnds } from './turning';

/** A stretch of a forecast within one hour. Instants in ms since 1970, UTC. */
export interface FlowHour {
  readonly from: number;
  readonly to: number;
  readonly wind: Wind;
  readonly choice: FlowChoice;
  /** Winds that may come instead, with the ends they would put in use where those differ. */
  readonly others: readonly (OtherWind & { readonly choice: FlowChoice | null })[];
}

const hour = 3_600_000;

/** The ends in use hour by hour through a forecast, cut where its wind changes within an hour; empty without one. */
export function flowHours(
  contents: Pick<Contents, 'runways' | 'site' | 'subject' | 'configurations' | 'calm'>,
  weather: Pick<Weather, 'winds'>,
): FlowHour[] {
  const edges = weather.winds.flatMap((w) => spanOf(w)).filter(Number.isFinite);
  const [from, to] = [Math.min(...edges), Math.max(...edges)];
  // A forecast covers a day or two; what is longer was not made by one.
  if (edges.length === 0 || to - from > 20 * 24 * hour) return [];
  for (let full = Math.ceil(from / hour) * hour; full < to; full += hour) edges.push(full);
  const cuts = [...new Set(edges)].sort((a, b) => a - b);
  const rules = flowRules(contents);
  return cuts.slice(0, -1).flatMap((start, i) => {
    const there = windAt(weather, start);
    if (!there) return [];
    const minute = siteMinute(contents, start);
    const choice = chooseFlow(rules, there.wind, minute);
    const others = there.others.map((other) => {
      const instead = chooseFlow(rules, other.wind, minute);
      return { ...other, choice: sameEnds(instead, choice) ? null : instead };
    });
    return [{ from: start, to: cuts[i + 1] ?? start, wind: there.wind, choice, others }];
  });
}
