import { expect, it } from 'vitest';
import { subjectWords } from '../../../src/ui/movements/words';
import { contentsOf, plainSubject } from '../../support/contents';

const { movements, subjects } = contentsOf([], {
  subjects: [{ ...plainSubject, key: 'any-light-single', name: 'Light single' }],
  movements: [{ id: 'm', time: '06:15', use: 'arrival', type: 'XYZ9' }],
});
const [[movement], single] = [movements, subjects.find((s) => s.key === 'any-light-single')];

it('[I123] a guessed subject is named, with the type that is not in the list', () => {
  if (!movement || !single) throw new Error('expected a movement and a subject');
  const guess = { movement, subject: single, known: true };
  expect(subjectWords(guess, false)).toBe('XYZ9 is not in the list: figures for Light single');
  expect(subjectWords({ ...guess, known: false }, false)).toBe('not known by name: choose one');
  expect(subjectWords(guess, true)).toBe('as Light single');
  expect(subjectWords({ ...guess, subject: { ...single, key: 'xyz9' } }, true)).toBe(null);
  expect(subjectWords({ ...guess, movement: { ...movement, type: '' }, known: false }, false)).toBe(
    'type unknown: figures for Light single',
  );
});
