import type { LayerHost } from './layer-host';
import { slots } from './layers';
import type { MapPicture } from './map-surface';

export interface PictureHost extends LayerHost {
  /** Reads the canvas of a source once more, between other corners; false where there is no such source. */
  readCanvas(source: string, corners: MapPicture['corners']): boolean;
}

const id = 'picture';

/** A picture that lies on the ground, drawn by way of a canvas of its own. Nothing is put in before `begin`. */
export class GroundPicture {
  readonly #host: PictureHost;
  readonly #canvas = globalThis.document.createElement('canvas');
  #picture: MapPicture | null = null;
  #begun = false;

  constructor(host: PictureHost) {
    this.#host = host;
  }

  /** Null for none. */
  show(picture: MapPicture | null): void {
    if (picture === this.#picture) return;
    this.#picture = picture;
    if (this.#begun) this.#lay();
  }

  begin(): void {
    this.#begun = true;
    if (this.#picture) this.#lay();
  }

  #lay(): void {
    const picture = this.#picture;
    if (!picture) {
      this.#host.removeLayer(id);
      this.#host.removeSource(id);
      return;
    }
    const { pixels, size, corners } = picture;
    const canvas = this.#canvas;
    if (canvas.width !== size) canvas.width = canvas.height = size;
    canvas.getContext('2d')?.putImageData(new ImageData(pixels, size, size), 0, 0);
    if (this.#host.readCanvas(id, corners)) return;
    this.#host.addSource(id, { type: 'canvas', canvas, coordinates: corners, animate: false });
    const paint = { 'raster-resampling': 'nearest', 'raster-opacity': 0.72, 'raster-fade-duration': 0 };
    this.#host.addLayer({ id, type: 'raster', source: id, paint }, slots.picture, false);
  }
}
