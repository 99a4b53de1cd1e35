import type { MapPointer, MapSurface, PointerListener } from './map-surface';

/** Pixels that a finger or a mouse may stray within one tap. */
export const slop = (kind: MapPointer['kind']): number => (kind === 'mouse' ? 4 : 10);

interface Pressed {
  readonly id: number;
  readonly x: number;
  readonly y: number;
  taken: boolean;
  strayed: boolean;
}

/** ms that a finger rests in one place before what is under it goes with it: as long as devices take for a long press. */
export const holdMs = 450;

/**
 * Turns the page's pointer events into what the tools understand. Listens in the capture phase, before the map
 * library does, and keeps the pointer when it leaves the map. Moves are handed on once a frame.
 */
export class PointerFollower {
  readonly #element: HTMLElement;
  readonly #surface: Pick<MapSurface, 'unproject' | 'setPanEnabled'>;
  readonly #listener: PointerListener;
  readonly #off = new AbortController();
  #pressed: Pressed | null = null;
  #latest: PointerEvent | null = null;
  #frame = 0;
  #holding: ReturnType<typeof setTimeout> | undefined;

  constructor(
    element: HTMLElement,
    surface: Pick<MapSurface, 'unproject' | 'setPanEnabled'>,
    listener: PointerListener,
  ) {
    this.#element = element;
    this.#surface = surface;
    this.#listener = listener;
    const on = (type: string, handle: (event: PointerEvent) => void) =>
      element.addEventListener(type, (event) => handle(event as PointerEvent), {
        capture: true,
        signal: this.#off.signal,
      });
    on('pointerdown', (e) => this.#down(e));
    on('pointermove', (e) => this.#move(e));
    on('pointerup', (e) => this.#up(e));
    on('pointercancel', (e) => this.#cancel(e));
    on('pointerleave', (e) => {
      if (e.target === element && !this.#pressed) this.#leave();
    });
  }

  remove(): void {
    this.#off.abort();
    clearTimeout(this.#holding);
    cancelAnimationFrame(this.#frame);
  }

  #pointer(event: PointerEvent): MapPointer {
    const box = this.#element.getBoundingClientRect();
    const pixel = { x: event.clientX - box.left, y: event.clientY - box.top };
    const kind = event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse';
    return { pixel, position: this.#surface.unproject(pixel), kind };
  }

  #down(event: PointerEvent): void {
    if (!event.isPrimary) return this.#secondFinger();
    if (event.button !== 0) return;
    this.#drop();
    const taken = this.#listener.down(this.#pointer(event));
    const { pointerId: id, clientX: x, clientY: y } = event;
    const pressed = { id, x, y, taken: taken === true, strayed: false };
    this.#pressed = pressed;
    if (pressed.taken) this.#take(id);
    if (taken === 'if-held') this.#holding = setTimeout(() => this.#held(pressed, event), holdMs);
  }

  #take(id: number): void {
    this.#surface.setPanEnabled(false);
    this.#element.setPointerCapture(id);
  }

  #held(pressed: Pressed, event: PointerEvent): void {
    if (this.#pressed !== pressed || pressed.strayed) return;
    pressed.taken = true;
    this.#take(pressed.id);
    this.#listener.held(this.#pointer(event));
  }

  /** Two fingers move the map, whatever the first one had begun. */
  #secondFinger(): void {
    if (this.#pressed?.taken) this.#release(() => this.#listener.cancel());
    this.#drop();
    this.#pressed = null;
  }

  #move(event: PointerEvent): void {
    const pressed = this.#pressed;
    if (pressed && event.pointerId !== pressed.id) return;
    if (
      pressed &&
      Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) > slop(this.#pointer(event).kind)
    )
      pressed.strayed = true;
    const isWanted = pressed ? pressed.taken : event.pointerType === 'mouse' && event.buttons === 0;
    if (!isWanted) return;
    this.#latest = event;
    this.#frame ||= requestAnimationFrame(() => this.#deliver());
  }

  #deliver(): void {
    this.#frame = 0;
    const event = this.#latest;
    this.#latest = null;
    if (!event) return;
    if (this.#pressed?.taken) this.#listener.move(this.#pointer(event));
    else if (!this.#pressed) this.#listener.hover(this.#pointer(event));
  }

  #up(event: PointerEvent): void {
    const pressed = this.#pressed;
    if (event.pointerId !== pressed?.id) return;
    clearTimeout(this.#holding);
    const pointer = this.#pointer(event);
    if (pressed.taken) {
      this.#deliver();
      this.#release(() => this.#listener.up(pointer));
    } else if (!pressed.strayed) {
      this.#listener.tap(pointer);
    }
    this.#pressed = null;
  }

  #cancel(event: PointerEvent): void {
    const pressed = this.#pressed;
    if (event.pointerId !== pressed?.id) return;
    if (pressed.taken) this.#release(() => this.#listener.cancel());
    this.#drop();
    this.#pressed = null;
  }

  #leave(): void {
    this.#drop();
    this.#listener.hover(null);
  }

  #release(tell: () => void): void {
    this.#drop();
    tell();
    this.#surface.setPanEnabled(true);
  }

  #drop(): void {
    clearTimeout(this.#holding);
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    this.#latest = null;
  }
}
