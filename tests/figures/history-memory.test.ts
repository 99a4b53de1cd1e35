import { describe, expect, test } from 'vitest';
import { pathsOf } from '../../src/figures/traffic/paths';
import { readContents } from '../../src/survey/contents';
import { mostSteps } from '../../src/survey/history';
import { heldBySteps, sample } from '../support/history-cost';

describe('what history holds', () => {
  test('[F705] five hundred moves of a spot would stay under 30 MB: past surveys do not keep their figures', () => {
    // A fifth of them here; all five hundred are in `npm run bench`.
    expect(heldBySteps(mostSteps / 5, 'standing-spot')).toBeLessThan(30 / 5);
  });

  test('[F706] the same where a runway moves, which every path of it follows', () => {
    // Some MB are there from the first step on; figures kept alive would be 34 MB here.
    expect(heldBySteps(mostSteps / 10, 'runway')).toBeLessThan(30 / 5);
  });

  test('[F707] a movement of another type leaves the paths of the current one as they are', () => {
    const contents = readContents(sample);
    const before = pathsOf(contents, () => true, null);
    const other = contents.subjects.find((subject) => subject !== contents.subject);
    if (!other) throw new Error('expected two subjects in the sample site');
    const others = pathsOf({ ...contents, subject: other }, (kind) => kind === 'arrival', null);
    expect(others[0]).not.toBe(before[0]);
    const after = pathsOf(contents, () => true, null);
    expect(after.every((path, i) => path === before[i])).toBe(true);
    expect(pathsOf({ ...contents, subject: other }, (kind) => kind === 'arrival', null)[0]).toBe(others[0]);
  });
});
