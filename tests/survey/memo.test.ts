import { describe, expect, test, vi } from 'vitest';
import { lastAnswer, Memo } from '../../src/survey/memo';

const [one, two] = [{ id: 'one' }, { id: 'two' }];

function asked(each?: number) {
  const memo = new Memo<object>(each === undefined ? {} : { each });
  const compute = vi.fn(() => ({}));
  return { memo, compute, get: (first: object, ...rest: unknown[]) => memo.get([first, ...rest], compute) };
}

describe('Memo', () => {
  test('[F700] answers the same object to the same key: identity of the parts, lists entry by entry', () => {
    const { get, compute } = asked();
    const answer = get(one, 5, [two, 'a'], NaN);
    expect(get(one, 5, [two, 'a'], NaN)).toBe(answer);
    expect(compute).toHaveBeenCalledTimes(1);
    expect(get(one, 6, [two, 'a'], NaN)).not.toBe(answer);
    expect(get(one, 6, [{ id: 'two' }, 'a'], NaN)).not.toBe(get(one, 6, [two, 'a'], NaN));
    expect(get(one, 6, [two], NaN)).not.toBe(get(one, 6, [two, 'a'], NaN));
    expect(get(one)).not.toBe(get(two));
  });

  test('[F701] keeps the newest answers about each first part, and no more', () => {
    const { get, compute } = asked(2);
    const [a, b] = [get(one, 'a'), get(one, 'b')];
    get(two, 'a');
    expect([get(one, 'a'), get(one, 'b')]).toEqual([a, b]);
    expect(compute).toHaveBeenCalledTimes(3);
    get(one, 'c');
    expect(get(one, 'b')).toBe(b);
    expect(compute).toHaveBeenCalledTimes(4);
    expect(get(one, 'a')).not.toBe(a);
  });

  test('[F702] forgets what is not about the parts it is told to keep, and answers anew', () => {
    const { memo, get, compute } = asked();
    const answer = get(one);
    get(two);
    memo.keepOnly([one]);
    expect(get(one)).toBe(answer);
    get(two);
    expect(compute).toHaveBeenCalledTimes(3);
  });

  test('[F703] keeps an answer of null or undefined like any other', () => {
    const memo = new Memo<null>();
    const compute = vi.fn(() => null);
    memo.get([one], compute);
    memo.get([one], compute);
    expect(compute).toHaveBeenCalledTimes(1);
  });

  test('[F704] a function that keeps its last answer only', () => {
    const make = vi.fn((list: readonly number[], n: number) => ({ list, n }));
    const kept = lastAnswer(make);
    const answer = kept([1, 2], 3);
    expect(kept([1, 2], 3)).toBe(answer);
    expect(kept([1, 2], 4)).not.toBe(answer);
    expect(kept([1, 2], 3)).not.toBe(answer);
    expect(make).toHaveBeenCalledTimes(3);
  });
});
