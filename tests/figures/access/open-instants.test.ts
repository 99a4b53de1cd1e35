import { expect, test } from 'vitest';
import { openInstants } from '../../../src/figures/access/open-instants';
import { openAt } from '../../../src/figures/access/open-spans';
import { readOpeningHours } from '../../../src/figures/access/read-hours';

const here = { position: [8, 50], timeZone: 'Europe/Berlin' } as const;

test('[S190] instants over three days are open as each of them is by itself, past midnight and by the sun', () => {
  const instants = Array.from({ length: 144 }, (_, k) => Date.UTC(2026, 5, 19, 22) + k * 1_800_000);
  for (const text of ['Mo-Fr 08:00-18:00', 'Sa 20:00-02:00', 'sunrise-sunset']) {
    const hours = readOpeningHours(text);
    if (!hours) throw new Error(`expected hours: ${text}`);
    const open = [...openInstants(text, instants, here)];
    expect(open).toEqual(instants.map((instant) => (openAt(hours, instant, here) ? 1 : 0)));
    expect(new Set(open)).toEqual(new Set([0, 1]));
  }
});

test('[S191] what is not stated or cannot be read counts as open', () => {
  expect([...openInstants(null, [0, 1], here), ...openInstants('when the pub is', [0, 1], here)]).toEqual([
    1, 1, 1, 1,
  ]);
});
