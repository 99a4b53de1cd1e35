import { describe, expect, test } from 'vitest';
import { isAmong, middleSeen } from '../../../src/figures/frame/points-seen';

const triangle = [
  [1, 1],
  [5, 2],
  [2, 6],
] as const;

describe('points in a picture', () => {
  test('[F1281] a place is among points within their outline, not beside it and not before its slanting edge', () => {
    expect(isAmong([2.5, 3], triangle)).toBe(true);
    expect(isAmong([4.4, 5], triangle)).toBe(false);
    expect(isAmong([0, 3], triangle)).toBe(false);
    expect(isAmong([2.5, 1.2], triangle)).toBe(false);
    expect(isAmong([2.5, 3], triangle.slice(0, 2))).toBe(false);
    expect(isAmong([0, 0], [])).toBe(false);
  });

  test('[F1281] their middle is that of what they take each way, not of their sum', () => {
    expect(middleSeen(triangle)).toEqual([3, 3.5]);
  });
});
