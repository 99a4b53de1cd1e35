import type { ElevationGrid } from '../../src/figures/sight/terrain';
import type { Survey } from '../../src/survey/document';
import { addFeature } from '../../src/survey/edits/add-feature';
import { seeded } from '../support/tolerance.ts';
import { busySurvey } from './busy-survey.ts';

/** The survey of the drag budget with 500 buildings, some of them trees, round its runways. */
export function builtUpSurvey(): Survey {
  const random = seeded(500);
  const survey = busySurvey();
  const features = Array.from({ length: 500 }, (_, i) => {
    const [x, y] = [-0.495 + 0.075 * random(), 51.466 + 0.023 * random()];
    const [w, h] = [0.0002 + 0.0004 * random(), 0.0001 + 0.0003 * random()];
    const ring = [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
      [x, y],
    ] as const;
    const properties = {
      height: 4 + 12 * random(),
      sight: i % 10 === 0 ? 'leaf' : 'solid',
      leafMonths: [5, 6, 7],
    };
    const shape = { type: 'Polygon', coordinates: [ring] } as const;
    return addFeature({ ...survey, features: [] }, `o${i}`, 'obstacle', shape, properties).features[0];
  });
  return { ...survey, features: [...survey.features, ...features.filter((f) => f !== undefined)] };
}

/** Ground 700 x 700 samples wide, 28 m apart, in waves of 15 m with a metre of bumps. */
export function wavyGround(): ElevationGrid {
  const random = seeded(700);
  const size = 700;
  const [stepLng, stepLat] = [0.0004, 0.00027];
  const heights = Float32Array.from({ length: size * size }, (_, i) => {
    const [x, y] = [i % size, Math.floor(i / size)];
    return 10 + 15 * Math.sin(x / 23) * Math.cos(y / 31) + random();
  });
  const [west, north] = [-0.46 - 350 * stepLng, 51.4776 + 350 * stepLat];
  return { columns: size, rows: size, west, north, stepLng, stepLat, heights };
}
