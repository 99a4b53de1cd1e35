import { drawnHeight } from '../../figures/practice';
import type { Tool } from '../../state/view.svelte';
import type { Contents } from '../../survey/contents';
import type { Kind, Position } from '../../survey/document';
import type { NewShape } from '../../survey/edits/add-feature';
import type { JsonObject } from '../../survey/json';
import { standingEyeHeight } from '../../survey/schema/standing-spot';
import { lineFigures } from '../line-figures';

export type DrawTool = Exclude<Tool, 'select'>;

export interface NewFeature {
  readonly shape: NewShape;
  readonly properties: JsonObject;
  readonly label: string;
}

/** Corners or ends that a drawing needs at least. */
const least: Readonly<Record<DrawTool, number>> = {
  runway: 2,
  'standing-spot': 1,
  'taxi-route': 2,
  apron: 3,
  'no-go': 3,
  obstacle: 3,
  'obstacle-line': 2,
};

/** What a tool draws. */
export const kindOfTool = (tool: DrawTool): Kind => (tool === 'obstacle-line' ? 'obstacle' : tool);

export const isEnough = (tool: DrawTool, points: readonly Position[]): boolean =>
  points.length >= least[tool];

/**
 * The feature that was drawn, with what follows from it (a runway's designators) and a name to begin with; null while
 * there is too little of it. `closed`: the drawing came back to its first corner.
 */
export function newFeature(
  tool: DrawTool,
  points: readonly Position[],
  closed: boolean,
  contents: Contents,
  instant: number,
): NewFeature | null {
  const [first, second] = points;
  if (!first || !isEnough(tool, points)) return null;
  switch (tool) {
    case 'standing-spot':
      return {
        label: 'place standing spot',
        shape: { type: 'Point', coordinates: first },
        properties: {
          name: nextName('Spot', contents.spots),
          eyeHeight: standingEyeHeight,
          access: { status: 'unknown' },
          notes: '',
        },
      };
    case 'runway': {
      const figures = second && lineFigures(first, second, contents, instant);
      if (!second || !figures) return null;
      const [a, b] = figures.designators;
      return {
        label: 'draw runway',
        shape: { type: 'LineString', coordinates: [first, second] },
        // The lower number first, as runways are called, whichever end was drawn first.
        properties: { name: [a, b].sort().join('/'), ends: [{ designator: a }, { designator: b }] },
      };
    }
    case 'taxi-route':
      return {
        label: 'draw taxi route',
        shape: { type: 'LineString', coordinates: points },
        properties: { name: nextName('Taxi route', contents.taxiRoutes) },
      };
    case 'apron':
      return {
        label: 'draw apron',
        shape: area(points),
        properties: { name: nextName('Apron', contents.aprons) },
      };
    case 'no-go':
      return {
        label: 'draw no-go area',
        shape: area(points),
        properties: { name: nextName('No-go area', contents.noGoAreas), reason: '' },
      };
    case 'obstacle':
      return {
        label: 'draw building',
        shape: area(points),
        properties: {
          name: nextName('Building', contents.obstacles),
          height: drawnHeight.block,
          sight: 'solid',
        },
      };
    case 'obstacle-line':
      return {
        label: 'draw wall, fence or trees',
        // Back at its first corner it runs all the way round.
        shape: {
          type: 'LineString',
          coordinates: closed && points.length > 2 ? [...points, first] : points,
        },
        properties: {
          name: nextName('Wall', contents.obstacles),
          height: drawnHeight.line,
          sight: 'solid',
        },
      };
  }
}

const area = (points: readonly Position[]): NewShape => ({
  type: 'Polygon',
  coordinates: [[...points, points[0] as Position]],
});

/** "Spot 3": the first number that no name of the kind has. */
function nextName(word: string, taken: readonly { readonly name: string | null }[]): string {
  const names = new Set(taken.map((t) => t.name));
  for (let n = 1; ; n++) {
    const name = `${word} ${n}`;
    if (!names.has(name)) return name;
  }
}
