import { dueOn } from '../figures/movements/due-on';
import { programmesOn } from '../figures/plan/acts-due';
import { chosenWindows } from '../figures/plan/chosen-windows';
import { dayPlan, moveTime, planRows, windFor, type DayPlan } from '../figures/plan/day-plan';
import { otherFlows, type FlowSpan, type OtherFlow } from '../figures/plan/flow-spans';
import { insteadOf, type Instead, type TimeAt } from '../figures/plan/instead';
import type { MoveTime } from '../figures/plan/move-time';
import { staysOf, type Stay } from '../figures/plan/stays-of';
import { takenAlong, type TakenAlong } from '../figures/plan/taken-along';
import type { StandingSpot } from '../survey/schema/standing-spot';
import type { Derived } from './derived.svelte';

/** What to do if the wind turns. */
export interface TurnedPlan {
  readonly flow: OtherFlow;
  /** Degrees true that the wind would come from, roughly; null for a flow without ends. */
  readonly windFrom: number | null;
  readonly plan: DayPlan;
}

/** What a plan is made from: the day that is looked at, or another. */
export interface PlanSources extends Pick<Derived, 'contents' | 'terrain'> {
  readonly day: Pick<Derived['day'], 'date' | 'timeZone' | 'span'>;
  readonly flow: {
    readonly inUse: Pick<Derived['flow']['inUse'], 'arrivals' | 'departures'>;
    readonly hours: Derived['flow']['hours'];
  };
}

/** The plan of the day, computed only while it is looked at. */
export class Plans {
  readonly #figures: PlanSources;

  constructor(figures: PlanSources) {
    this.#figures = figures;
  }

  /** The ends in use through the day: a forecast's where it covers it, else those in use now. */
  readonly spans = $derived.by((): readonly FlowSpan[] => {
    const { span: day } = this.#figures.day;
    const { inUse, hours: flowHours } = this.#figures.flow;
    const { contents } = this.#figures;
    const { arrivals, departures } = inUse;
    const whole = { ...day, arrivals, departures };
    if (!contents.weather?.follow) return [whole];
    const hours = flowHours
      .filter(
        ({ from, to, choice }) =>
          to > day.from && from < day.to && choice.arrivals.length + choice.departures.length > 0,
      )
      .map(({ from, to, choice }) => ({
        from,
        to,
        arrivals: choice.arrivals,
        departures: choice.departures,
      }));
    const [first, last] = [hours[0], hours.at(-1)];
    if (!first || !last) return [whole];
    // Outside the forecast the ends in use now stand in.
    return [{ ...whole, to: first.from }, ...hours, { ...whole, from: last.to }];
  });

  readonly #due = $derived.by(() =>
    dueOn(this.#figures.contents.movements, this.#figures.day.date, this.#figures.day.timeZone),
  );
  readonly #programmes = $derived.by(() => programmesOn(this.#figures.contents, this.#figures.day.date));
  readonly #others = $derived.by(() => otherFlows(this.#figures.contents, this.#figures.flow.inUse));
  readonly #rows = $derived.by(() =>
    planRows(
      this.#figures.contents,
      [...this.spans, ...this.#others],
      this.#figures.day.span,
      this.#figures.terrain,
      this.#programmes,
    ),
  );

  readonly today = $derived.by(() =>
    dayPlan(
      this.#figures.contents,
      this.#rows,
      this.spans,
      this.#figures.day.span,
      this.#due,
      this.#programmes,
    ),
  );

  /** The day's ladder as windows that can be taken along. */
  readonly ladderWindows = $derived.by(() => chosenWindows(this.today.stays));

  /** The flows that may come instead, with what they would make of the day. */
  readonly turned = $derived.by((): readonly TurnedPlan[] => {
    const { contents } = this.#figures;
    const { span: day } = this.#figures.day;
    return this.#others.map((flow) => {
      const { arrivals, departures } = flow;
      const plan = dayPlan(
        contents,
        this.#rows,
        [{ ...day, arrivals, departures }],
        day,
        this.#due,
        this.#programmes,
      );
      return { flow, windFrom: windFor(contents, flow), plan };
    });
  });

  /** The windows that were chosen, those of other days included, in order of time. */
  readonly taken = $derived.by((): readonly TakenAlong[] =>
    takenAlong(this.#figures.contents, this.#figures.terrain),
  );

  /** The same as time spent at spots, with the ways between them. */
  readonly stays = $derived.by((): readonly Stay[] =>
    staysOf(this.taken, this.#figures.day.timeZone, (a, b) => this.moveBetween(a, b)),
  );

  /** Where to go under another flow while one would stay somewhere; null when nothing is worth it then. */
  insteadOf(stay: TimeAt, { plan }: TurnedPlan): Instead | null {
    return insteadOf(stay, plan, (spot) => this.moveBetween(stay.spot, spot).minutes);
  }

  moveBetween(a: StandingSpot, b: StandingSpot): MoveTime {
    return moveTime(this.#figures.contents, a, b);
  }
}
