import { expect, test } from 'vitest';
import { everyPath } from '../../src/figures/traffic/every-path';
import { chosenPaths } from '../../src/sweep/chosen-paths';
import { contentsOf, feature, plainKit, plainSubject, runwayFeature } from '../support/contents';

const contents = contentsOf(
  [
    runwayFeature(
      'main',
      [8.01, 50.02],
      [8.0205, 50.024],
      [
        { designator: '06', elevation: 112 },
        { designator: '24', elevation: 112 },
      ],
    ),
    feature(
      'a',
      'taxi-route',
      'LineString',
      [
        [8.011, 50.021],
        [8.015, 50.023],
      ],
      { name: 'A' },
    ),
  ],
  { subjects: [plainSubject], kit: plainKit, site: { reference: [8.01, 50.02] } },
);
const usual = { wind: null, configuration: 0, at: 0 };

test('[S365] the paths named are those of that name of all that are flown, in their order, whatever kind they are of', () => {
  const all = everyPath(contents, () => true, null);
  const called = all.map(({ ref }) => ref.path);
  expect(called).toEqual(
    expect.arrayContaining(['main/06/arrival', 'main/24/departure', 'main/06/circuit', 'a/forward']),
  );
  for (const names of [
    ['main/24/departure', 'main/06/arrival'],
    ['main/06/circuit'],
    ['a/forward', 'main/24/arrival'],
    called,
  ])
    expect(chosenPaths(contents, { ...usual, names }, null)).toEqual({
      paths: all.filter(({ ref }) => names.includes(ref.path)),
      missing: [],
    });
});

test('[S366] a name that the survey does not have is told, and the others are found', () => {
  const names = ['main/24/arrival', 'main/36/arrival', 'a/sideways'];
  const { paths, missing } = chosenPaths(contents, { ...usual, names }, null);
  expect(paths.map(({ ref }) => ref.path)).toEqual(['main/24/arrival']);
  expect(missing).toEqual(['main/36/arrival', 'a/sideways']);
});
