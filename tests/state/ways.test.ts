import { describe, expect, it } from 'vitest';
import { Ways } from '../../src/state/ways.svelte';

function store(text: string | null = null) {
  const kept = { text };
  return { kept, read: () => kept.text, write: (to: string) => ((kept.text = to), true) };
}

describe('[L30] how one goes and where from', () => {
  it('comes back on this device, a speed for each way of going', () => {
    const device = store();
    const ways = new Ways(device);
    ways.by = 'bicycle';
    ways.speed = 6;
    ways.by = 'foot';
    ways.from = { name: 'Sarn', position: [18.2, 50.9] };
    const again = new Ways(device);
    expect([again.by, again.speed, again.from]).toEqual([
      'foot',
      1.25,
      { name: 'Sarn', position: [18.2, 50.9] },
    ]);
    again.by = 'bicycle';
    expect(again.speed).toBe(6);
    again.speed = null;
    expect(again.speed).toBe(4.5);
    again.from = null;
    expect(new Ways(device).from).toBeNull();
  });

  it('what is damaged counts as nothing', () => {
    for (const text of ['{', '7', '{"by":"kite","bicycle":-3,"from":{"name":"x","at":[500,1]}}']) {
      const ways = new Ways(store(text));
      expect([ways.by, ways.speed, ways.from]).toEqual(['bicycle', 4.5, null]);
    }
  });
});
