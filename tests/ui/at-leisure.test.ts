import { afterEach, describe, expect, it, vi } from 'vitest';
import { atLeisure } from '../../src/ui/at-leisure';

/** A browser at rest as soon as it is asked, on a device that says `means` of itself. */
function device(means: object, isTold = true) {
  let waiting: (() => void)[] = [];
  vi.stubGlobal('navigator', means);
  const window = {
    requestIdleCallback: (go: () => void) => waiting.push(go),
    cancelIdleCallback: () => (waiting = []),
  };
  vi.stubGlobal('window', isTold ? window : {});
  vi.stubGlobal('requestIdleCallback', window.requestIdleCallback);
  vi.stubGlobal('cancelIdleCallback', window.cancelIdleCallback);
  return { rest: () => waiting.splice(0).forEach((go) => go()) };
}

afterEach(() => vi.unstubAllGlobals());

describe('what nobody has asked for yet', () => {
  it('[U1020] is done once the page is at rest, not before, and not where it was called off', () => {
    const { rest } = device({});
    const done = vi.fn();
    atLeisure(done);
    expect(done).not.toHaveBeenCalled();
    rest();
    expect(done).toHaveBeenCalledTimes(1);
    const other = vi.fn();
    atLeisure(other)();
    rest();
    expect(other).not.toHaveBeenCalled();
  });

  it.each([
    ['data is to be saved', { connection: { saveData: true } }, true],
    ['memory is short', { deviceMemory: 2 }, true],
    ['the browser does not tell when it is at rest', {}, false],
  ])('[U1021] is left alone where %s', (_, means, isTold) => {
    const { rest } = device(means, isTold);
    const done = vi.fn();
    atLeisure(done)();
    atLeisure(done);
    rest();
    expect(done).not.toHaveBeenCalled();
  });

  it('[U1021] is done where the device has means', () => {
    const { rest } = device({ connection: { saveData: false }, deviceMemory: 4 });
    const done = vi.fn();
    atLeisure(done);
    rest();
    expect(done).toHaveBeenCalledTimes(1);
  });
});
