import type { SourceName } from './map-surface';
import type { Overlay } from './overlays/features';

/** What a source holds: data, or the address of a GeoJSON file. */
export type SourceData = Overlay | string;

/** Features that are handed to the map's worker in one frame: packing them takes 20 ms a thousand. */
const featuresAtOnce = 1000;

/**
 * The survey's sources: what each is to hold, and what it holds already. Nothing is written before `begin`; later what has
 * changed is written once a frame, and no more in one frame than fits.
 */
export class OverlaySources {
  readonly #write: (name: SourceName, data: SourceData) => void;
  readonly #shown = new Map<SourceName, SourceData>();
  readonly #waiting = new Map<SourceName, SourceData>();
  #frame = 0;
  #begun = false;

  constructor(write: (name: SourceName, data: SourceData) => void) {
    this.#write = write;
  }

  set(name: SourceName, data: SourceData): void {
    if ((this.#waiting.get(name) ?? this.#shown.get(name)) === data) return;
    this.#waiting.set(name, data);
    if (this.#begun) this.#ask();
  }

  /** The map has its sources: all that waits is written at once, so that the first picture is whole. */
  begin(): void {
    this.#begun = true;
    this.#flush(Infinity);
  }

  remove(): void {
    cancelAnimationFrame(this.#frame);
  }

  #ask(): void {
    this.#frame ||= requestAnimationFrame(() => this.#flush(featuresAtOnce));
  }

  #flush(atOnce: number): void {
    this.#frame = 0;
    let written = 0;
    for (const [name, data] of this.#waiting) {
      if (written > atOnce) return this.#ask();
      this.#waiting.delete(name);
      if (this.#shown.get(name) === data) continue;
      if (typeof data !== 'string') written += data.features.length;
      this.#shown.set(name, data);
      this.#write(name, data);
    }
  }
}
