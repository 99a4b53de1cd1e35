import { findPasses, type Ask, type Pass } from '../figures/log/find-passes';
import { correctionFromClock } from '../figures/log/clock-correction';
import { frameOf, type PhotoFrame } from '../figures/log/frame-time';
import { dueAbout } from '../figures/movements/due-about';
import type { DueMovement } from '../figures/movements/due-on';
import { logEntryOf, type KeptMeasure } from '../figures/log/log-entry-of';
import type { SettingsJudged } from '../figures/log/judge-settings';
import { judgePass } from '../figures/log/judge-pass';
import type { Marks } from '../figures/log/measure';
import { measurePass, type MeasuredPass } from '../figures/log/measure-pass';
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
  /** What they say of its settings. */
  readonly judged: readonly SettingsJudged[];
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
  /** s to be added to what the cameras' clocks say, and what it was before, the newest last. */
  #corrections = $state.raw<readonly number[]>([0]);
  get correction(): number {
    return this.#corrections.at(-1) ?? 0;
  }
  get corrected(): boolean {
    return this.#corrections.length > 1;
  }
  correct(seconds: number): void {
    if (seconds !== this.correction) this.#corrections = [...this.#corrections, seconds];
  }
  takeCorrectionBack(): void {
    if (this.corrected) this.#corrections = this.#corrections.slice(0, -1);
  }
  answers = $state.raw<Readonly<Record<string, PassAnswer>>>({});
  /** What was measured on frames, by the pass's key. */
  measures = $state.raw<Readonly<Record<string, KeptMeasure>>>({});

  #lastContents: Derived['contents'] | null = null;
  /** While something is dragged, passes stay as they were: hundreds of them take longer than a frame. */
  readonly #contents = $derived.by(() => {
    const { contents } = this.#figures;
    if (this.#hand.dragging !== null && this.#lastContents) return this.#lastContents;
    return (this.#lastContents = contents);
  });
  /** With the time that the survey's zone and the correction make of their clocks. */
  readonly frames = $derived.by(() => {
    const zone = this.#contents.site.timeZone;
    return this.photos.map((record) => frameOf(record, zone, this.correction));
  });
  readonly #found = $derived.by(() => findPasses(this.frames, this.#contents, this.#figures.flow.inUse));
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
      const sample = predicted ?? null;
      return {
        ...known,
        key,
        answered: this.#answerTo(key) !== null,
        predicted: sample,
        judged: judgePass(known, sample, this.#contents),
      };
    }),
  );

  #answerTo(key: string): PassAnswer | null {
    return Object.hasOwn(this.answers, key) ? (this.answers[key] ?? null) : null;
  }

  /** Corrects all clocks by a frame of a clock that showed this time; false where that is none. */
  correctByClock(frame: PhotoFrame, shown: string): boolean {
    if (frame.instant === null) return false;
    const own = frame.instant - this.correction * 1000;
    const seconds = correctionFromClock(own, shown, this.#contents.site.timeZone);
    if (seconds !== null) this.correct(seconds);
    return seconds !== null;
  }

  /** Corrects all clocks so that the middle of a pass is when a movement was due. */
  correctByMovement({ from, to }: Pick<Pass, 'from' | 'to'>, { instant }: DueMovement): void {
    this.correct(this.correction + Math.round((instant - (from + to) / 2) / 1000));
  }

  /** What was due on the day of a pass, and the days beside it: a clock may be on another date. */
  dueAbout({ from }: Pick<Pass, 'from'>): readonly DueMovement[] {
    return dueAbout(from, this.#contents);
  }

  /** The same answer for many passes. */
  answer(keys: Iterable<string>, answer: PassAnswer): void {
    const all = [...keys];
    this.answers = {
      ...this.answers,
      ...Object.fromEntries(all.map((key) => [key, { ...this.#answerTo(key), ...answer }])),
    };
    // What was measured held for the spot, path and aircraft of then.
    this.measures = Object.fromEntries(Object.entries(this.measures).filter(([key]) => !all.includes(key)));
  }

  /** What can be kept: passes whose spot is known. */
  readonly entries = $derived.by((): readonly NewLogEntry[] =>
    this.passes.flatMap((pass) => {
      const spot = this.#contents.spots.find(({ id }) => id === pass.spot);
      return spot ? [logEntryOf(pass, spot, pass.predicted, this.measureFor(pass.key))] : [];
    }),
  );

  /** What two marks on a frame of a pass say; null where spot, path or aircraft is not known. */
  measureOf(pass: Pick<Pass, 'spot' | 'path' | 'subject'>, marks: Marks): MeasuredPass | null {
    return measurePass(pass, marks, this.#contents, this.#figures.terrain);
  }

  keepMeasure(key: string, measure: KeptMeasure): void {
    this.measures = { ...this.measures, [key]: measure };
  }

  measureFor(key: string): KeptMeasure | null {
    return Object.hasOwn(this.measures, key) ? (this.measures[key] ?? null) : null;
  }

  forget(): void {
    this.photos = [];
    this.answers = {};
    this.measures = {};
    this.#corrections = [0];
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
