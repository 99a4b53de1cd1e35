import { Scratch } from '../figures/scratch';
import { keptViews } from '../figures/when/still-views';
import { byMonth, expectedHours, sharesOf, type EndShare } from '../figures/traffic/flow/end-shares';
import { pastEnds, pastUse, toldOf } from '../figures/flown/past-use';
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

  readonly record = $derived.by(() => this.#figures.contents.windRecord);
  readonly #chosen = $derived.by(() => this.#figures.contents.sharesFrom);
  /** What there is of recorded flights and past winds, and which of it counts; null where there is neither. */
  readonly #past = $derived.by(() =>
    pastUse(
      { ...this.#figures.flow.ground, sharesFrom: this.#chosen },
      this.record,
      this.#flown.learned?.uses ?? [],
    ),
  );
  readonly told = $derived.by(() => this.#past && toldOf(this.#past));

  #lastSpots: readonly StandingSpot[] = [];
  /** The spots; while one is dragged they stay where they were, since a year of light takes longer than a frame. */
  readonly spots = $derived.by(() => {
    const { spots } = this.#figures.contents;
    return this.#hand.dragging === null ? (this.#lastSpots = spots) : this.#lastSpots;
  });

  readonly #shares = $derived.by(() => this.#past && pastEnds(this.#past));

  /** Shares of direct sun that the record lets expect in each month * 24 + hour; null where it tells of no clouds. */
  readonly sun = $derived.by(() => this.record && sunShares(this.record));

  /** Ends that were in use, with their share of all of it and by month; empty where nothing is known. */
  readonly ends = $derived.by(() => {
    const shares = this.#shares;
    if (!shares) return [];
    const months = byMonth(shares.observations);
    const all = months.reduce((a, b) => a + b, 0);
    const from = this.told?.months ?? [];
    const isMixed = from.includes('flights') && from.includes('winds');
    return shares.ends.map((share) => {
      const used = byMonth(share.counts);
      const ofMonths = used.map((n, i) => ((months[i] ?? 0) > 0 ? n / (months[i] ?? 1) : null));
      const known = ofMonths.filter((of) => of !== null);
      // A flight is no observation of the wind: where months are told by either, each month counts as much.
      const ofAll = isMixed
        ? known.reduce((a, b) => a + b, 0) / Math.max(1, known.length)
        : used.reduce((a, b) => a + b, 0) / Math.max(1, all);
      return {
        share,
        of: ofAll,
        byMonth: ofMonths,
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
