import { farthest } from '../merging/farthest';
import { merge, type Merged } from '../merging/merge';
import { sameJson } from '../merging/same-json';
import { questionKey, unaskedChanges } from '../merging/unasked-changes';
import type { MergeAnswer, MergeChange, MergeQuestion, MergeUnderWay } from '../ports/merging';
import type { SurveyDocument } from '../state/document.svelte';
import type { View } from '../state/view.svelte';
import type { Survey } from '../survey/document';
import { MergeAnswers } from './merge-answers';
import type { OtherSide } from './merging.svelte';

export interface MergeNeeds {
  readonly document: SurveyDocument;
  readonly view: Pick<View, 'notice' | 'offer'>;
  /** The merge is over. */
  readonly end: (merge: SurveyMerge) => void;
}

/** The other side as it was read. */
type ReadSide = Omit<OtherSide, 'base' | 'source'> & {
  readonly theirs: Survey;
  readonly base: Survey | null;
};

/** Derived anew whenever the open survey changes, so that no edit and no other tab is overtaken by an answer. */
export class SurveyMerge implements MergeUnderWay {
  readonly from: string;
  readonly #side: ReadSide;
  readonly #needs: MergeNeeds;
  readonly #id: string;
  #answers = $state.raw(new MergeAnswers());

  readonly #beside = $derived.by(() => this.#answers.beside(this.mine));
  readonly #merged: Merged = $derived.by(() => {
    const { theirs, base } = this.#side;
    const decide = this.#answers.takeFor.bind(this.#answers);
    return merge(this.mine, theirs, { base, beside: this.#beside, decide });
  });
  readonly #questions: readonly MergeQuestion[] = $derived.by(() => {
    const { asked, theirs } = this.#merged;
    const has = (survey: Survey, id: string) => survey.features.some((feature) => feature.id === id);
    return asked.map((question) => ({
      ...question,
      key: questionKey(question),
      apart: question.pointer === '/geometry' ? farthest(question.mine, question.theirs) : null,
      answer: this.#answers.takeFor(question),
      canBoth: question.id !== null && has(this.mine, question.id) && has(theirs, question.id),
    }));
  });
  readonly #changed: readonly MergeChange[] = $derived.by(() => unaskedChanges(this.mine, this.#merged));

  constructor(side: ReadSide, needs: MergeNeeds) {
    this.#side = side;
    this.#needs = needs;
    this.#id = needs.document.id;
    this.from = side.from;
  }

  get holds(): boolean {
    return this.#needs.document.id === this.#id && this.#side.holds();
  }
  get mine(): Survey {
    return this.#needs.document.survey;
  }
  get theirs(): Survey {
    return this.#merged.theirs;
  }
  get questions(): readonly MergeQuestion[] {
    return this.#questions;
  }
  get beside(): ReadonlyMap<string, string> {
    return this.#beside;
  }
  get added(): readonly string[] {
    const put = [...this.#beside.values()];
    return this.#merged.added.filter((id) => !put.includes(id));
  }
  get deleted(): readonly string[] {
    return this.#merged.deleted;
  }
  get changed(): readonly MergeChange[] {
    return this.#changed;
  }
  get same(): number {
    return this.#merged.same.length;
  }
  get open(): number {
    return this.#merged.open.length;
  }
  get anything(): boolean {
    return !sameJson(this.mine, this.#merged.survey);
  }

  answer(question: MergeQuestion, answer: MergeAnswer): void {
    const { id, canBoth } = question;
    if (answer !== 'both') this.#answers = this.#answers.with([question], answer);
    else if (id !== null && canBoth) this.#answers = this.#answers.withBoth(id, [this.mine, this.theirs]);
  }

  answerAll(answer: 'mine' | 'theirs'): void {
    this.#answers = this.#answers.with(this.#questions, answer);
  }

  askAgain(id: string): void {
    this.#answers = this.#answers.withoutBoth(id);
  }

  take(): void {
    const { document, view, end } = this.#needs;
    const { survey, open } = this.#merged;
    if (open.length > 0 || !this.holds) return;
    const changes = this.anything;
    if (changes) document.perform(`merge with ${this.from}`, () => survey);
    const now = document.survey;
    this.#side.taken();
    end(this);
    if (!changes) view.notice = `Merged with ${this.from}: nothing had to change here.`;
    else
      view.offer(
        `Merged with ${this.from}.`,
        [{ label: 'Undo', run: () => document.survey === now && document.undo() }],
        { holds: (shown) => shown === now, then: null },
      );
  }

  leave(): void {
    this.#needs.end(this);
  }
}
