import type { Question, Take } from '../merging/questions';
import { sameJson } from '../merging/same-json';
import { questionKey } from '../merging/unasked-changes';
import type { Survey } from '../survey/document';
import { freshId } from '../survey/ids';

type Asked = Omit<Question, 'base'>;

/** An answer holds for the two values that it was given about: when one of them changes it is asked again. */
type Answered = Pick<Question, 'mine' | 'theirs'> & { readonly take: Take };

/** What has been answered so far. Never changed: each answer makes another. */
export class MergeAnswers {
  readonly #answers: ReadonlyMap<string, Answered>;
  /** Ids of mine beside which theirs stays, and the ids that theirs get. */
  readonly #beside: ReadonlyMap<string, string>;

  constructor(
    answers: ReadonlyMap<string, Answered> = new Map(),
    beside: ReadonlyMap<string, string> = new Map(),
  ) {
    this.#answers = answers;
    this.#beside = beside;
  }

  takeFor(question: Question): Take | null {
    const answered = this.#answers.get(questionKey(question));
    if (!answered) return null;
    const still = sameJson(answered.mine, question.mine) && sameJson(answered.theirs, question.theirs);
    return still ? answered.take : null;
  }

  /** What was deleted meanwhile stays beside nothing. */
  beside(mine: Survey): ReadonlyMap<string, string> {
    const there = new Set(mine.features.map(({ id }) => id));
    return new Map([...this.#beside].filter(([id]) => there.has(id)));
  }

  with(questions: readonly Asked[], take: Take): MergeAnswers {
    const given = questions.map(
      (question) => [questionKey(question), { take, mine: question.mine, theirs: question.theirs }] as const,
    );
    return new MergeAnswers(new Map([...this.#answers, ...given]), this.#beside);
  }

  /** Theirs of that id stays beside mine, under an id that neither survey has. */
  withBoth(id: string, surveys: readonly Survey[]): MergeAnswers {
    const taken = new Set(surveys.flatMap(({ features }) => features.map((feature) => feature.id)));
    return new MergeAnswers(this.#answers, new Map([...this.#beside, [id, freshId(taken)]]));
  }

  withoutBoth(id: string): MergeAnswers {
    return new MergeAnswers(this.#answers, new Map([...this.#beside].filter(([mine]) => mine !== id)));
  }
}
