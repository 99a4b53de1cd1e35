import type { EndFrom } from '../../figures/movements/ends-of';
import type { MovementFigures } from '../../figures/movements/movement-figures';

export const endFromWords: Readonly<Record<EndFrom, string>> = {
  given: 'as listed',
  wind: 'by the wind',
  'in-use': 'as chosen',
  none: '',
};

/** Whose figures a movement has where they are not its own type's: a guess is named. `inList`: whether a subject has its type. */
export function subjectWords(
  { movement: { type }, subject, known }: Pick<MovementFigures, 'movement' | 'subject' | 'known'>,
  inList: boolean,
): string | null {
  const name = subject.name || subject.key;
  if (type === '') return known ? null : `type unknown: figures for ${name}`;
  if (subject.key.toUpperCase() === type.toUpperCase()) return null;
  if (!known) return 'not known by name: choose one';
  return inList ? `as ${name}` : `${type} is not in the list: figures for ${name}`;
}

/** "14:25 arrival A320 ZZ123". */
export const movementTitle = ({ movement }: Pick<MovementFigures, 'movement'>): string =>
  [movement.time, movement.use, movement.type, movement.flight].filter(Boolean).join(' ');
