import type { Contents } from '../../../survey/contents';
import { minuteOfDay } from '../../../time/local-time';
import { windComponents, type WindComponents } from '../wind/components';
import type { Wind } from '../wind/wind';
import { chooseFlow, type FlowChoice, type FlowRules } from './choose-flow';
import { flowEnds, type FlowEnd } from './offered';
import { isLight } from './serves';

/** What a wind makes of one end: components of the mean wind, null for a wind without direction. */
export interface EndWind extends FlowEnd {
  readonly components: WindComponents | null;
}

export interface Flow extends FlowChoice {
  readonly wind: Wind;
  /** In the order of runways and ends, closed ones included. */
  readonly ends: readonly EndWind[];
}

/** What the flow hangs on besides the wind. */
export type FlowContents = Pick<Contents, 'runways' | 'site' | 'subject' | 'configurations' | 'calm'>;

export const flowRules = (contents: FlowContents): FlowRules => ({
  ends: flowEnds(contents),
  configurations: contents.configurations,
  calm: contents.calm,
  light: isLight(contents.subject),
});

/** Minutes since midnight at the site. */
export const siteMinute = ({ site }: Pick<Contents, 'site'>, instant: number): number =>
  minuteOfDay(instant, site.timeZone);

/** The wind on every end and the ends it puts in use, at an instant (ms since 1970, UTC). */
export function flowFor(contents: FlowContents, wind: Wind, instant: number): Flow {
  const rules = flowRules(contents);
  return {
    ...chooseFlow(rules, wind, siteMinute(contents, instant)),
    wind,
    ends: rules.ends.map((end) => ({
      ...end,
      components: windComponents(wind.from, wind.speedKt, end.bearingDeg),
    })),
  };
}

/** Whether two states of a survey have the same flow in every wind, as far as can be told without working it out. */
export const sameGround = (a: FlowContents, b: FlowContents): boolean =>
  a.subject === b.subject &&
  a.configurations === b.configurations &&
  a.calm === b.calm &&
  a.site.timeZone === b.site.timeZone &&
  a.site.elevation === b.site.elevation &&
  a.runways.length === b.runways.length &&
  a.runways.every((runway, i) => runway === b.runways[i]);
