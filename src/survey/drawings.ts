import type { Shape } from './geometry';
import type { JsonObject } from './json';
import type { ReadableKind } from './kinds';
import { standingEyeHeight } from './schema/standing-spot';

/** m above ground of an obstacle that was just drawn, until somebody says better: two storeys; a fence or wall; a hedge. CP. */
const drawnHeight = { block: 8, line: 2.5, hedge: 2 } as const;

/** Degrees of bank at which a path that was just drawn is rounded. CP. */
const drawnBank = 25;

interface Drawing {
  readonly kind: ReadableKind;
  readonly shape: Shape;
  /** Corners or ends that it needs at least. */
  readonly least: number;
  /** Corners with which it is whole, so that drawing ends by itself; null where more may follow. */
  readonly whole: number | null;
  /** Whether a line that comes back to its first corner runs all the way round. */
  readonly closes: boolean;
  /** The name to begin with, a number behind it: "Spot 3". */
  readonly name: string;
  /** What the undo step is called. */
  readonly label: string;
  /** What is said of it to begin with, its name apart. */
  readonly properties: JsonObject;
  /** Wanted at few airfields: its tool stands behind the others. */
  readonly seldom?: true;
}

/** What can be drawn by hand, in the order of the tool bar: a tool each. */
export const drawings = {
  runway: {
    kind: 'runway',
    shape: 'LineString',
    least: 2,
    whole: 2,
    closes: false,
    name: 'Runway',
    label: 'draw runway',
    properties: {},
  },
  'standing-spot': {
    kind: 'standing-spot',
    shape: 'Point',
    least: 1,
    whole: 1,
    closes: false,
    name: 'Spot',
    label: 'place standing spot',
    properties: { eyeHeight: standingEyeHeight, access: { status: 'unknown' }, notes: '' },
  },
  'taxi-route': {
    kind: 'taxi-route',
    shape: 'LineString',
    least: 2,
    whole: null,
    closes: false,
    name: 'Taxi route',
    label: 'draw taxi route',
    properties: {},
  },
  apron: {
    kind: 'apron',
    shape: 'Polygon',
    least: 3,
    whole: null,
    closes: false,
    name: 'Apron',
    label: 'draw apron',
    properties: {},
  },
  'no-go': {
    kind: 'no-go',
    shape: 'Polygon',
    least: 3,
    whole: null,
    closes: false,
    name: 'No-go area',
    label: 'draw no-go area',
    properties: { reason: '' },
  },
  obstacle: {
    kind: 'obstacle',
    shape: 'Polygon',
    least: 3,
    whole: null,
    closes: false,
    name: 'Building',
    label: 'draw building',
    properties: { height: drawnHeight.block, sight: 'solid' },
  },
  'obstacle-line': {
    kind: 'obstacle',
    shape: 'LineString',
    least: 2,
    whole: null,
    closes: true,
    name: 'Wall',
    label: 'draw wall, fence or trees',
    properties: { height: drawnHeight.line, sight: 'solid' },
  },
  hedge: {
    kind: 'obstacle',
    shape: 'LineString',
    least: 2,
    whole: null,
    closes: true,
    name: 'Hedge',
    label: 'draw hedge',
    seldom: true,
    properties: { height: drawnHeight.hedge, sight: 'hedge' },
  },
  'flight-path': {
    kind: 'flight-path',
    shape: 'LineString',
    least: 2,
    whole: null,
    closes: false,
    name: 'Path',
    label: 'draw flight path',
    properties: { source: 'drawn', turnBank: drawnBank },
    seldom: true,
  },
  'display-line': {
    kind: 'display-line',
    shape: 'LineString',
    least: 2,
    whole: 2,
    closes: false,
    name: 'Display line',
    label: 'draw display line',
    properties: {},
    seldom: true,
  },
  'crowd-line': {
    kind: 'crowd-line',
    shape: 'LineString',
    least: 2,
    whole: null,
    closes: false,
    name: 'Crowd line',
    label: 'draw crowd line',
    properties: {},
    seldom: true,
  },
  helipad: {
    kind: 'helipad',
    shape: 'Point',
    least: 1,
    whole: 1,
    closes: false,
    name: 'Helipad',
    label: 'place helipad',
    properties: {},
    seldom: true,
  },
  'winch-run': {
    kind: 'winch-run',
    shape: 'LineString',
    least: 2,
    whole: 2,
    closes: false,
    name: 'Winch run',
    label: 'draw winch run',
    properties: {},
    seldom: true,
  },
} as const satisfies Readonly<Record<string, Drawing>>;

/** A tool that draws. */
export type DrawTool = keyof typeof drawings;
export const drawingOf = (tool: DrawTool): Drawing => drawings[tool];
