import type { ElevationGrid } from '../../figures/sight/terrain';
import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import { drawingOf, type DrawTool } from '../../survey/drawings';
import type { NewShape } from '../../survey/edits/add-feature';
import { kinds } from '../../survey/kinds';
import type { JsonObject } from '../../survey/json';
import { lineFigures } from '../line-figures';
import { heightsToThreshold } from './heights-to-threshold';

export interface NewFeature {
  readonly shape: NewShape;
  readonly properties: JsonObject;
  readonly label: string;
}

export const isEnough = (tool: DrawTool, points: readonly Position[]): boolean =>
  points.length >= drawingOf(tool).least;

/**
 * The feature that was drawn, with what follows from it (a runway's designators) and a name to begin with; null while
 * there is too little of it. `closed`: the drawing came back to its first corner.
 */
export function newFeature(
  tool: DrawTool,
  points: readonly Position[],
  closed: boolean,
  contents: Contents,
  terrain: ElevationGrid | null,
  instant: number,
): NewFeature | null {
  const [first] = points;
  if (!first || !isEnough(tool, points)) return null;
  const { kind, shape, closes, name, label, properties } = drawingOf(tool);
  if (kind === 'runway') return newRunway(points, label, contents, instant);
  const back = closed && points.length > 2;
  const taken = contents[kinds[kind].list];
  const heights =
    kind === 'flight-path' ? { heights: [...heightsToThreshold(points, contents, terrain)] } : {};
  return {
    label,
    shape:
      shape === 'Point'
        ? { type: shape, coordinates: first }
        : shape === 'LineString'
          ? { type: shape, coordinates: closes && back ? [...points, first] : points }
          : { type: shape, coordinates: [[...points, first]] },
    properties: { name: nextName(name, taken), ...properties, ...heights },
  };
}

function newRunway(
  [first, second]: readonly Position[],
  label: string,
  contents: Contents,
  instant: number,
): NewFeature | null {
  const figures = first && second && lineFigures(first, second, contents, instant);
  if (!figures) return null;
  const [a, b] = figures.designators;
  return {
    label,
    shape: { type: 'LineString', coordinates: [first, second] },
    // The lower number first, as runways are called, whichever end was drawn first.
    properties: { name: [a, b].sort().join('/'), ends: [{ designator: a }, { designator: b }] },
  };
}

/** "Spot 3": the first number that no name of the kind has. */
function nextName(word: string, taken: readonly { readonly name: string | null }[]): string {
  const names = new Set(taken.map((t) => t.name));
  for (let n = 1; ; n++) {
    const name = `${word} ${n}`;
    if (!names.has(name)) return name;
  }
}
