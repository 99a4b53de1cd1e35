import { destination } from '../../src/figures/geometry/earth';
import type { Position } from '../../src/survey/document';
import { plainKit, runwayFeature, spotFeature, surveyText } from './contents';

const west: Position = [7, 50];
const at = (east: number, north: number): Position => destination(destination(west, 90, east), 0, north);

const spots: readonly (readonly [string, number, number])[] = [
  ['South bank', 500, -260],
  ['Gravel corner', 620, -330],
  ['Willow gate', 1150, -240],
  ['Long fence', 1700, -300],
  ['East steps', 2750, -180],
  ['East meadow', 2900, 60],
  ['North lane', 1500, 380],
  ['Farm bridge', 900, 420],
  ['Old tower', 350, 330],
  ['Far ridge', -700, 120],
];
/** The spots of the field. */
export const tenSpots = spots.map(([name, east, north]) => ({ name, position: at(east, north) }));

/** A subject that the kit reaches from across the field. */
const jet = {
  key: 'jet',
  name: 'Jet',
  length: 37.6,
  span: 35.8,
  height: 11.8,
  propulsion: 'jet',
  approachSpeed: 70,
  climbSpeed: 80,
  groundRun: 1500,
  landingRun: 1100,
  climbGradient: 0.1,
};

/**
 * A survey file of an invented field with ten spots, some of them close together, and six paths: arrivals and departures of
 * two crossing runways' ends in use and two drawn flight paths, one of them far longer than the field.
 */
export function tenSpotsSixPaths(more: Readonly<Record<string, unknown>> = {}): string {
  const path = (id: string, name: string, line: readonly Position[], heights: readonly number[]) => ({
    type: 'Feature',
    id,
    properties: { kind: 'flight-path', name, heights, source: 'drawn' },
    geometry: { type: 'LineString', coordinates: line },
  });
  return surveyText(
    [
      runwayFeature(
        'main',
        at(0, 0),
        at(2500, 0),
        [
          { designator: '09', elevation: 112 },
          { designator: '27', elevation: 131 },
        ],
        {
          width: 45,
        },
      ),
      runwayFeature('cross', at(1400, -900), at(1000, 900), [{ designator: '34' }, { designator: '16' }], {
        width: 30,
      }),
      ...tenSpots.map(({ name, position }) =>
        spotFeature(name.toLowerCase().replace(' ', '-'), position, { name }),
      ),
      path(
        'run-in',
        'Run-in',
        [at(-7000, -2500), at(0, -150), at(2500, 150), at(9000, 2600)],
        [600, 90, 90, 700],
      ),
      path('turn', 'Turn', [at(300, 250), at(1200, 500), at(2200, 300)], [120, 100, 130]),
    ],
    {
      site: { name: 'Ten spots', elevation: 120, timeZone: 'Europe/Berlin', reference: at(1250, 0) },
      kit: { ...plainKit, fill: 0.7 },
      subjects: [jet],
      moments: { date: '2026-05-03', a: '08:30', b: '18:30' },
      flow: {
        configurations: [
          {
            name: 'East',
            arrivals: [
              { runway: 'main', end: 0 },
              { runway: 'cross', end: 0 },
            ],
            departures: [
              { runway: 'main', end: 0 },
              { runway: 'cross', end: 0 },
            ],
          },
        ],
      },
      ...more,
    },
  );
}
