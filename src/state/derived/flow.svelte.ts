import {
  flowFor,
  flowRules,
  sameGround,
  siteMinute,
  type FlowContents,
} from '../../figures/traffic/flow/flow-for';
import { flowHours } from '../../figures/traffic/flow/flow-hours';
import { shortEnds } from '../../figures/traffic/flow/short-ends';
import { turningOf } from '../../figures/traffic/flow/turning';
import { inUse, type EndsInUse } from '../../figures/traffic/in-use';
import { windAt } from '../../figures/traffic/wind/wind-at';
import type { Contents } from '../../survey/contents';
import type { Shown } from '../view.svelte';
import type { Day } from './day.svelte';

/** Wind, and the ends of runways that it puts in use, at the moment that is shown. */
export class Flow {
  readonly #survey: { readonly contents: Contents };
  readonly #day: Day;
  readonly #shown: Shown;

  constructor(survey: { readonly contents: Contents }, day: Day, shown: Shown) {
    this.#survey = survey;
    this.#day = day;
    this.#shown = shown;
  }

  readonly #instant = $derived.by(() =>
    this.#shown.moment === 'a' ? this.#day.instantA : this.#day.instantB,
  );
  // Derived: an edit that leaves the weather as it is works out no wind.
  readonly #weather = $derived.by(() => this.#survey.contents.weather);
  /** The survey's wind at that moment, null where it tells none. */
  readonly wind = $derived.by(() => {
    const weather = this.#weather;
    return weather && windAt(weather, this.#instant);
  });

  #lastGround: FlowContents | null = null;
  /** What the flow hangs on besides the wind: the same object until that changes, so that dragging a spot works out no flow. */
  readonly ground = $derived.by((): FlowContents => {
    const { contents } = this.#survey;
    const last = this.#lastGround;
    if (last && sameGround(last, contents)) return last;
    return (this.#lastGround = contents);
  });
  /** What the wind makes of every end, and which it puts in use; null without a wind. */
  readonly byWind = $derived.by(() => this.wind && flowFor(this.ground, this.wind.wind, this.#instant));
  readonly turning = $derived.by(
    () =>
      this.wind && turningOf(flowRules(this.ground), this.wind.wind, siteMinute(this.ground, this.#instant)),
  );
  /** The flow through a forecast, hour by hour; empty without one. */
  readonly hours = $derived.by(() => {
    const weather = this.#weather;
    return weather?.forecastTo ? flowHours(this.ground, weather) : [];
  });

  /** The ends in use, and whether the survey says so or they are assumed; with a wind to follow, what it makes of them. */
  readonly inUse = $derived.by((): EndsInUse & { readonly byWind: boolean } => {
    const { contents } = this.#survey;
    const chosen = inUse(contents, this.#shown.configuration);
    const flow = contents.weather?.follow ? this.byWind : null;
    if (!flow || flow.arrivals.length + flow.departures.length === 0) return { ...chosen, byWind: false };
    const { arrivals, departures, configuration } = flow;
    const name = configuration === null ? '' : (contents.configurations[configuration]?.name ?? '');
    return { arrivals, departures, stated: true, name, byWind: true };
  });
  /** Ends in use that are too short for the subject. */
  readonly shortEnds = $derived.by(() => shortEnds(this.ground, this.inUse));
}
