import { ladderAt, type LadderAt } from '../figures/access/ladder-at';
import { mayStand, type MayStand } from '../figures/access/may-stand';
import { ruleDoubts } from '../figures/access/access-doubts';
import { takenOn } from '../figures/plan/chosen-windows';
import { flownPaths } from '../figures/plan/flow-spans';
import { packFor, type PackItem } from '../figures/plan/pack';
import { staysOf, type Stay } from '../figures/plan/stays-of';
import { takenAlong } from '../figures/plan/taken-along';
import { everyPath } from '../figures/traffic/every-path';
import type { Path } from '../figures/traffic/paths';
import type { StandingSpot } from '../survey/schema/standing-spot';
import { Plans, type PlanSources } from './plans.svelte';

/** What is known of a spot's access on the day. */
export interface PlaceRules {
  readonly may: MayStand;
  readonly ladder: LadderAt;
}

/** The day that is looked at as one lives it: where one stands when, by what was ticked or else by the plan's own order. */
export class FieldDay {
  readonly #figures: PlanSources;
  readonly plans: Plans;

  constructor(figures: PlanSources) {
    this.#figures = figures;
    this.plans = new Plans(figures);
  }

  readonly #ticked = $derived.by(() => {
    const { date, timeZone } = this.#figures.day;
    return takenOn(this.plans.taken, date, timeZone);
  });
  /** Whether windows were ticked for this day; else the plan's own order stands in. */
  readonly isTicked = $derived.by(() => this.#ticked.length > 0);
  /** Ticked windows of other days. */
  readonly onOtherDays = $derived.by(() => this.plans.taken.length - this.#ticked.length);

  readonly stays = $derived.by((): readonly Stay[] => {
    const { contents, terrain, day } = this.#figures;
    const windows = this.isTicked ? this.#ticked : takenAlong(contents, terrain, this.plans.ladderWindows);
    return staysOf(windows, day.timeZone, (a, b) => this.plans.moveBetween(a, b));
  });

  /** The paths of the ends in use through the day. */
  readonly paths = $derived.by((): readonly Path[] => {
    const { contents, terrain } = this.#figures;
    return everyPath(contents, flownPaths(this.plans.spans), terrain);
  });
  readonly pack = $derived.by((): readonly PackItem[] => packFor(this.stays, this.#figures.contents));
  readonly ruleDoubts = $derived.by(() => ruleDoubts(this.#figures.contents.rules, this.#figures.day.date));

  rulesAt(spot: StandingSpot, instant: number): PlaceRules {
    const { contents } = this.#figures;
    return { may: mayStand(spot, contents, instant), ladder: ladderAt(spot, contents.rules) };
  }
}
