import { placed, positionOf } from '../../figures/geometry/earth';
import type { Path } from '../../figures/traffic/paths';
import { endGeometry } from '../../figures/traffic/runway-geometry';
import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import { polygon, type OverlayFeature } from './features';

/** Where eight flights in ten go, beside each path that is drawn, as far as the survey has taken it from recorded flights. */
export const flownBands = (
  runways: Contents['runways'],
  elevation: number,
  paths: readonly Pick<Path, 'ref'>[],
): readonly OverlayFeature[] => paths.flatMap(({ ref }) => bandOf(runways, elevation, ref));

function bandOf(
  runways: Contents['runways'],
  elevation: number,
  { kind, runway: id, end, path }: Path['ref'],
): readonly OverlayFeature[] {
  const runway = runways.find((r) => r.id === id);
  const band = end === null ? null : runway?.ends[end].flown?.find((b) => b.kind === kind);
  const geometry = band && runway && end !== null ? endGeometry(runway, end, elevation) : null;
  if (!band || !geometry) return [];
  const { frame, east, north, displaced } = geometry;
  const at = (station: number, right: number): Position => {
    const t = kind === 'departure' ? station : displaced - station;
    return positionOf(placed(frame, t * east + right * north, t * north - right * east, 0));
  };
  const sides = band.offset.flatMap((offset, i) => {
    const station = band.from + i * band.step;
    return offset ? [[at(station, offset[0]), at(station, offset[2])] as const] : [];
  });
  if (sides.length < 2) return [];
  const ring = [...sides.map(([left]) => left), ...sides.map(([, right]) => right).toReversed()];
  return [polygon([[...ring, ring[0] as Position]], { part: 'flown-band', path })];
}
