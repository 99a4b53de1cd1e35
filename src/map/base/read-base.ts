import { neutralLayers } from '../../../styles/neutral-layers';
import type { BaseGround } from '../../state/base-maps/ground';
import { openArchive } from './archive';
import { basePrefix, UnusableBase, type BaseParts } from './base-parts';
import { styleParts } from './style-parts';

const source = `${basePrefix}map`;
const raster = { id: `${basePrefix}raster`, type: 'raster', source } as const;
const nothing = { isOnPaper: false, glyphs: null, sprites: [], credit: [] } as const;

/** Fetches what the map needs to know of a base. Rejects when it cannot be had. */
export async function readBase(ground: BaseGround, signal: AbortSignal): Promise<BaseParts> {
  switch (ground.kind) {
    case 'plain':
      return { ...nothing, sources: {}, layers: [] };
    case 'tiles':
      return {
        ...nothing,
        sources: {
          [source]: { type: 'raster', tiles: [ground.template], tileSize: 256, maxzoom: ground.maxZoom },
        },
        layers: [raster],
      };
    case 'style': {
      const response = await fetch(ground.address, { signal });
      if (!response.ok) throw new Error(`status ${response.status}`);
      let style: unknown;
      try {
        style = await response.json();
      } catch (error) {
        if (signal.aborted) throw error;
        throw new UnusableBase('what stands at its address is no map style: it is not JSON');
      }
      return styleParts(style, ground.address);
    }
    case 'archive':
      return archiveParts(ground.from);
  }
}

let opened = 0;

async function archiveParts(from: Extract<BaseGround, { kind: 'archive' }>['from']): Promise<BaseParts> {
  const where = 'address' in from ? from.address : await from.read();
  if (where === null)
    throw new UnusableBase('its file is no longer kept on this device. Choose the file again');
  const { url, tiles, encoding, layers, credit, close } = await openArchive(where, `kept-${++opened}`);
  if (tiles === 'raster')
    return {
      ...nothing,
      sources: { [source]: { type: 'raster', url, tileSize: 256 } },
      layers: [raster],
      credit,
      close,
    };
  if (layers.length === 0) {
    close();
    throw new UnusableBase('the archive does not name its layers ("vector_layers"), so they cannot be drawn');
  }
  return {
    ...nothing,
    isOnPaper: true,
    sources: { [source]: { type: 'vector', url, ...(encoding === 'mlt' ? { encoding } : {}) } },
    layers: neutralLayers(layers).map((layer) => ({ ...layer, id: basePrefix + layer.id, source })),
    credit,
    close,
  };
}
