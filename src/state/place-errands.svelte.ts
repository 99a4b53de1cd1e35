import { untrack } from 'svelte';
import type { Position } from '../survey/document';
import { standingEyeHeight } from '../survey/schema/standing-spot';
import type { Area } from '../sweep/area';
import { pastUse } from '../figures/flown/past-use';
import { planSweep } from '../sweep/plan';
import type { Derived } from './derived.svelte';
import type { FlownFigures } from './flown.svelte';
import { PlaceErrand, type Runner } from './place-errand.svelte';
import type { Hand } from './view.svelte';
import type { WhereToStand } from './where-to-stand.svelte';

/** m to a side of a cell for lines and shares: coarser than the sweep, and a quarter of its work. */
const coarseCell = 40;

/** What is asked besides the sweep, for its view: computed in workers, and while something is dragged the last answers stand. */
export class PlaceErrands {
  /** The path whose reach lines are drawn (PathRef.path), null for none. */
  reachOf = $state.raw<string | null>(null);
  wantsYear = $state.raw(false);
  readonly ground: PlaceErrand<'ground'>;
  readonly reach: PlaceErrand<'reach'>;
  readonly inSight: PlaceErrand<'inSight'>;
  readonly year: PlaceErrand<'year'>;
  readonly #where: WhereToStand;
  readonly #figures: Pick<Derived, 'contents' | 'terrain'>;
  readonly #hand: Pick<Hand, 'dragging'>;
  readonly #flown: Pick<FlownFigures, 'learned' | 'recorded' | 'trouble'>;

  constructor(
    where: WhereToStand,
    figures: Pick<Derived, 'contents' | 'terrain'>,
    hand: Pick<Hand, 'dragging'>,
    flown: Pick<FlownFigures, 'learned' | 'recorded' | 'trouble'>,
    runner: () => Runner,
  ) {
    this.#flown = flown;
    this.#where = where;
    this.#figures = figures;
    this.#hand = hand;
    this.ground = new PlaceErrand('ground', runner());
    this.reach = new PlaceErrand('reach', runner());
    this.inSight = new PlaceErrand('inSight', runner());
    this.year = new PlaceErrand('year', runner());
  }

  get #asked() {
    const { contents, question } = this.#where;
    return { contents, terrain: this.#figures.terrain, asked: { ...question, cell: coarseCell } };
  }
  /** Recorded flights, of which it is not known yet what they used. */
  get #isLearning(): boolean {
    const { learned, recorded, trouble } = this.#flown;
    return recorded > 0 && learned === null && trouble === null;
  }
  get #still(): boolean {
    return this.#hand.dragging === null && this.#where.refused === null;
  }

  /** Whether past winds or recorded flights tell how often ends are in use; true while that is not known yet. */
  readonly tellsOfEnds = $derived.by(() => {
    const { contents } = this.#figures;
    return (
      this.#isLearning || pastUse(contents, contents.windRecord, this.#flown.learned?.uses ?? []) !== null
    );
  });

  /** Where the shares in sight lie; null where they are not known. */
  readonly shares = $derived.by((): { readonly area: Area; readonly values: Float64Array } | null => {
    const values = this.inSight.answer;
    if (!values) return null;
    const planned = planSweep(this.#asked.contents, this.#asked.asked, this.#figures.terrain);
    if (!planned.ok || planned.plan.area.count ** 2 !== values.length) return null;
    return { area: planned.plan.area, values };
  });

  /** Each to be called in an effect. */
  followReach(): void {
    const { reachOf } = this;
    const asked = this.#asked;
    if (!this.#still) return;
    untrack(() => {
      if (reachOf === null) this.reach.forget();
      else void this.reach.ask({ ...asked, path: reachOf });
    });
  }
  followSight(): void {
    const asked = this.#asked;
    if (this.#where.layer !== 'in-sight' || !this.#still) return;
    untrack(() => void this.inSight.ask(asked));
  }
  followGround(pointed: Position | null): void {
    const { contents, question: asked } = this.#where;
    if (!this.#still) return;
    untrack(() => {
      if (pointed) void this.ground.ask({ contents, asked, position: pointed });
      else this.ground.forget();
    });
  }
  followYear(): void {
    const { candidates, question, busy } = this.#where;
    const { contents, terrain } = this.#figures;
    const { windRecord: record, spots } = contents;
    if (!this.wantsYear || !this.#still || busy) return;
    const { learned } = this.#flown;
    if (this.#isLearning) return;
    untrack(() => {
      const uses = learned?.uses ?? [];
      if (!this.tellsOfEnds) return this.year.forget();
      const proposed = candidates.map(({ position, deck }) => ({
        position,
        ground: deck,
        eyeHeight: standingEyeHeight,
        spot: null,
      }));
      const known = spots.map((spot) => {
        const { position, ground, eyeHeight } = spot;
        return { position, ground, eyeHeight, spot };
      });
      void this.year.ask({
        contents,
        record,
        uses,
        places: [...proposed, ...known],
        at: question.at,
        step: question.step ?? 900,
        terrain,
      });
    });
  }

  close(): void {
    for (const errand of [this.ground, this.reach, this.inSight, this.year]) errand.close();
  }
}
