import { expect, test } from 'vitest';
import { inSlices } from '../../src/state/in-slices';

/** A clock that goes on by a ms with each step, and tasks that come when the test says so. */
function scene(steps: number) {
  let [now, done] = [0, 0];
  const tasks: (() => void)[] = [];
  const heard: string[] = [];
  function* work(): Generator<void, string> {
    for (; done < steps; done++) {
      now++;
      yield;
    }
    return 'whole';
  }
  const pauses = {
    now: () => now,
    later(go: () => void) {
      tasks.push(go);
      return () => void tasks.splice(tasks.indexOf(go), 1);
    },
  };
  const end = inSlices(work(), pauses, (result) => heard.push(result));
  return { tasks, heard, end, done: () => done, next: () => tasks.shift()?.() };
}

test('[P44] long work is done in slices of a few ms, each in a task of its own, and told once', () => {
  const { tasks, heard, done, next } = scene(20);
  const slices = [done()];
  while (tasks.length > 0) {
    expect(heard).toEqual([]);
    next();
    slices.push(done());
  }
  expect(heard).toEqual(['whole']);
  expect(slices.at(-1)).toBe(20);
  const each = slices.map((now, i) => now - (slices[i - 1] ?? 0));
  expect(Math.max(...each)).toBeLessThan(8);
  expect(slices.length).toBeGreaterThan(2);
});

test('[P45] what is short is done at once', () => {
  const { tasks, heard } = scene(3);
  expect([heard, tasks]).toEqual([['whole'], []]);
});

test('[P46] ended between two slices, nothing more is done or told', () => {
  const { tasks, heard, end, done, next } = scene(20);
  next();
  const before = done();
  end();
  expect(tasks).toEqual([]);
  next();
  expect([done(), heard]).toEqual([before, []]);
});
