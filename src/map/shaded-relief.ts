import type { Look } from '../../styles/map-style';
import { reliefPaint } from '../../styles/relief-paint';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { LayerHost } from './layer-host';
import { slots } from './layers';
import { reliefBounds, reliefSize, reliefTile } from './relief';
import { steepened } from './steepened';

export interface ReliefHost extends LayerHost {
  /** Does nothing for a layer that is not there. */
  setPaint(layer: string, property: string, value: unknown): void;
}

/** The grid that slopes are shaded by: the library asks for tiles of it as of any other, by an address only. */
let shaded: { readonly grid: ElevationGrid | null; readonly turn: number } = { grid: null, turn: 0 };

/** Answers the addresses that `ShadedRelief` gives to its source. */
export async function shadedTile(url: string): Promise<ImageBitmap> {
  const [z = 0, x = 0, y = 0] = url.split('/').slice(-3).map(Number);
  if (!shaded.grid) throw new Error('no heights are loaded');
  const image = new ImageData(reliefTile(shaded.grid, z, x, y), reliefSize, reliefSize);
  return createImageBitmap(image, { premultiplyAlpha: 'none', colorSpaceConversion: 'none' });
}

const id = 'relief';

/** The slopes of the ground, shaded on the base map and under the survey. Nothing is put in before `begin`. */
export class ShadedRelief {
  readonly #host: ReliefHost;
  readonly #look: () => Look;
  #grid: ElevationGrid | null = null;
  #begun = false;

  constructor(host: ReliefHost, look: () => Look) {
    this.#host = host;
    this.#look = look;
  }

  /** Null for a map without. */
  show(grid: ElevationGrid | null): void {
    if (grid === this.#grid) return;
    this.#grid = grid;
    if (this.#begun) this.#shade();
  }

  begin(): void {
    this.#begun = true;
    if (this.#grid) this.#shade();
  }

  /** The look has changed. */
  repaint(): void {
    for (const [property, value] of Object.entries(reliefPaint[this.#look()]))
      this.#host.setPaint(id, property, value);
  }

  #shade(): void {
    this.#host.removeLayer(id);
    this.#host.removeSource(id);
    const grid = this.#grid;
    if (!grid) return;
    shaded = { grid: steepened(grid), turn: shaded.turn + 1 };
    this.#host.addSource(id, {
      type: 'raster-dem',
      // Another grid has other addresses: the library keeps tiles by them.
      tiles: [`relief://${shaded.turn}/{z}/{x}/{y}`],
      tileSize: reliefSize,
      bounds: reliefBounds(grid),
      maxzoom: 13,
      encoding: 'terrarium',
    });
    const paint = reliefPaint[this.#look()];
    this.#host.addLayer({ id, type: 'hillshade', source: id, paint }, slots.relief, false);
  }
}
