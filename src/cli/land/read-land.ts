import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { geoEquirectangular } from 'd3-geo';
import { geoProject } from 'd3-geo-projection';
import { feature } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import type { LandArea } from '../../imports/land/land-file';
import type { Position } from '../../survey/document';
import { DEG } from '../../survey/angles';

const require = createRequire(import.meta.url);
export const landSource = require.resolve('world-atlas/land-50m.json');

/**
 * The world's land at 1 : 50 million, in degrees. Some of its rings cross the antimeridian and would be filled the
 * wrong way round on a flat map: a projection that leaves degrees as they are cuts them there.
 */
export async function readLand(): Promise<LandArea[]> {
  const topology = JSON.parse(await readFile(landSource, 'utf8')) as Topology<{ land: GeometryCollection }>;
  const degrees = geoEquirectangular().scale(DEG).translate([0, 0]).precision(0);
  const { features } = geoProject(feature(topology, topology.objects.land), degrees);
  return features.flatMap(({ geometry }) => {
    if (geometry.type === 'Polygon') return [geometry.coordinates.map(asRing)];
    if (geometry.type === 'MultiPolygon') return geometry.coordinates.map((area) => area.map(asRing));
    throw new Error(`expected polygons of land, got ${geometry.type}`);
  });
}

/** On the projection's page y grows downwards, and only so does it tell rings from the lakes in them. */
const asRing = (ring: readonly GeoJSON.Position[]): Position[] =>
  ring.map(([x = 0, y = 0]): Position => [x, -y]);
