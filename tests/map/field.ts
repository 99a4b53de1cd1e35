import type { ElevationGrid } from '../../src/figures/sight/terrain';
import { pathsOf } from '../../src/figures/traffic/paths';
import { SurveyDocument } from '../../src/state/document.svelte';
import { View } from '../../src/state/view.svelte';
import { readContents } from '../../src/survey/contents';
import type { Position, Survey } from '../../src/survey/document';
import { shapeOf } from '../../src/survey/edits/vertices';
import type { NewShape } from '../../src/survey/edits/add-feature';
import type { Desk } from '../../src/map/tools/desk';
import { Toolbox } from '../../src/map/tools/toolbox';
import { SurfaceDouble } from './surface-double';

const feature = (id: string, kind: string, type: string, coordinates: unknown, more: object = {}) => ({
  type: 'Feature' as const,
  id,
  properties: { kind, ...more },
  geometry: { type, coordinates },
});

/** An invented field at 50 degrees north: a runway to the east-south-east, spots on both sides of it, and one of each other kind. */
export const field = {
  type: 'FeatureCollection',
  sunside: {
    version: 1,
    site: { name: 'Field', elevation: 120, timeZone: 'Europe/Berlin', reference: [7, 50] },
    moments: { date: '2026-06-21', a: '07:30', b: '19:15' },
  },
  features: [
    feature(
      'rw',
      'runway',
      'LineString',
      [
        [6.985, 50.004],
        [7.016, 49.997],
      ],
      {
        name: '10/28',
        width: 45,
        ends: [
          { designator: '10', elevation: 118, displaced: 180 },
          { designator: '28', elevation: 124 },
        ],
      },
    ),
    feature('bank', 'standing-spot', 'Point', [7.001, 49.996], { name: 'South bank', eyeHeight: 1.8 }),
    feature('lane', 'standing-spot', 'Point', [6.992, 50.0075], { name: 'North lane' }),
    feature(
      'fence',
      'obstacle',
      'LineString',
      [
        [6.99, 49.9985],
        [7.0, 49.9965],
        [7.01, 49.9945],
      ],
      { height: 2.4 },
    ),
    feature(
      'marsh',
      'no-go',
      'Polygon',
      [
        [
          [6.98, 49.99],
          [6.988, 49.99],
          [6.987, 49.994],
          [6.98, 49.99],
        ],
      ],
      { name: 'Marsh' },
    ),
    feature('stand', 'apron', 'Polygon', [
      [
        [7.0, 50.004],
        [7.006, 50.004],
        [7.006, 50.006],
        [7.0, 50.006],
        [7.0, 50.004],
      ],
    ]),
    feature(
      'alpha',
      'taxi-route',
      'LineString',
      [
        [7.003, 50.004],
        [7.003, 50.001],
      ],
      { name: 'A' },
    ),
  ],
} as unknown as Survey;

/** Noon UTC of the field's date. */
export const instant = Date.UTC(2026, 5, 21, 12);

/** A desk over the field, and the tools on it. */
export function workshop(
  survey: Survey = field,
  { readOnly = false, terrain = null }: { readOnly?: boolean; terrain?: ElevationGrid | null } = {},
) {
  const surface = new SurfaceDouble();
  const document = new SurveyDocument({ id: 'field', survey, problems: [], readOnly }, () => undefined);
  const view = new View();
  let made = 0;
  const desk: Desk = {
    surface,
    document,
    selection: view.selection,
    hand: view.hand,
    notices: view,
    newId: () => `new${++made}`,
    contents: () => readContents(document.survey),
    terrain: () => terrain,
    paths: () =>
      pathsOf(readContents(document.survey), (kind, _runway, end) => kind === 'arrival' && end === 0, null),
    instant: () => instant,
  };
  for (const { id, position, name } of desk.contents().spots) surface.put('spot', position, { id, name });
  const tools = new Toolbox(desk);
  return {
    surface,
    document,
    view,
    desk,
    tools,
    shape: (id: string): NewShape => {
      const found = document.survey.features.find((f) => f.id === id);
      const shape = found && shapeOf(found);
      if (!shape) throw new Error(`expected a shape of "${id}"`);
      return shape;
    },
    /** Down, a move in two steps, and up. */
    dragTo: (from: Position, right: number, down: number, kind: 'mouse' | 'touch' = 'mouse') => {
      const taken = tools.down(surface.at(from, 0, 0, kind));
      tools.move(surface.at(from, right / 2, down / 2, kind));
      tools.move(surface.at(from, right, down, kind));
      tools.up(surface.at(from, right, down, kind));
      return taken;
    },
    key: (key: string, more: { shift?: boolean; alt?: boolean; at?: number } = {}) =>
      tools.key({ key, shift: false, alt: false, at: 0, ...more }),
  };
}
