import { expect, test } from 'vitest';
import { newSurvey } from '../../src/survey/new-survey';
import { factsOf } from '../../src/keeping/survey-files';

test('[K18] a survey without a name says where it is, one with a name or a code need not', () => {
  const reference = [18.173412, 50.92871] as const;
  expect(factsOf(newSurvey({ reference })).place).toBe('50.929, 18.173');
  expect(factsOf(newSurvey({ name: 'Field', reference })).place).toBe('');
  expect(factsOf(newSurvey({ icao: 'ZZ01', reference })).place).toBe('ZZ01');
  expect(factsOf(newSurvey({})).place).toBe('');
});
