import { describe, expect, test } from 'vitest';
import { militaryDoubts } from '../../../src/figures/checks/military-check';
import { destination } from '../../../src/figures/geometry/earth';
import { contentsOf, runwayFeature } from '../../support/contents';

const a = [8.5, 47.4] as const;
const runway = runwayFeature('rwy', a, destination(a, 90, 2000), [
  { designator: '09' },
  { designator: '27' },
]);
const withBreak = {
  ...runway,
  properties: { ...runway.properties, patterns: [{ pattern: 'break', end: 0 }] },
};

describe('military flying', () => {
  test('[F1055] photography may be an offence until the field has said what goes, whoever tells that it is military', () => {
    const doubts = (features: readonly unknown[], sunside: object) =>
      militaryDoubts(contentsOf(features, sunside as Record<string, unknown>)).length;
    expect(doubts([runway], {})).toBe(0);
    expect(doubts([runway], { site: { military: true } })).toBe(1);
    expect(doubts([withBreak], {})).toBe(1);
    expect(doubts([withBreak], { rules: { photography: 'ask' } })).toBe(0);
    expect(doubts([withBreak], { rules: { photography: 'forbidden' } })).toBe(0);
  });
});
