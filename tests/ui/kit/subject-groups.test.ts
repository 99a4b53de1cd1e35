import { describe, expect, it } from 'vitest';
import { starterSubjects } from '../../../src/survey/starter/subjects';
import { subjectGroups } from '../../../src/ui/kit/subject-groups';

const keys = (typed: string) =>
  subjectGroups(starterSubjects, typed).flatMap((g) => g.subjects.map((s) => s.key));

describe('the grouped list of subjects', () => {
  it('holds every subject once', () => {
    expect(keys('').toSorted()).toEqual(starterSubjects.map((s) => s.key).toSorted());
  });
  it('keeps classes apart from types', () => {
    const [letters, classes, jets] = subjectGroups(starterSubjects, '');
    expect(letters?.subjects.map((s) => s.key).join()).toMatch(/^any-code-a,.*any-code-f$/);
    expect(classes?.subjects.map((s) => s.key)).toContain('any-glider');
    expect(jets?.subjects.map((s) => s.key)).toContain('A320');
    expect(jets?.subjects.some((s) => s.key.startsWith('any-'))).toBe(false);
  });
});

describe('typing', () => {
  it('finds by designator, whatever the case', () => {
    expect(keys('a32')).toEqual(['A320']);
  });
  it('wants every word somewhere', () => {
    expect(keys('business large')).toEqual(['F2TH', 'GLF6']);
    expect(keys('business glider')).toEqual([]);
  });
  it('leaves empty groups out', () => {
    expect(subjectGroups(starterSubjects, 'helicopter').map((g) => g.name)).toEqual([
      'Classes, of typical size',
      'Helicopters',
    ]);
  });
  it('finds what people call otherwise than the survey does', () => {
    const found = subjectGroups(starterSubjects, 'big twin', new Set(['A320']));
    expect(found.flatMap((g) => g.subjects.map((s) => s.key))).toEqual(['A320']);
  });
});
