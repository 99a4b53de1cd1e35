import type { BaseLayers } from './base-layers';

interface TileEvent {
  readonly sourceId?: string;
  readonly tile?: { readonly tileID: { readonly canonical: { z: number; x: number; y: number } } };
}
const tileOf = ({ tile }: TileEvent) => tile?.tileID.canonical ?? null;

/** The events of the map library that tell how sources fare. */
interface SourceEvents {
  on(
    type: 'sourcedataloading' | 'sourcedata' | 'sourcedataabort',
    listener: (event: TileEvent) => void,
  ): unknown;
  on(type: 'error', listener: (event: TileEvent & { readonly error: unknown }) => void): unknown;
}

/** Tells a base map what becomes of its tiles. Errors that are not its own are the program's, and go to the console. */
export function watchTiles(map: SourceEvents, base: BaseLayers): void {
  map.on('sourcedataloading', (event) => {
    const tile = tileOf(event);
    if (tile) base.asked(event.sourceId, tile);
  });
  map.on('sourcedata', (event) => {
    const tile = tileOf(event);
    if (tile) base.came(event.sourceId, tile);
    else base.described(event.sourceId);
  });
  map.on('sourcedataabort', (event) => {
    const tile = tileOf(event);
    if (tile) base.left(event.sourceId, tile);
  });
  map.on('error', (event) => {
    if (!base.failed(event.sourceId, tileOf(event))) console.error(event.error);
  });
}
