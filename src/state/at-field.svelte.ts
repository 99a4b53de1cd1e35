import { sunTimes } from '../figures/light/sun-times';
import { dueOn } from '../figures/movements/due-on';
import { MovementLooks, type MovementFigures } from '../figures/movements/movement-figures';
import { flowsNow } from '../figures/now/flow-now';
import { passingNow, type AroundNow } from '../figures/now/passing-now';
import { placeNow, type DevicePosition, type PlaceNow } from '../figures/now/place-now';
import { pointing, type Pointing } from '../figures/now/pointing';
import { reportAge } from '../figures/now/report-age';
import { todayAt, visitDay } from '../figures/now/today';
import { flownPaths, type OtherFlow } from '../figures/plan/flow-spans';
import type { Instead } from '../figures/plan/instead';
import type { MoveTime } from '../figures/plan/move-time';
import type { Stay } from '../figures/plan/stays-of';
import { declination } from '../figures/geometry/magnetic';
import { Scratch } from '../figures/scratch';
import { everyPath } from '../figures/traffic/every-path';
import { fieldElevation } from '../figures/traffic/paths';
import type { Derived } from './derived.svelte';
import { FieldDay } from './field-day.svelte';
import type { PlanSources, TurnedPlan } from './plans.svelte';

export interface AtFieldNeeds {
  readonly figures: Pick<Derived, 'contents' | 'terrain'> & { readonly flow: Pick<Derived['flow'], 'hours'> };
  readonly shown: { readonly configuration: number };
  /** Where the device is, and where it points by its own compass; null where it does not say. */
  readonly found: () => DevicePosition | null;
  readonly compass: () => number | null;
}

/** The next place of the day, and when to leave for it from where one is. */
export interface NextPlace {
  readonly stay: Stay;
  readonly way: (MoveTime & { readonly leave: number }) | null;
}

const minuteMs = 60_000;
/** ms ahead that one looks for something else to do when the wind turns. */
const aheadMs = 3 * 3_600_000;

/**
 * The day itself, at the field: what holds at this minute where one stands. It is worked out anew when the minute, the
 * place, the ends or the survey change, and not in between.
 */
export class AtField {
  readonly #needs: AtFieldNeeds;
  readonly #scratch = new Scratch();
  readonly day: FieldDay;
  #minute = $state.raw(0);
  /** The spot (id) that was chosen by hand; null to go by the device. */
  spot = $state.raw<string | null>(null);
  /** How often the traffic was turned round by hand. */
  turns = $state.raw(0);

  constructor(needs: AtFieldNeeds, now: number) {
    this.#needs = needs;
    this.tick(now);
    const contents = () => needs.figures.contents;
    const sources: PlanSources = {
      get contents() {
        return contents();
      },
      get terrain() {
        return needs.figures.terrain;
      },
      day: this.#dayOf(),
      flow: this.#flowOf(),
    };
    this.day = new FieldDay(sources);
  }

  #dayOf(): PlanSources['day'] {
    const today = () => this.today;
    return {
      get date() {
        return today().date;
      },
      get timeZone() {
        return today().timeZone;
      },
      get span() {
        return today().span;
      },
    };
  }
  #flowOf(): PlanSources['flow'] {
    const flow = () => this.flow;
    // A forecast's hours do not count once the traffic was turned by hand.
    const hours = () => (this.turns === 0 ? this.#needs.figures.flow.hours : []);
    return {
      get inUse() {
        return flow();
      },
      get hours() {
        return hours();
      },
    };
  }

  /** To be called every second: what hangs on the time changes with the minute. */
  tick(now: number): void {
    this.#minute = Math.floor(now / minuteMs) * minuteMs;
  }

  /** The instant that everything here holds for, at a full minute. */
  get instant(): number {
    return this.#minute;
  }

  #lastToday: ReturnType<typeof todayAt> | null = null;
  readonly today = $derived.by(() => {
    const { site } = this.#needs.figures.contents;
    const last = this.#lastToday;
    const { from, to } = last?.span ?? { from: 0, to: 0 };
    if (last?.timeZone === site.timeZone && this.#minute >= from && this.#minute < to) return last;
    return (this.#lastToday = todayAt(site, this.#minute));
  });

  /** Names the visit under way, for what is kept of it. */
  readonly visit = $derived.by(() => visitDay(this.#needs.figures.contents.site, this.#minute));

  #lastFlows: readonly OtherFlow[] = [];
  /** The ends in use and those that may come instead. The same object while they stay. */
  readonly #flows = $derived.by(() => {
    const flows = flowsNow(this.#needs.figures.contents, this.#needs.shown.configuration, this.#minute);
    if (JSON.stringify(flows) === JSON.stringify(this.#lastFlows)) return this.#lastFlows;
    return (this.#lastFlows = flows);
  });
  readonly flow = $derived.by(
    (): OtherFlow =>
      this.#flows[this.turns % this.#flows.length] ?? { name: '', arrivals: [], departures: [] },
  );
  readonly canTurn = $derived.by(() => this.#flows.length > 1);

  /** Where one is; null while nobody has said. */
  readonly place = $derived.by((): PlaceNow | null => {
    const { contents } = this.#needs.figures;
    const chosen = contents.spots.find(({ id }) => id === this.spot);
    if (chosen) return { kind: 'spot', spot: chosen };
    const found = this.#needs.found();
    return found && placeNow(found, contents);
  });
  readonly #standing = $derived.by(() => {
    const { place } = this;
    return place?.kind === 'spot' || place?.kind === 'here' ? place.spot : null;
  });

  readonly #paths = $derived.by(() => {
    const { arrivals, departures } = this.flow;
    const always = { from: -Infinity, to: Infinity, arrivals, departures };
    return everyPath(this.#needs.figures.contents, flownPaths([always]), this.#needs.figures.terrain);
  });
  readonly around = $derived.by((): AroundNow | null => {
    const { contents, terrain } = this.#needs.figures;
    const spot = this.#standing;
    return spot && passingNow(contents, terrain, spot, this.#paths, this.#minute, this.#scratch);
  });

  readonly sunTimes = $derived.by(() => {
    const { from, to } = this.today.span;
    return sunTimes(this.#needs.figures.contents.site.reference, from, to);
  });
  readonly reportAge = $derived.by(() => {
    const { weather } = this.#needs.figures.contents;
    return weather && reportAge(weather, this.#minute);
  });

  readonly #due = $derived.by(() =>
    dueOn(this.#needs.figures.contents.movements, this.today.date, this.today.timeZone),
  );
  readonly #nextDue = $derived.by(() => this.#due.find(({ instant }) => instant >= this.#minute) ?? null);
  readonly movement = $derived.by((): MovementFigures | null => {
    const { contents, terrain } = this.#needs.figures;
    const next = this.#nextDue;
    return next && new MovementLooks(contents, this.flow, terrain).figures(next.movement, next.instant);
  });

  readonly #stay = $derived.by(
    () => this.day.stays.find(({ from, to }) => from <= this.#minute && this.#minute < to) ?? null,
  );
  /** The next stay of the day that is not the one under way. */
  readonly next = $derived.by((): NextPlace | null => {
    const stay = this.day.stays.find(({ from }) => from > this.#minute);
    if (!stay) return null;
    const [here, there] = [this.#standing, stay.spot];
    if (!here || !there || here.id === there.id) return { stay, way: null };
    const way = this.day.plans.moveBetween(here, there);
    return { stay, way: { ...way, leave: stay.from - way.minutes * minuteMs } };
  });

  /** What to do from here if the wind turns now. */
  readonly turned = $derived.by(
    (): readonly { readonly turned: TurnedPlan; readonly instead: Instead | null }[] => {
      const spot = this.#standing;
      if (!spot) return [];
      const stay = { spot, from: this.#minute, to: Math.max(this.#stay?.to ?? 0, this.#minute + aheadMs) };
      return this.day.plans.turned.map((turned) => ({
        turned,
        instead: this.day.plans.insteadOf(stay, turned),
      }));
    },
  );

  readonly #declination = $derived.by(() => {
    const { contents } = this.#needs.figures;
    return declination(contents.site.reference, fieldElevation(contents), this.today.span.from);
  });
  /** Which way to turn to the best of the first path; null without a compass or a place. */
  readonly pointing = $derived.by((): Pointing | null => {
    const compass = this.#needs.compass();
    const { around } = this;
    if (compass === null || !around) return null;
    return pointing(compass, this.#declination, around.passing[0]?.sample.bearing ?? null, around.sun);
  });
}
