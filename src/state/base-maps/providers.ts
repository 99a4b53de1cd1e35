import type { BaseGround, Credit } from './ground';

/** A base map that comes with the program. */
export interface Provider {
  readonly id: string;
  readonly name: string;
  /** What to expect of it, in a few words. */
  readonly about: string;
  readonly ground: BaseGround;
  readonly credit: Credit;
}

const openStreetMap = {
  text: '©\u00a0OpenStreetMap contributors',
  href: 'https://www.openstreetmap.org/copyright',
};

/**
 * openstreetmap.org's standard tiles. Its usage policy (operations.osmfoundation.org/policies/tiles, read in a copy
 * of January 2024) asks for: exactly this address; visible attribution; a valid Referer, so the page must not hide
 * it; the browser's own cache; no bulk download, and no tiles fetched for later; a way for the user to switch to
 * another server; a link to fix the map. We ask only for what is on screen, keep nothing for offline use, and the
 * service worker leaves other origins alone. Zoom 19 is the last one (from memory).
 */
const streetCredit: Credit = [
  openStreetMap,
  { text: 'Fix the map', href: 'https://www.openstreetmap.org/fixthemap' },
];

/**
 * OpenFreeMap's public instance: free, without key or registration, attribution required (from memory; the names of
 * its styles are in its repository openfreemap-styles). Positron is its quiet one: the survey's colours stand out.
 */
const vectorCredit: Credit = [
  { text: 'OpenFreeMap', href: 'https://openfreemap.org/' },
  { text: '©\u00a0OpenMapTiles', href: 'https://www.openmaptiles.org/' },
  openStreetMap,
];

export const plainId = 'plain';

export const providers: readonly Provider[] = [
  {
    id: plainId,
    name: 'Plain plan',
    about:
      'Ruled paper, the world’s land, and a ground plan where the survey has one. Works without a network.',
    ground: { kind: 'plain' },
    credit: [{ text: 'Natural Earth, public domain', href: 'https://www.naturalearthdata.com/' }],
  },
  {
    id: 'street',
    name: 'Street map',
    about: 'Open street tiles: paths, fences, car parks. Run on donations: for looking, not for storing.',
    ground: {
      kind: 'tiles',
      name: 'the street map',
      template: 'https://tile.openstreetmap.org/{z}/{x}/{y}.png',
      maxZoom: 19,
      credit: streetCredit,
    },
    credit: streetCredit,
  },
  {
    id: 'vector',
    name: 'Quiet vector map',
    about: 'Pale and sharp at every zoom, with few names: the survey stands out.',
    ground: {
      kind: 'style',
      name: 'the quiet vector map',
      address: 'https://tiles.openfreemap.org/styles/positron',
      credit: vectorCredit,
    },
    credit: vectorCredit,
  },
];
