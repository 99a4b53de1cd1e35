import { describe, expect, it } from 'vitest';
import { destination } from '../../src/figures/geometry/earth';
import { DeviceWhereabouts, type Device, type Turned } from '../../src/services/device-whereabouts.svelte';

/** A device whose sensors the test moves. */
function deviceDouble(more: Partial<Device> = {}) {
  let clock = 1_000_000;
  let found: PositionCallback = () => undefined;
  let failed: PositionErrorCallback = () => undefined;
  let askedFound: PositionCallback = () => undefined;
  let askedFailed: PositionErrorCallback = () => undefined;
  let turned: ((t: Turned) => void) | null = null;
  let seen: (() => void) | null = null;
  let ended: (() => void) | null = null;
  const log: string[] = [];
  const device: Device = {
    secure: true,
    geolocation: {
      getCurrentPosition: (success, error) => {
        log.push('ask');
        askedFound = success;
        askedFailed = error ?? askedFailed;
      },
      watchPosition: (success, error) => {
        log.push('watch');
        found = success;
        failed = error ?? failed;
        return 7;
      },
      clearWatch: (id) => log.push(`clear ${id}`),
    },
    allowsPosition: () => Promise.resolve(true),
    orientation: {
      allow: () => Promise.resolve(true),
      listen: (callback) => {
        turned = callback;
        return () => (turned = null);
      },
    },
    screen: {
      hold: (end) => {
        log.push('hold');
        ended = end;
        return Promise.resolve(() => log.push('release'));
      },
      onSeen: (callback) => {
        seen = callback;
        return () => (seen = null);
      },
    },
    now: () => clock,
    ...more,
  };
  return {
    device,
    log,
    wait: (ms: number) => (clock += ms),
    find: ([longitude, latitude]: readonly [number, number], accuracy: number) =>
      found({ coords: { longitude, latitude, accuracy } } as GeolocationPosition),
    fail: (code: number) => failed({ code } as GeolocationPositionError),
    answer: ([longitude, latitude]: readonly [number, number]) =>
      askedFound({ coords: { longitude, latitude, accuracy: 900 } } as GeolocationPosition),
    deny: (code: number) => askedFailed({ code } as GeolocationPositionError),
    turn: (compass: number | null) => turned?.({ alpha: null, beta: null, gamma: null, compass, screen: 0 }),
    listening: () => turned !== null,
    hide: () => ended?.(),
    show: () => seen?.(),
    minding: () => seen !== null,
  };
}
const fence = [18.19, 50.93] as const;

describe('where the device is', () => {
  it('[X40] asks for nothing until it is told to, and forgets all when it is left', async () => {
    const d = deviceDouble();
    const where = new DeviceWhereabouts(d.device);
    expect(d.log).toEqual([]);
    where.watch();
    where.watch();
    d.find(fence, 5);
    await where.point();
    d.turn(40);
    await where.stayAwake(true);
    expect(where.fix).toMatchObject({ position: fence, accuracy: 5 });
    expect([where.compass, where.awake]).toEqual([40, true]);
    where.leave();
    expect([where.fix, where.compass, where.awake, where.watching]).toEqual([null, null, false, false]);
    expect(d.log).toEqual(['watch', 'hold', 'clear 7', 'release']);
    expect([d.listening(), d.minding()]).toEqual([false, false]);
    // What was under way comes too late.
    d.find(fence, 5);
    expect(where.fix).toBeNull();
  });

  it('[X46] a page that was thrown away watches again where that was allowed before, and asks nobody else', async () => {
    const d = deviceDouble();
    const where = new DeviceWhereabouts(d.device);
    await where.watchAgain();
    expect([where.watching, d.log]).toEqual([true, ['watch']]);
    const refused = deviceDouble({ allowsPosition: () => Promise.resolve(false) });
    const other = new DeviceWhereabouts(refused.device);
    await other.watchAgain();
    expect([other.watching, refused.log]).toEqual([false, []]);
    // Left before the browser has answered.
    const late = deviceDouble();
    const third = new DeviceWhereabouts(late.device);
    const under = third.watchAgain();
    third.leave();
    await under;
    expect([third.watching, late.log]).toEqual([false, []]);
  });

  it('[X30] asked once it answers once and watches nothing; asked while it watches, what is watched stays', async () => {
    const d = deviceDouble();
    const where = new DeviceWhereabouts(d.device);
    const first = where.ask();
    d.answer(fence);
    expect(await first).toEqual({ ok: true, position: fence });
    expect([where.fix, where.watching, d.log]).toEqual([null, false, ['ask']]);
    where.watch();
    d.find(fence, 5);
    const second = where.ask();
    d.deny(3);
    expect(await second).toEqual({ ok: false, trouble: 'lost' });
    expect([where.trouble, where.fix?.accuracy, where.watching]).toEqual([null, 5, true]);
    const third = where.ask();
    // Left meanwhile: who asked still gets an answer.
    where.leave();
    d.deny(1);
    expect(await third).toEqual({ ok: false, trouble: 'refused' });
  });

  it('[X30] asked once over plain http, or of a device that has none, nothing is asked', async () => {
    const plain = deviceDouble({ secure: false });
    expect(await new DeviceWhereabouts(plain.device).ask()).toEqual({ ok: false, trouble: 'insecure' });
    expect(plain.log).toEqual([]);
    const bare = deviceDouble({ geolocation: null });
    expect(await new DeviceWhereabouts(bare.device).ask()).toEqual({ ok: false, trouble: 'missing' });
  });

  it('[X41] standing still for a minute with a sensor that trembles changes next to nothing', async () => {
    const d = deviceDouble();
    const where = new DeviceWhereabouts(d.device);
    where.watch();
    await where.point();
    const fixes = new Set<unknown>();
    const headings = new Set<unknown>();
    for (let i = 0; i < 3600; i++) {
      d.wait(1000 / 60);
      // A metre to and fro, known to 8 m; a degree and a half to and fro.
      d.find(destination(fence, (i * 37) % 360, 1), 8 + (i % 3) * 0.5);
      d.turn(120 + 0.9 * Math.sin(i));
      fixes.add(where.fix);
      headings.add(where.compass);
    }
    expect(fixes.size).toBe(1);
    expect(headings.size).toBeLessThanOrEqual(60);
  });

  it('[X42] walking along the fence it follows, at most once in two seconds; a finer or a rougher position counts at once', () => {
    const d = deviceDouble();
    const where = new DeviceWhereabouts(d.device);
    where.watch();
    const fixes = new Set<unknown>();
    for (let i = 0; i <= 200; i++) {
      d.find(destination(fence, 90, i * 0.14), 5);
      d.wait(100);
      fixes.add(where.fix);
    }
    expect(fixes.size).toBeGreaterThan(5);
    expect(fixes.size).toBeLessThanOrEqual(11);
    // The last step counts though nothing comes after it.
    d.find(destination(fence, 90, 40), 5);
    expect(where.fix?.position).toEqual(destination(fence, 90, 40));
    d.wait(1000);
    d.find(where.fix?.position ?? fence, 2);
    expect(where.fix?.accuracy).toBe(2);
    d.wait(1000);
    d.find(where.fix?.position ?? fence, 500);
    expect(where.fix?.accuracy).toBe(500);
  });

  it('[X43] refused is the end of it, lost is not: the last place stays until a new one comes', () => {
    const d = deviceDouble();
    const where = new DeviceWhereabouts(d.device);
    where.watch();
    d.find(fence, 5);
    d.fail(2);
    expect([where.trouble, where.fix?.accuracy, where.watching]).toEqual(['lost', 5, true]);
    d.find(fence, 6);
    expect([where.trouble, where.fix?.accuracy]).toEqual([null, 6]);
    d.fail(1);
    expect([where.trouble, where.fix, where.watching]).toEqual(['refused', null, false]);
    // Asked again, after it was allowed in the browser.
    where.watch();
    expect(d.log).toEqual(['watch', 'clear 7', 'watch']);
  });

  it('[X44] plain http, no sensor, a compass that says nothing: each is named, and nothing is asked', async () => {
    const plain = deviceDouble({ secure: false });
    const where = new DeviceWhereabouts(plain.device);
    where.watch();
    expect([where.trouble, plain.log]).toEqual(['insecure', []]);
    const bare = new DeviceWhereabouts(
      deviceDouble({ geolocation: null, orientation: null, screen: null }).device,
    );
    bare.watch();
    await bare.point();
    await bare.stayAwake(true);
    expect([bare.trouble, bare.headingTrouble, bare.awake, bare.canStayAwake]).toEqual([
      'missing',
      'missing',
      false,
      false,
    ]);
    const mute = deviceDouble();
    const silent = new DeviceWhereabouts(mute.device);
    await silent.point();
    mute.turn(null);
    expect(silent.headingTrouble).toBe('missing');
    const no = new DeviceWhereabouts(
      deviceDouble({ orientation: { allow: () => Promise.resolve(false), listen: () => () => undefined } })
        .device,
    );
    await no.point();
    expect(no.headingTrouble).toBe('refused');
  });

  it('[X45] the screen is held again when the page is seen again, and not once it was let go', async () => {
    const d = deviceDouble();
    const where = new DeviceWhereabouts(d.device);
    await where.stayAwake(true);
    d.hide();
    d.show();
    await Promise.resolve();
    expect(d.log).toEqual(['hold', 'hold']);
    await where.stayAwake(false);
    d.show();
    expect(d.log).toEqual(['hold', 'hold', 'release']);
    const flat = new DeviceWhereabouts(
      deviceDouble({
        screen: { hold: () => Promise.reject(new Error('battery')), onSeen: () => () => undefined },
      }).device,
    );
    await flat.stayAwake(true);
    expect(flat.awake).toBe(false);
  });
});
