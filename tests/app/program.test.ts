import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { InstalledProgram, type Workers } from '../../src/app/program.svelte';
import { deviceWords } from '../../src/ui/program/words';
import { missingFor } from '../../src/app/abilities';

class Worker extends EventTarget {
  readonly said: unknown[] = [];
  constructor(public state: string) {
    super();
  }
  postMessage(message: unknown) {
    this.said.push(message);
  }
  becomes(state: string) {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

class Registration extends EventTarget {
  installing: Worker | null = null;
  waiting: Worker | null = null;
  active: Worker | null = null;
  updates = 0;
  update() {
    this.updates++;
    return Promise.resolve();
  }
  /** A worker is found, stored, and waits or takes over. */
  store(): Worker {
    const worker = new Worker('installing');
    this.installing = worker;
    this.dispatchEvent(new Event('updatefound'));
    this.installing = null;
    this.waiting = worker;
    worker.becomes('installed');
    return worker;
  }
}

class Container extends EventTarget {
  controller: Worker | null = null;
  readonly registration = new Registration();
  register = () => Promise.resolve(this.registration);
  /** A worker takes charge of the page. */
  takeOver(worker: Worker) {
    this.controller = worker;
    this.registration.waiting = null;
    this.registration.active = worker;
    this.dispatchEvent(new Event('controllerchange'));
    worker.becomes('activated');
  }
}

function setUp({
  visited = true,
  leave = (goOn: () => Promise<void>) => goOn(),
  busy = (): boolean => false,
} = {}) {
  const container = new Container();
  if (visited) container.controller = container.registration.active = new Worker('activated');
  const done: string[] = [];
  const clock = { now: 0 };
  const program = new InstalledProgram({
    workers: container as unknown as Workers,
    missing: [],
    leave: async (goOn) => {
      done.push('leave');
      await leave(goOn);
    },
    busy,
    endTyping: () => void done.push('end typing'),
    reload: () => void done.push('reload'),
    now: () => clock.now,
  });
  return { container, program, done, clock };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('the installed program', () => {
  it('[X1] stores itself at the first visit and says nothing of a new version', async () => {
    const { container, program, done } = setUp({ visited: false });
    await program.start('./sw.js');
    expect(program.offline).toBe('soon');
    container.takeOver(container.registration.store());
    expect(program.offline).toBe('ready');
    expect(program.newVersion).toBeNull();
    expect(done).toEqual([]);
  });

  it('[X2] offers a new version, and starts it only after the survey is safe', async () => {
    const { container, program, done } = setUp();
    await program.start('./sw.js');
    const worker = container.registration.store();
    expect(program.newVersion?.why).toBe('waiting');
    expect(worker.said).toEqual([]);
    await program.newVersion?.take();
    expect(worker.said).toEqual([{ type: 'SKIP_WAITING' }]);
    expect(done).toEqual(['end typing', 'leave']);
    container.takeOver(worker);
    expect(done).toEqual(['end typing', 'leave', 'reload']);
  });

  it('[X3] one that waited since an earlier visit is offered too; "later" puts it off', async () => {
    const { container, program } = setUp();
    container.registration.waiting = new Worker('installed');
    await program.start('./sw.js');
    expect(program.newVersion?.why).toBe('waiting');
    program.newVersion?.later();
    expect(program.newVersion).toBeNull();
  });

  it('[X4] starts nothing while the survey cannot be made safe', async () => {
    const { container, program, done } = setUp({ leave: () => Promise.resolve() });
    await program.start('./sw.js');
    const worker = container.registration.store();
    await program.newVersion?.take();
    expect(worker.said).toEqual([]);
    expect(done).toEqual(['end typing', 'leave']);
    expect(program.newVersion).not.toBeNull();
  });

  it('[X5] cuts off no drag: neither when it is taken nor when the worker is in charge', async () => {
    let busy = true;
    const { container, program, done } = setUp({ busy: () => busy });
    await program.start('./sw.js');
    const worker = container.registration.store();
    await program.newVersion?.take();
    expect(done).toEqual([]);
    busy = false;
    await program.newVersion?.take();
    busy = true;
    container.takeOver(worker);
    await vi.advanceTimersByTimeAsync(1_000);
    expect(done).not.toContain('reload');
    busy = false;
    await vi.advanceTimersByTimeAsync(200);
    expect(done).toContain('reload');
  });

  it('[X6] another tab that started it is no reason to reload, but is said', async () => {
    const { container, program, done } = setUp();
    await program.start('./sw.js');
    container.takeOver(container.registration.store());
    expect(done).toEqual([]);
    expect(program.newVersion?.why).toBe('started-elsewhere');
    await program.newVersion?.take();
    expect(done).toEqual(['end typing', 'leave', 'reload']);
  });

  it('[X7] asks for a newer version at most once an hour', async () => {
    const { container, program, clock } = setUp();
    await program.start('./sw.js');
    await program.lookedAt();
    clock.now = 3_600_000;
    await program.lookedAt();
    await program.lookedAt();
    expect(container.registration.updates).toBe(1);
  });

  it('[X8] does without where the browser has no service worker, or refuses it', async () => {
    const { container, program } = setUp({ visited: false });
    container.register = () => Promise.reject(new Error('not allowed'));
    await program.start('./sw.js');
    expect([program.offline, program.newVersion]).toEqual(['never', null]);
    program.partMissing();
    expect(program.newVersion).toMatchObject({ why: 'part-missing' });
  });
});

describe('what a browser withholds', () => {
  const all = { serviceWorker: {}, storage: { persist: () => true }, geolocation: {}, clipboard: {} };

  it('[X9] nothing on https; on plain http in a local network, what the user would miss', () => {
    expect(missingFor({ isSecureContext: true, navigator: all })).toEqual([]);
    expect(missingFor({ isSecureContext: false, navigator: { geolocation: {} } })).toEqual([
      'offline',
      'keeping',
      'position',
      'clipboard',
    ]);
    expect(missingFor({})).toHaveLength(4);
  });

  it('[X10] is said in one sentence, with the reason', () => {
    expect(deviceWords({ offline: 'never', missing: ['offline', 'position'] }, false)).toBe(
      'This page came over plain http, so the browser withholds: starting without a network, your position. All else works.',
    );
    expect(deviceWords({ offline: 'ready', missing: [] }, true)).toBe(
      'Sunside is stored on this device and starts without a network.',
    );
    expect(deviceWords({ offline: 'never', missing: [] }, true)).toBe('');
  });
});
