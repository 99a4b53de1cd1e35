import { Scratch } from '../figures/scratch';
import { keptViews } from '../figures/when/still-views';
import {
  byMonth,
  endShares,
  expectedHours,
  sharesOf,
  type EndShare,
} from '../figures/traffic/flow/end-shares';
import { fewFlights, flownShares } from '../figures/flown/flown-shares';
import { flowRules } from '../figures/traffic/flow/flow-for';
import { sunShares } from '../figures/traffic/flow/sun-shares';
import type { ElevationGrid } from '../figures/sight/terrain';
import { pathsOf, type Path } from '../figures/traffic/paths';
import { yearLight } from '../figures/when/year-light';
import type { Contents } from '../survey/contents';
import type { StandingSpot } from '../survey/schema/standing-spot';
import type { Derived } from './derived.svelte';
import type { FlownFigures } from './flown.svelte';
import type { Hand } from './view.svelte';

/** What past winds make of the ends and of the light, for the view at the foot: computed only while it is looked at. */
export class WindRecordFigures {
  readonly #figures: Pick<Derived, 'contents' | 'day' | 'flow' | 'terrain'>;
  readonly #hand: Pick<Hand, 'dragging'>;
  /** Room to work in, one year at a time. */
  readonly #scratch = new Scratch();

  readonly #flown: Pick<FlownFigures, 'learned'>;

  constructor(
    figures: Pick<Derived, 'contents' | 'day' | 'flow' | 'terrain'>,
    hand: Pick<Hand, 'dragging'>,
    flown: Pick<FlownFigures, 'learned'>,
  ) {
    this.#figures = figures;
    this.#hand = hand;
    this.#flown = flown;
  }

  /** What the user wants shares to come from, while both are there; null leaves it to how many flights there are. */
  wanted = $state.raw<'wind' | 'flights' | null>(null);
  /** What was really used, by recorded flights; null without flights that have times. */
  readonly flights = $derived.by(() => {
    const { contents, flow } = this.#figures;
    const uses = this.#flown.learned?.uses;
    return uses ? flownShares(uses, flowRules(flow.ground).ends, contents.site.timeZone) : null;
  });
  readonly fewFlights = fewFlights;
  /** What shares come from: null where there is neither. */
  readonly basis = $derived.by(() => {
    if (this.record && this.flights)
      return this.wanted ?? (this.flights.flights >= fewFlights ? 'flights' : 'wind');
    return this.record ? 'wind' : this.flights ? 'flights' : null;
  });

  #lastSpots: readonly StandingSpot[] = [];
  /** The spots; while one is dragged they stay where they were, since a year of light takes longer than a frame. */
  readonly spots = $derived.by(() => {
    const { spots } = this.#figures.contents;
    return this.#hand.dragging === null ? (this.#lastSpots = spots) : this.#lastSpots;
  });

  readonly record = $derived.by(() => this.#figures.contents.windRecord);
  readonly #shares = $derived.by(() => {
    if (this.basis === 'flights') return this.flights?.shares ?? null;
    return this.record && endShares(flowRules(this.#figures.flow.ground), this.record);
  });

  /** Shares of direct sun that the record lets expect in each month * 24 + hour; null where it tells of no clouds. */
  readonly sun = $derived.by(() => this.record && sunShares(this.record));

  /** Ends that were in use, with their share of all observations and by month; empty without a record. */
  readonly ends = $derived.by(() => {
    const shares = this.#shares;
    if (!shares) return [];
    const months = byMonth(shares.observations);
    const all = months.reduce((a, b) => a + b, 0);
    return shares.ends.map((share) => {
      const used = byMonth(share.counts);
      return {
        share,
        of: all > 0 ? used.reduce((a, b) => a + b, 0) / all : 0,
        byMonth: used.map((n, i) => ((months[i] ?? 0) > 0 ? n / (months[i] ?? 1) : null)),
        byHour: sharesOf(share.counts, shares.observations),
      };
    });
  });
  /** Observations in each month * 24 + hour, in each month, and the share that prefers no end. */
  readonly observations = $derived.by(() => this.#shares?.observations ?? new Float64Array(288));
  readonly observationsByMonth = $derived.by(() => byMonth(this.observations));
  readonly undecided = $derived.by(() => {
    const shares = this.#shares;
    const all = this.observations.reduce((a, b) => a + b, 0);
    return shares && all > 0 ? shares.undecided.reduce((a, b) => a + b, 0) / all : 0;
  });

  /**
   * Hours of front light that can be expected in each month from a spot on the arrivals or departures of an end, null
   * in a month without observations, all null for a path out of the kit's reach. A year of light takes some tens of ms: each is worked out in a task of its own.
   */
  async expected(spot: StandingSpot, share: EndShare): Promise<readonly (number | null)[]> {
    await new Promise((go) => setTimeout(go));
    const { contents, terrain } = this.#figures;
    const { date, timeZone, instantA } = this.#figures.day;
    const path = pathOf(contents, share, terrain);
    const [view] = path ? keptViews(spot, [path], contents, instantA, terrain, this.#scratch) : [];
    if (!path || !view?.usable || !view.inSight) return Array<null>(12).fill(null);
    const year = yearLight(contents, spot, path, date, timeZone, terrain, this.#scratch);
    const days = Array<number>(12).fill(0);
    for (const day of year.grid.dates) {
      const month = Number(day.slice(5, 7)) - 1;
      days[month] = (days[month] ?? 0) + 1;
    }
    const { sun } = this;
    const lit = sun ? year.frontLitByHour.map((hours, at) => hours * (sun[at] ?? 1)) : year.frontLitByHour;
    return expectedHours(lit, share, this.observations, days);
  }
}

function pathOf(contents: Contents, { end, use }: EndShare, terrain: ElevationGrid | null): Path | null {
  const kind = use === 'arrivals' ? 'arrival' : 'departure';
  const { runway, end: index } = end.ref;
  return pathsOf(contents, (k, id, e) => k === kind && id === runway && e === index, terrain)[0] ?? null;
}
