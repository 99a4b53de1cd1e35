import { expect, test } from 'vitest';
import { figuresFor } from '../../src/figures/figures-for';
import { contentsOf, plainKit, plainSubject, spotFeature } from '../support/contents';

test.each([
  ['lenses', 'shortest', 0, /sunside\.kit\.lenses\.0\.shortest: expected a number from 1 to 5000 mm, got 0/],
  [
    'lenses',
    'widestAperture',
    0,
    /sunside\.kit\.lenses\.0\.widestAperture: expected .*from 0\.5 to 64.*f-number.*got 0/,
  ],
  // Above 0, and so little that what is divided by it is infinite.
  ['bodies', 'sensorHeight', 1e-320, /sensorHeight: expected a number from 1 to 200 mm, got 1e-320/],
  ['lenses', 'longest', 1e-9, /longest: expected a number from 1 to 5000 mm, got 1e-9/],
  ['bodies', 'sensorWidth', -1, /sunside\.kit\.bodies\.0\.sensorWidth: expected .*from 1 to 200 mm, got -1/],
] as const)(
  '[F327] a kit with %s.%s of %s: the field is named, the rest is used',
  (list, member, value, words) => {
    const kit = {
      ...plainKit,
      [list]: plainKit[list].map((entry, i) => (i === 0 ? { ...entry, [member]: value } : entry)),
    };
    const contents = contentsOf([spotFeature('s', [8.5, 47.4])], { kit, subjects: [plainSubject] });
    expect(contents.problems.map((p) => p.reason).join('\n')).toMatch(words);
    expect(contents.kit[list]).toHaveLength(plainKit[list].length - 1);
    expect(figuresFor(contents, 0, null).spots).toHaveLength(1);
  },
);

test('[F328] a subject 4 km long: the field is named, the other subject is used', () => {
  const subjects = [
    { ...plainSubject, length: 4000 },
    { ...plainSubject, key: 'real' },
  ];
  const { problems, subject } = contentsOf([], { kit: plainKit, subjects });
  expect(problems.map((p) => p.reason).join('\n')).toMatch(
    /sunside\.subjects\.0\.length: expected a number from 0\.5 to 150 m, got 4000/,
  );
  expect(subject.key).toBe('real');
});
