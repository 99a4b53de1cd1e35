import type { Contents } from '../../survey/contents';
import type { Obstacle } from '../../survey/schema/places';
import { length } from '../../units/format';
import { amongWords } from '../../units/plain-text';
import { metric, type MapUnits } from '../units';
import { line, overlay, polygon, type Overlay, type OverlayFeature } from './features';
import { labelOf } from './label';
import { runwayFeatures } from './runway-features';

/** Roads, paths, parking and greens of a map that was brought in, under everything that the user has drawn. */
export const useOverlay = (groundUses: Contents['groundUses']): Overlay =>
  overlay(
    groundUses.map(({ id, rings, line: way, use, access }) => {
      const properties = { part: 'use', id, use: use ?? 'road', access: access ?? 'unknown' };
      return rings.length > 0 ? polygon(rings, properties) : line(way, properties);
    }),
  );

type Places = Pick<Contents, 'runways' | 'aprons' | 'taxiRoutes' | 'obstacles' | 'noGoAreas' | 'flightPaths'>;

/** What the survey says stands on the ground: drawn again only when one of these changes. */
export function groundOverlay(
  { runways, aprons, taxiRoutes, obstacles, noGoAreas, flightPaths }: Places,
  units: MapUnits = metric,
): Overlay {
  return overlay([
    ...noGoAreas.map((area) =>
      polygon(area.rings, { part: 'no-go', id: area.id, label: labelOf(area.name) }),
    ),
    ...aprons.map((apron) =>
      polygon(apron.rings, { part: 'apron', id: apron.id, label: labelOf(apron.name) }),
    ),
    ...taxiRoutes.map((route) =>
      line(route.line, { part: 'taxi-route', id: route.id, label: labelOf(route.name) }),
    ),
    ...obstacles.map((obstacle) => obstacleFeature(obstacle, units)),
    ...runways.flatMap(runwayFeatures),
    ...flightPaths.map((path) =>
      line(path.line, { part: 'flight-path', id: path.id, label: labelOf(path.name) }),
    ),
  ]);
}

function obstacleFeature(
  { id, name, height, sight, rings, line: edge }: Obstacle,
  { lengths }: MapUnits,
): OverlayFeature {
  const label = `${name === '' ? '' : `${amongWords(labelOf(name))}, `}${length(height, lengths)} high`;
  const properties = { id, label, sight: sight ?? 'solid' };
  return rings.length > 0
    ? polygon(rings, { part: 'obstacle', ...properties })
    : line(edge, { part: 'obstacle-line', ...properties });
}
