import { describe, expect, it } from 'vitest';
import { BrowserPosition, type Locator } from '../../src/services/device-position';

const failing = (code: number): Locator => ({ getCurrentPosition: (_, failed) => failed({ code }) });

describe('[X30] where this device is', () => {
  it('is asked for only when somebody asks', async () => {
    let asked = 0;
    const position = new BrowserPosition({
      getCurrentPosition: (found) => (asked++, found({ coords: { longitude: 18.2, latitude: 50.9 } })),
    });
    expect(asked).toBe(0);
    expect(await position.ask()).toEqual({ ok: true, position: [18.2, 50.9] });
  });

  it('refused, unknown, too late or not to be had here: says which, and how else to go on', async () => {
    const answers = await Promise.all(
      [failing(1), failing(2), failing(3), failing(99), null].map((locator) =>
        new BrowserPosition(locator).ask(),
      ),
    );
    for (const answer of answers)
      expect(answer).toMatchObject({ ok: false, reason: expect.stringContaining('Type a town') as string });
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(4);
  });
});
