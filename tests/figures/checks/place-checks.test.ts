import { describe, expect, it } from 'vitest';
import { placeProblems } from '../../../src/figures/checks/place-checks';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { contentsOf, feature } from '../../support/contents';

const here = [18.17, 50.93] as const;
const there = [18.18, 50.93] as const;
const corner = [18.18, 50.94] as const;

describe('[F810] what is drawn and has no meaning as a path is listed', () => {
  const listed = (...features: readonly unknown[]) => {
    const contents = contentsOf(features);
    expect(pathsOf(contents, () => true, null)).toEqual([]);
    return placeProblems(contents).map(({ id, reason, used }) => `${id} ${used} ${reason}`);
  };

  it('paths without length', () => {
    expect(
      listed(
        feature('f', 'flight-path', 'LineString', [here, here], { heights: [1, 2] }),
        feature('t', 'taxi-route', 'LineString', [here, here, here]),
      ),
    ).toEqual([
      'f false All positions of the flight path are in one place. Drag one away, or delete the path.',
      't false All positions of the taxi route are in one place. Drag one away, or delete the route.',
    ]);
  });

  it('a taxi route through half a country', () => {
    expect(listed(feature('t', 'taxi-route', 'LineString', [here, [20.17, 52.93]]))).toEqual([
      expect.stringMatching(/^t false The taxi route is 2\d\d km long/),
    ]);
  });

  it('an apron whose corners lie on one place', () => {
    const ring = [here, here, here, here];
    expect(listed(feature('a', 'apron', 'Polygon', [ring]))).toEqual([
      'a false The corners of the apron enclose no area. Drag one away, or delete the apron.',
    ]);
  });
});

it('[F811] and nothing is said of those that have one', () => {
  const contents = contentsOf([
    feature('f', 'flight-path', 'LineString', [here, there], { heights: [1, 2] }),
    feature('t', 'taxi-route', 'LineString', [here, here, there]),
    feature('a', 'apron', 'Polygon', [[here, there, corner, here]]),
  ]);
  expect(placeProblems(contents)).toEqual([]);
});
