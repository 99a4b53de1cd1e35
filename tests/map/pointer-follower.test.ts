import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { MapPointer, PointerListener, Taken } from '../../src/map/map-surface';
import { holdMs, PointerFollower } from '../../src/map/pointer-follower';
import { SurfaceDouble } from './surface-double';

/** An element at (100, 40) of the page that keeps pointers. */
class Canvas extends EventTarget {
  captured: number[] = [];
  getBoundingClientRect() {
    return { left: 100, top: 40 };
  }
  setPointerCapture(id: number) {
    this.captured.push(id);
  }
}

let frames: (() => void)[] = [];
const frame = () => {
  const due = frames;
  frames = [];
  due.forEach((run) => run());
};

function following(takes: Taken) {
  const said: string[] = [];
  const say = (what: string) => (pointer: MapPointer | null) => {
    said.push(pointer ? `${what} ${pointer.pixel.x},${pointer.pixel.y} ${pointer.kind}` : what);
  };
  const listener: PointerListener = {
    down: (pointer) => {
      say('down')(pointer);
      return takes;
    },
    held: say('held'),
    move: say('move'),
    up: say('up'),
    cancel: () => say('cancel')(null),
    tap: say('tap'),
    hover: say('hover'),
  };
  const canvas = new Canvas();
  const surface = new SurfaceDouble();
  const follower = new PointerFollower(canvas as unknown as HTMLElement, surface, listener);
  const send = (type: string, x: number, y: number, more: object = {}) =>
    canvas.dispatchEvent(
      Object.assign(new Event(type), {
        clientX: x,
        clientY: y,
        pointerId: 1,
        isPrimary: true,
        button: 0,
        buttons: type === 'pointermove' ? 1 : 0,
        pointerType: 'mouse',
        ...more,
      }),
    );
  return { said, send, canvas, surface, follower };
}

beforeEach(() => {
  frames = [];
  vi.stubGlobal('requestAnimationFrame', (run: () => void) => frames.push(run));
  vi.stubGlobal('cancelAnimationFrame', () => (frames = []));
});
afterEach(() => vi.unstubAllGlobals());

describe('following a pointer', () => {
  test('a pointer that is taken: the map rests, moves come once a frame, the last one before up', () => {
    const { said, send, canvas, surface } = following(true);
    send('pointerdown', 130, 50);
    expect([surface.pans, canvas.captured]).toEqual([false, [1]]);
    send('pointermove', 140, 50);
    send('pointermove', 150, 52);
    frame();
    send('pointermove', 160, 55);
    send('pointerup', 161, 55);
    expect(said).toEqual(['down 30,10 mouse', 'move 50,12 mouse', 'move 60,15 mouse', 'up 61,15 mouse']);
    expect(surface.pans).toBe(true);
  });

  test('a pointer that is not taken pans the map; only in one place it is a tap', () => {
    const { said, send, surface } = following(false);
    send('pointerdown', 130, 50);
    send('pointermove', 190, 50);
    send('pointermove', 131, 50);
    send('pointerup', 131, 50);
    expect(said).toEqual(['down 30,10 mouse']);
    expect(surface.pans).toBe(true);
    send('pointerdown', 130, 50);
    send('pointerup', 132, 51);
    expect(said.at(-1)).toBe('tap 32,11 mouse');
  });

  test('a finger may stray farther than a mouse within one tap', () => {
    const touch = { pointerType: 'touch' };
    const { said, send } = following(false);
    send('pointerdown', 130, 50, touch);
    send('pointermove', 137, 50, touch);
    send('pointerup', 137, 50, touch);
    expect(said.at(-1)).toBe('tap 37,10 touch');
    send('pointerdown', 130, 50);
    send('pointermove', 137, 50);
    send('pointerup', 137, 50);
    expect(said.at(-1)).toBe('down 30,10 mouse');
  });

  test('a second finger gives up what the first one had begun and leaves the map to both', () => {
    const touch = { pointerType: 'touch' };
    const { said, send, surface } = following(true);
    send('pointerdown', 130, 50, touch);
    send('pointerdown', 180, 90, { ...touch, pointerId: 2, isPrimary: false });
    expect(said).toEqual(['down 30,10 touch', 'cancel']);
    expect(surface.pans).toBe(true);
    send('pointermove', 150, 60, touch);
    send('pointerup', 150, 60, touch);
    frame();
    expect(said).toHaveLength(2);
  });

  test('a pointer that the system takes away is cancelled', () => {
    const { said, send, surface } = following(true);
    send('pointerdown', 130, 50);
    send('pointermove', 150, 50);
    send('pointercancel', 150, 50);
    frame();
    expect(said).toEqual(['down 30,10 mouse', 'cancel']);
    expect(surface.pans).toBe(true);
  });

  describe('[U410] a finger that has to rest first', () => {
    const touch = { pointerType: 'touch' };
    beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
    afterEach(() => vi.useRealTimers());

    test('lifted before that, it was a tap', () => {
      const { said, send } = following('if-held');
      send('pointerdown', 130, 50, touch);
      vi.advanceTimersByTime(holdMs - 1);
      send('pointerup', 131, 50, touch);
      vi.advanceTimersByTime(holdMs);
      expect(said).toEqual(['down 30,10 touch', 'tap 31,10 touch']);
    });

    test('moved before that, it pans the map, however long it stays then', () => {
      const { said, send, surface } = following('if-held');
      send('pointerdown', 130, 50, touch);
      send('pointermove', 160, 70, touch);
      vi.advanceTimersByTime(2 * holdMs);
      frame();
      send('pointerup', 160, 70, touch);
      expect(said).toEqual(['down 30,10 touch']);
      expect(surface.pans).toBe(true);
    });

    test('at rest it takes what is there, and the map stays', () => {
      const { said, send, surface, canvas } = following('if-held');
      send('pointerdown', 130, 50, touch);
      send('pointermove', 133, 52, touch);
      expect(surface.pans).toBe(true);
      vi.advanceTimersByTime(holdMs);
      expect([surface.pans, canvas.captured]).toEqual([false, [1]]);
      send('pointermove', 150, 60, touch);
      send('pointerup', 150, 60, touch);
      expect(said).toEqual(['down 30,10 touch', 'held 30,10 touch', 'move 50,20 touch', 'up 50,20 touch']);
      expect(surface.pans).toBe(true);
    });

    test('a second finger, or the system, ends the waiting', () => {
      for (const end of ['pointerdown', 'pointercancel']) {
        const { said, send } = following('if-held');
        send('pointerdown', 130, 50, touch);
        send(end, 130, 50, {
          ...touch,
          ...(end === 'pointerdown' ? { pointerId: 2, isPrimary: false } : {}),
        });
        vi.advanceTimersByTime(2 * holdMs);
        expect(said, end).toEqual(['down 30,10 touch']);
      }
    });
  });

  test("a mouse without a button hovers, until it leaves; the other buttons are the map library's", () => {
    const { said, send } = following(true);
    send('pointermove', 120, 60, { buttons: 0 });
    frame();
    send('pointerleave', 90, 60);
    send('pointerdown', 120, 60, { button: 2 });
    expect(said).toEqual(['hover 20,20 mouse', 'hover']);
  });

  test('once removed it hears nothing', () => {
    const { said, send, follower } = following(true);
    follower.remove();
    send('pointerdown', 130, 50);
    expect(said).toEqual([]);
  });
});
