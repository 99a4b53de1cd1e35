import { expect, it } from 'vitest';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { logMarks } from '../../../src/map/overlays/log-marks';
import {
  contentsOf,
  feature,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
} from '../../support/contents';

const entry = (id: string, spot: string, measured?: object) =>
  feature(id, 'log-entry', 'Point', [8.51, 47.396], {
    spot,
    path: 'rwy/27/arrival',
    ...(measured && { measured }),
  });
const contents = contentsOf(
  [
    runwayFeature('rwy', [8.5, 47.4], [8.535, 47.4], [{ designator: '09' }, { designator: '27' }]),
    spotFeature('mound', [8.51, 47.396]),
    spotFeature('fence', [8.53, 47.396]),
    entry('a', 'mound', { way: 'coming', station: 1007 }),
    entry('b', 'mound'),
  ],
  { subjects: [plainSubject], kit: plainKit },
);
const paths = pathsOf(contents, (kind) => kind === 'arrival', null);
const partsOf = (id: string | null) =>
  logMarks(contents.spots.find((s) => s.id === id) ?? null, contents.logEntries, paths);

it('[M90] the log is on the map at the selected spot alone: the spot, and where on its path an aircraft was measured', () => {
  const marks = partsOf('mound');
  expect(marks.map(({ properties }) => properties['part'])).toEqual(['log-spot', 'log-mark']);
  // 1 km before the threshold of 27, to the east of it: 0.0133 degrees of longitude.
  const at = marks[1]?.geometry;
  expect(at?.type === 'Point' ? at.coordinates[0] : NaN).toBeCloseTo(8.535 + 0.0133, 3);
  expect(partsOf('fence')).toEqual([]);
  expect(partsOf(null)).toEqual([]);
});
