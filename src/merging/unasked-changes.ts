import type { Survey } from '../survey/document';
import { differences } from './differences';
import type { Merged } from './merge';
import type { Question } from './questions';

/** A thing of mine, null for the survey itself, and where it becomes another without a question. */
export interface UnaskedChange {
  readonly id: string | null;
  readonly pointers: readonly string[];
}

/** Unlike that of any other question of a merge. */
export const questionKey = ({ id, pointer }: Pick<Question, 'id' | 'pointer'>): string =>
  JSON.stringify([id, pointer]);

/** What a merge changes of mine besides what was asked: so that nothing of it comes in unseen. */
export function unaskedChanges(mine: Survey, { survey, asked }: Merged): readonly UnaskedChange[] {
  const known = new Set(asked.map(questionKey));
  const told = (id: string | null, pointers: readonly string[]): readonly UnaskedChange[] => {
    const unasked = pointers.filter((pointer) => !known.has(questionKey({ id, pointer })));
    return unasked.length === 0 ? [] : [{ id, pointers: unasked }];
  };
  const before = new Map(mine.features.map((feature) => [feature.id, feature]));
  return [
    ...told(null, differences({ ...mine, features: [] }, { ...survey, features: [] })),
    ...survey.features.flatMap((feature) => {
      const was = before.get(feature.id);
      return was && was !== feature ? told(feature.id, differences(was, feature)) : [];
    }),
  ];
}
