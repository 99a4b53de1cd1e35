import { findPasses, type Ask, type Pass } from '../figures/log/find-passes';
import { frameOf } from '../figures/log/frame-time';
import { logEntryOf } from '../figures/log/log-entry-of';
import type { PhotoRecord } from '../survey/photo-record';
import { predictPass } from '../figures/log/predict';
import type { Sample } from '../figures/types';
import type { NewLogEntry } from '../survey/edits/add-log-entries';
import type { Derived } from './derived.svelte';
import type { Hand } from './view.svelte';

/** What a person said of a pass; `length`: that it is one pass, however long it took. */
export interface PassAnswer {
  readonly spot?: string;
  readonly path?: string;
  readonly subject?: string;
  readonly length?: true;
}

/** A pass with what was answered, and what the figures say of its middle. */
export interface KnownPass extends Pass {
  /** Stays while photographs and clock do: its first file. */
  readonly key: string;
  readonly answered: boolean;
  readonly predicted: Sample | null;
}

/** Photographs that were read, as passes of this survey: computed while the log is looked at. */
export class LogReading {
  readonly #figures: Pick<Derived, 'contents' | 'flow' | 'terrain'>;
  readonly #hand: Pick<Hand, 'dragging'>;

  constructor(figures: Pick<Derived, 'contents' | 'flow' | 'terrain'>, hand: Pick<Hand, 'dragging'>) {
    this.#figures = figures;
    this.#hand = hand;
  }

  photos = $state.raw<readonly PhotoRecord[]>([]);
  /** s to be added to what the cameras' clocks say. */
  correction = $state.raw(0);
  answers = $state.raw<Readonly<Record<string, PassAnswer>>>({});

  #lastContents: Derived['contents'] | null = null;
  /** While something is dragged, passes stay as they were: hundreds of them take longer than a frame. */
  readonly #contents = $derived.by(() => {
    const { contents } = this.#figures;
    if (this.#hand.dragging !== null && this.#lastContents) return this.#lastContents;
    return (this.#lastContents = contents);
  });
  readonly #found = $derived.by(() => {
    const contents = this.#contents;
    const zone = contents.site.timeZone;
    const frames = this.photos.map((record) => frameOf(record, zone, this.correction));
    return findPasses(frames, contents, this.#figures.flow.inUse);
  });
  /** Photographs of no pass, each with why. */
  readonly left = $derived.by(() => this.#found.left);
  readonly passes = $derived.by((): readonly KnownPass[] =>
    this.#found.passes.map((pass) => {
      const key = pass.frames[0]?.record.file ?? '';
      const answer = this.#answerTo(key) ?? {};
      const known = { ...pass, ...answerTo(pass, answer) };
      const [predicted] = predictPass(
        known,
        [(pass.from + pass.to) / 2],
        this.#contents,
        this.#figures.terrain,
      );
      return { ...known, key, answered: this.#answerTo(key) !== null, predicted: predicted ?? null };
    }),
  );

  #answerTo(key: string): PassAnswer | null {
    return Object.hasOwn(this.answers, key) ? (this.answers[key] ?? null) : null;
  }

  /** The same answer for many passes. */
  answer(keys: Iterable<string>, answer: PassAnswer): void {
    this.answers = {
      ...this.answers,
      ...Object.fromEntries([...keys].map((key) => [key, { ...this.#answerTo(key), ...answer }])),
    };
  }

  /** What can be kept: passes whose spot is known. */
  readonly entries = $derived.by((): readonly NewLogEntry[] =>
    this.passes.flatMap((pass) => {
      const spot = this.#contents.spots.find(({ id }) => id === pass.spot);
      return spot ? [logEntryOf(pass, spot, pass.predicted)] : [];
    }),
  );

  forget(): void {
    this.photos = [];
    this.answers = {};
  }
}

function answerTo(
  pass: Pass,
  { spot, path, subject, length }: PassAnswer,
): Pick<Pass, 'spot' | 'path' | 'subject' | 'doubts'> {
  const settled: Readonly<Record<Ask['about'], boolean>> = {
    spot: spot !== undefined,
    path: path !== undefined,
    subject: subject !== undefined,
    // Which of two movements it was matters for path and aircraft.
    movement: path !== undefined && subject !== undefined,
    length: length !== undefined,
  };
  return {
    spot: spot ?? pass.spot,
    path: path ?? pass.path,
    subject: subject ?? pass.subject,
    doubts: pass.doubts.filter(({ about }) => !settled[about]),
  };
}
