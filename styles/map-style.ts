import { sheets } from './sheets';

/**
 * The ground under a survey, drawn like a printed survey sheet: quiet paper tones, fine ink. No colour here is a
 * data colour or the signal colour, so that whatever is bright on the map is about light, lenses or the selection.
 */
export const paper = {
  page: '#f5f0e3',
  /** The world's land on the plain plan, and its edge. */
  land: '#ece4cf',
  coast: '#a79d86',
  sheet: sheets.day,
  ink: '#22251f',
  softInk: '#5d5d52',
  hairline: '#cdc5b1',
  /** The one signal colour: what is selected or being edited. */
  signal: '#c4391d',
  runway: '#54544d',
  apron: '#d3ccba',
  apronEdge: '#9d9583',
  obstacle: '#8a7d6a',
  obstacleEdge: '#3f3a31',
  leaf: '#6c7753',
  /** Roads and greens of a map that was brought in: barely darker than the page. */
  road: '#ddd3bb',
  green: '#e3e6cf',
  water: '#cbdde0',
  waterEdge: '#7fa3ae',
  waterName: '#4a6f7b',
  /** The ground plan. */
  settlement: '#ede3d0',
  meadow: '#ebecd6',
  wood: '#d8dfc4',
  woodEdge: '#a9b48f',
  tree: '#9aa67e',
  parking: '#eae3d3',
  parkingEdge: '#b9b09b',
  pavement: '#ded7c6',
  pavementEdge: '#b3ab98',
  track: '#8d8370',
  minorEdge: '#9a9180',
  /** Like `sheet`, one step off: `inLook` knows each colour by its value. So are the three last ones. */
  minor: '#fbf8ee',
  majorEdge: '#736b5c',
  major: '#f3e6cd',
  rail: '#6f6a5f',
  fence: '#8b8474',
  building: '#c3b7a3',
  buildingEdge: '#85796a',
  terminal: '#b3a48d',
  terminalEdge: '#64594b',
  name: '#6d6657',
  gridFine: '#e3dcc9',
  gridBold: '#cfc7b2',
  gridName: '#736b57',
  noGo: '#6b5a48',
  /** Under and over data colours, which are the same in every look: pale beside a path, pale hatching on glare. */
  casing: '#fbf8f0',
  hatch: '#fbf8f1',
  /** Round light rings and lit strips. */
  dataEdge: '#22251e',
} as const;

export type Look = 'day' | 'night' | 'contrast';
export type Palette = Readonly<Record<keyof typeof paper, string>>;

/** A dark sheet under a dim lamp: pale ink, nothing that dazzles eyes which have got used to the dark. */
const night: Palette = {
  page: '#191c1b',
  land: '#262923',
  coast: '#6d6f60',
  sheet: sheets.night,
  ink: '#e8e3d6',
  softInk: '#b9b4a5',
  hairline: '#434843',
  signal: '#ff9166',
  runway: '#9b9a8e',
  apron: '#3b3e39',
  apronEdge: '#62645a',
  obstacle: '#7d705c',
  obstacleEdge: '#cbbfa8',
  leaf: '#5f7150',
  road: '#3a3b35',
  green: '#222b20',
  water: '#1e333b',
  waterEdge: '#3f626d',
  waterName: '#86aab5',
  settlement: '#262522',
  meadow: '#1d231d',
  wood: '#20301f',
  woodEdge: '#3d5138',
  tree: '#46603f',
  parking: '#2b2d2a',
  parkingEdge: '#4b4d46',
  pavement: '#31332f',
  pavementEdge: '#53554d',
  track: '#5d5a4f',
  minorEdge: '#4e4d46',
  minor: '#2d2f2c',
  majorEdge: '#69655a',
  major: '#413d33',
  rail: '#77736a',
  fence: '#6c685c',
  building: '#4a4741',
  buildingEdge: '#6f6a60',
  terminal: '#5a554b',
  terminalEdge: '#8b8476',
  name: '#a39e90',
  gridFine: '#262a28',
  gridBold: '#373c38',
  gridName: '#9a9585',
  noGo: '#b39b7f',
  casing: '#d8d3c5',
  hatch: '#f4efe2',
  dataEdge: '#e8e3d5',
};

/** For a phone in full sun: black on white, the ground only hinted at, every line heavy enough to be seen. */
const contrast: Palette = {
  page: '#ffffff',
  land: '#ececec',
  coast: '#4f4f4f',
  sheet: sheets.contrast,
  ink: '#000000',
  softInk: '#1c1c1c',
  hairline: '#767676',
  signal: '#b30000',
  runway: '#1b1b1b',
  apron: '#d4d4d4',
  apronEdge: '#5a5a5a',
  obstacle: '#6b6b6b',
  obstacleEdge: '#000001',
  leaf: '#4c6b39',
  road: '#c4c4c4',
  green: '#e6f2de',
  water: '#cfe4ee',
  waterEdge: '#1f5f7d',
  waterName: '#0c4560',
  settlement: '#f3f3f3',
  meadow: '#fdfffd',
  wood: '#dcebd2',
  woodEdge: '#5f8050',
  tree: '#4f7440',
  parking: '#ededed',
  parkingEdge: '#6a6a6a',
  pavement: '#dedede',
  pavementEdge: '#5f5f5f',
  track: '#555555',
  minorEdge: '#5c5c5c',
  minor: '#fffffd',
  majorEdge: '#2c2c2c',
  major: '#ffeec2',
  rail: '#333333',
  fence: '#4a4a4a',
  building: '#b9b9b9',
  buildingEdge: '#3f3f3f',
  terminal: '#8f8f8f',
  terminalEdge: '#111111',
  name: '#2a2a2a',
  gridFine: '#d9d9d9',
  gridBold: '#9a9a9a',
  gridName: '#3a3a3a',
  noGo: '#3a2a1a',
  casing: '#000002',
  hatch: '#fffffc',
  dataEdge: '#000003',
};

export const palettes: Readonly<Record<Look, Palette>> = { day: paper, night, contrast };

/**
 * The same in another look. Layers are written in the day's colours; each of them is known by its value, which no
 * other shares, and changed for that look's own. What is none of them (data colours, widths) stays.
 */
export function inLook<T>(value: T, look: Look): T {
  if (look === 'day') return value;
  const key = keyOf.get(value as string);
  if (key !== undefined) return palettes[look][key] as T;
  if (Array.isArray(value)) return value.map((part: unknown) => inLook(part, look)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, inLook(part, look)])) as T;
}
const keyOf: ReadonlyMap<string, keyof Palette> = new Map(
  Object.entries(paper).map(([key, colour]) => [colour, key as keyof Palette]),
);

/**
 * Names of the map's faces. For letters that they do not have (Hebrew, Arabic) the map library puts the name into a CSS font
 * list without quotes: a part that begins with a digit, as in "Source Sans 3", would make the list invalid and the letters tiny.
 */
export const fonts = { plain: 'Source Sans', strong: 'Source Sans Semibold' } as const;

/** A layer of the map, without its library's types: those stay in one file. */
export interface LayerPiece {
  readonly id: string;
  readonly type: 'background' | 'fill' | 'line' | 'symbol' | 'circle';
  readonly source?: string;
  readonly filter?: readonly unknown[];
  readonly minzoom?: number;
  readonly maxzoom?: number;
  readonly layout?: Readonly<Record<string, unknown>>;
  readonly paint?: Readonly<Record<string, unknown>>;
}
