import type { BaseGround, BaseReport, Credit } from '../../state/base-maps/ground';
import type { OwnKind, OwnMap } from '../../state/base-maps/own-map';

export const kinds: readonly (readonly [OwnKind, string])[] = [
  ['tiles', 'Tiles'],
  ['style', 'Style'],
  ['archive', 'PMTiles archive'],
];

export const examples: Readonly<Record<OwnKind, string>> = {
  tiles: 'With {z}, {x} and {y} in it: https://tiles.example.org/{z}/{x}/{y}.png',
  style: 'Of a map style of version 8: https://tiles.example.org/style.json',
  archive: 'Of vector or picture tiles: https://maps.example.org/region.pmtiles',
};

/** "Picture tiles from tiles.example.org", "Archive kept on this device, 34 MB". */
export function aboutOwn({ kind, address, size }: OwnMap, bytes: (size: number) => string): string {
  if (address === null) return `Archive kept on this device, ${bytes(size ?? 0)}. Works without a network.`;
  const what = { tiles: 'Tiles', style: 'Style', archive: 'Archive' }[kind];
  return `${what} from ${address}`;
}

export const creditLine = (typed: string): Credit => (typed === '' ? [] : [{ text: typed, href: null }]);

/** A whole number from 0 to 24; null for anything else. */
export function readMaxZoom(text: string): number | null {
  const zoom = Number(text);
  return text.trim() !== '' && Number.isInteger(zoom) && zoom >= 0 && zoom <= 24 ? zoom : null;
}

/** One quiet line when the chosen map cannot be seen; null while it can, or nothing is known yet. */
export function healthWords(ground: BaseGround, { health, reason }: BaseReport): string | null {
  if (ground.kind === 'plain') return null;
  if (health === 'empty')
    return `There are no map tiles of ${ground.name} here; the survey goes on on the plain plan.`;
  if (health !== 'unreachable') return null;
  return reason === null
    ? `The map tiles of ${ground.name} cannot be reached; the survey goes on on the plain plan.`
    : `${ground.name.charAt(0).toUpperCase()}${ground.name.slice(1)} cannot be shown: ${reason}. The survey goes on on the plain plan.`;
}
