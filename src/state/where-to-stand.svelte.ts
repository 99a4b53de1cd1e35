import { untrack } from 'svelte';
import type { SweepClient } from '../sweep/client';
import type { SweepProgress } from '../sweep/run';
import type { Planned, SweepAsked } from '../sweep/plan';
import type { Candidate, Proposed } from '../sweep/candidates';
import type { PlaceLayer } from './drawn-places.svelte';
import { groundsOf, lightQuestion, questionOf, type Grounds, type HourChoice } from './place-question';
import { Turns } from './turns';
import type { Hand } from './view.svelte';

export type Sweeper = Pick<SweepClient, 'ask' | 'cancel' | 'close'>;

/** ms between two pictures of one question: to draw one takes the map longer than a worker takes for what is new in it. */
const pictureEvery = 500;

/** What a question has come to. */
export interface PlaceProgress {
  readonly asked: SweepAsked;
  readonly progress: SweepProgress;
}

/**
 * Where to stand, for the view of that name: it follows the survey, the ends in use and the moments as long as somebody
 * looks. A later question ends the earlier one. While something is dragged each question is let come to its first coarse
 * picture, then the newest is asked: asked at every move, none would come to anything.
 */
export class WhereToStand {
  hours = $state.raw<HourChoice>('day');
  layer = $state.raw<PlaceLayer>('minutes');
  #shown = $state.raw<PlaceProgress | null>(null);
  #light = $state.raw<PlaceProgress | null>(null);
  #refused = $state.raw<Extract<Planned, { ok: false }> | null>(null);
  #failed = $state.raw<string | null>(null);
  #share = $state.raw(0);
  #proposed = $state.raw<(Proposed & { readonly asked: SweepAsked }) | null>(null);
  #provisional = $state.raw(false);

  readonly #figures: Grounds;
  readonly #hand: Pick<Hand, 'dragging'>;
  readonly #sweeper: Sweeper;
  readonly #now: () => number;
  readonly #turns = new Turns();
  /** Under way without its first picture; what is to be asked after that. */
  #unseen = false;
  #waiting: (() => void) | null = null;
  #drawnAt = 0;

  constructor(figures: Grounds, hand: Pick<Hand, 'dragging'>, sweeper: Sweeper, now: () => number) {
    this.#figures = figures;
    this.#hand = hand;
    this.#sweeper = sweeper;
    this.#now = now;
  }

  #lastGrounds: readonly unknown[] = [];
  /** The contents that a question hangs on: the same ones until one of its grounds has changed. */
  readonly #contents = $derived.by(() => {
    const { contents } = this.#figures;
    const grounds = groundsOf(contents);
    const last = this.#lastGrounds;
    const same = grounds.length === last.length && grounds.every((ground, i) => ground === last[i]);
    this.#lastGrounds = grounds;
    return same && this.#lastContents ? this.#lastContents : (this.#lastContents = contents);
  });
  #lastContents: Grounds['contents'] | null = null;

  readonly #question = $derived.by(() => questionOf(this.#figures, this.hours, this.#contents));
  // As text: an edit that leaves the question as it is asks nothing.
  readonly #questionText = $derived(JSON.stringify(this.#question));

  /** The cells, coarse or fine; null before anything is known. */
  get shown(): PlaceProgress | null {
    return this.layer === 'light-a' || this.layer === 'light-b' ? this.#light : this.#shown;
  }
  /** What is asked, for those who ask more of the same. */
  get question(): SweepAsked {
    return this.#question;
  }
  get contents(): Grounds['contents'] {
    return this.#contents;
  }
  /** Why nothing can be asked; null where it can. */
  get refused(): Extract<Planned, { ok: false }> | null {
    return this.#refused;
  }
  get failed(): string | null {
    return this.#failed;
  }
  /** Share of the cells that are known, 0 to 1. */
  get share(): number {
    return this.#share;
  }
  /** The places as far as the question at hand is answered; null before any are known. */
  get proposed(): Proposed | null {
    return this.#proposed;
  }
  /** Whether they come from part of the ground, and better ones may follow. */
  get provisional(): boolean {
    return this.#provisional;
  }
  get candidates(): readonly Candidate[] {
    return this.#proposed?.candidates ?? [];
  }
  /** Whether what is shown is no more than a sketch: as if the ground were level and open. */
  get sketch(): boolean {
    const { shown } = this;
    return shown !== null && shown.progress.fineness === null;
  }
  /** Whether the question at hand is still being answered. */
  get busy(): boolean {
    return this.#refused === null && this.#failed === null && (this.#proposed === null || this.#provisional);
  }

  /** Asks whenever what it hangs on has changed: to be called in an effect. */
  follow(): void {
    void this.#questionText;
    void this.#figures.terrain;
    const contents = this.#contents;
    const dragging = this.#hand.dragging !== null;
    untrack(() => {
      const ask = () => this.#ask(contents);
      if (dragging && this.#unseen) this.#waiting = ask;
      else ask();
    });
  }

  /** The light at one moment, once the places are known: to be called in an effect. */
  followLight(): void {
    const { layer, busy } = this;
    const { instantA, instantB } = this.#figures.day;
    if (busy || (layer !== 'light-a' && layer !== 'light-b')) return;
    const asked = lightQuestion(this.#question, layer === 'light-a' ? instantA : instantB);
    untrack(() => {
      const isLast = this.#turns.begin();
      const planned = this.#sweeper.ask(this.#contents, asked, this.#figures.terrain, (progress) => {
        if (isLast() && this.#isDue(progress)) this.#light = { asked, progress };
      });
      if (!planned.ok) this.#light = null;
    });
  }

  close(): void {
    this.#turns.begin();
    this.#waiting = null;
    this.#sweeper.close();
  }

  #ask(contents: Grounds['contents']): void {
    const isLast = this.#turns.begin();
    const asked = this.#question;
    this.#waiting = null;
    this.#failed = this.#refused = this.#proposed = null;
    this.#share = 0;
    this.#unseen = true;
    const planned = this.#sweeper.ask(contents, asked, this.#figures.terrain, (progress) => {
      if (isLast()) this.#told(asked, progress);
    });
    if (planned.ok) return;
    this.#unseen = false;
    this.#refused = planned;
    this.#shown = null;
  }

  #told(asked: SweepAsked, progress: SweepProgress): void {
    const { fineness, sketched, failed, proposed, provisional, share } = progress;
    if (failed !== null) {
      this.#failed = failed;
      this.#unseen = false;
      return;
    }
    // Until there is a sketch at least, the last picture stands.
    const isSeen = fineness !== null || sketched;
    if (isSeen && this.#isDue(progress)) {
      this.#share = share;
      this.#shown = { asked, progress };
    }
    if (proposed) {
      this.#proposed = { ...proposed, asked };
      this.#provisional = provisional;
    }
    if (!isSeen || !this.#unseen) return;
    this.#unseen = false;
    this.#waiting?.();
  }

  /** Of the last picture; undefined before there is one. */
  #lastFineness: number | null | undefined = undefined;
  /** Every finer picture, and some in between. */
  #isDue({ fineness, proposed, provisional }: SweepProgress): boolean {
    const now = this.#now();
    const isDue =
      (proposed !== null && !provisional) ||
      fineness !== this.#lastFineness ||
      now - this.#drawnAt >= pictureEvery;
    if (!isDue) return false;
    this.#drawnAt = now;
    this.#lastFineness = fineness;
    return true;
  }
}
