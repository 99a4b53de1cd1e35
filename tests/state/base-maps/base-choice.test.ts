import { describe, expect, test } from 'vitest';
import { BaseChoice } from '../../../src/state/base-maps/base-choice.svelte';
import type { OwnMap } from '../../../src/state/base-maps/own-map';
import type { KeptText } from '../../../src/storage/kept-text';

function shelf(works = true): KeptText {
  let text: string | null = null;
  return {
    read: () => text,
    write(next) {
      if (works) text = next;
      return works;
    },
  };
}
const archives = { read: () => Promise.resolve(null) };
const own = (id: string): OwnMap => ({
  id,
  name: id,
  kind: 'tiles',
  address: `https://${id}.example.org/{z}/{x}/{y}.png`,
  credit: 'Credit',
  maxZoom: 18,
  size: null,
});

describe('which base map lies under the survey', () => {
  test('[M5] is the plain plan at first, and what was chosen after a reload', () => {
    const store = shelf();
    const choice = new BaseChoice(store, archives);
    expect(choice.ground).toEqual({ kind: 'plain' });
    choice.add(own('a'));
    expect(new BaseChoice(store, archives).ground).toMatchObject({ kind: 'tiles', name: 'a', maxZoom: 18 });
  });

  test('[M5] is the plain plan when the chosen one is deleted', () => {
    const choice = new BaseChoice(shelf(), archives);
    choice.add(own('a'));
    expect(choice.remove('a')?.id).toBe('a');
    expect(choice.chosen).toBe('plain');
  });

  test('[M5] stays one object while nothing about it changes, so that the map is not put in anew', () => {
    const choice = new BaseChoice(shelf(), archives);
    choice.add(own('a'));
    const before = choice.ground;
    choice.setPale(false);
    choice.refresh();
    expect(choice.ground).toBe(before);
  });

  test('[M6] two tabs add maps without losing one another’s', () => {
    const store = shelf();
    const [one, other] = [new BaseChoice(store, archives), new BaseChoice(store, archives)];
    one.add(own('a'));
    other.add(own('b'));
    one.choose('street');
    expect(one.own.map(({ id }) => id)).toEqual(['a', 'b']);
    other.refresh();
    expect(other.own.map(({ id }) => id)).toEqual(['a', 'b']);
  });

  test('[M6] goes on when the device keeps nothing, and says so', () => {
    const choice = new BaseChoice(shelf(false), archives);
    choice.add(own('a'));
    choice.add(own('b'));
    expect(choice.kept).toBe(false);
    expect(choice.own.map(({ id }) => id)).toEqual(['a', 'b']);
    expect(choice.chosen).toBe('b');
  });
});
