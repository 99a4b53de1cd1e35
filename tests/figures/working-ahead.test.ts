import { expect, test } from 'vitest';
import { Scratch } from '../../src/figures/scratch';
import { allSpotFigures } from '../../src/figures/spot-figures';
import { pathsOf } from '../../src/figures/traffic/paths';
import { workingAhead } from '../../src/figures/working-ahead';
import { atOnce } from '../../src/survey/at-once';
import { readContents } from '../../src/survey/contents';
import { builtUpSurvey } from '../bench/built-up-survey';

const instants = [Date.UTC(2026, 5, 21, 6), Date.UTC(2026, 5, 21, 16)];
const wanted = () => true;
/** Where nothing can be worked out. */
const noRoom = new Proxy(new Scratch(), {
  get: () => {
    throw new Error('expected to be found remembered');
  },
});

test('[P1046] what was worked out ahead of a survey is found remembered once that is shown', () => {
  const survey = builtUpSurvey();
  const shown = () => {
    // As the page reads it, anew.
    const contents = readContents(survey);
    return allSpotFigures(contents, pathsOf(contents, wanted, null), instants, null, noRoom);
  };
  expect(shown).toThrow('expected to be found remembered');
  const contents = readContents(survey);
  atOnce(workingAhead({ contents, wanted, terrain: null, otherPaths: undefined, instants }));
  expect(shown()).toHaveLength(contents.spots.length);
  expect(contents.spots.length).toBeGreaterThan(0);
  expect(contents.obstacles.length).toBeGreaterThan(0);
});

test('[P1046] in steps: a spot, a path, an obstacle at a time', () => {
  const contents = readContents(builtUpSurvey());
  const steps = [...workingAhead({ contents, wanted, terrain: null, otherPaths: undefined, instants })];
  expect(steps.length).toBeGreaterThanOrEqual(contents.spots.length + contents.obstacles.length);
});
