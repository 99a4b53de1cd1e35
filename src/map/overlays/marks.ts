import { isWorthIt } from '../../figures/score-words';
import { headlineOf } from '../../figures/summary/spot-summary';
import type { SpotFigures } from '../../figures/types';
import type { Path } from '../../figures/traffic/paths';
import { length } from '../../units/format';
import { amongWords } from '../../units/plain-text';
import { stationInWords } from '../../units/station';
import { degreesPerPixel } from '../screen';
import { metric, type MapUnits } from '../units';
import { point, type OverlayFeature, type PointFeature } from './features';
import { labelOf } from './label';
import { pathLine, sampleAtStation } from './path-line';

/**
 * Where on the paths whose rings are drawn (`shown`: their indices) the selected spot waits for them at A and at B, and
 * where they come closest; each with its path's name. What is not worth waiting for is not called best.
 */
export function marksOf(
  paths: readonly Path[],
  a: SpotFigures,
  b: SpotFigures,
  shown: readonly number[],
  zoom: number,
): OverlayFeature[] {
  const marks = shown.flatMap((i) => {
    const [path, seenA, seenB] = [paths[i], a.paths[i], b.paths[i]];
    // A path out of reach has no best point worth a mark.
    if (!path || !seenA || !seenB || seenA.sector.runs.length === 0) return [];
    const at = (station: number, part: string, what: string, rank: number) => {
      const position = pathLine(path).positions[sampleAtStation(path, station)];
      const label = `${what}, ${labelOf(path.name)}`;
      return position ? [point(position, { part, label, rank, path: path.ref.path })] : [];
    };
    const [bestA, bestB] = [headlineOf(seenA), headlineOf(seenB)].map((sample) =>
      isWorthIt(sample.score.total) ? sample.station : null,
    );
    const best = (station: number | null | undefined, letters: string, rank: number) =>
      station === null || station === undefined ? [] : at(station, 'best', `best ${letters}`, rank);
    return [
      ...best(bestA, bestA === bestB ? 'A, B' : 'A', 1),
      ...(bestA === bestB ? [] : best(bestB, 'B', 2)),
      ...at(seenA.closest.station, 'closest', 'closest', 3),
    ];
  });
  const near = sameWithin * degreesPerPixel(zoom);
  return marks.filter((mark, i) => !marks.slice(0, i).some((other) => isSame(mark, other, near)));
}

/** Pixels: marks of one kind that lie closer are one mark, as where an arrival and a departure share the runway. */
const sameWithin = 24;

const isSame = (one: PointFeature, other: PointFeature, near: number) =>
  one.properties['label'] === other.properties['label'] &&
  Math.hypot(
    one.geometry.coordinates[0] - other.geometry.coordinates[0],
    one.geometry.coordinates[1] - other.geometry.coordinates[1],
  ) < near;

/** The inspected point of a path. */
export function inspectedMark(
  paths: readonly Path[],
  inspected: { readonly path: string; readonly station: number } | null,
  { lengths }: MapUnits = metric,
): OverlayFeature[] {
  const path = paths.find((p) => p.ref.path === inspected?.path);
  if (!path || !inspected) return [];
  const i = sampleAtStation(path, inspected.station);
  const position = pathLine(path).positions[i];
  if (!position) return [];
  // On the ground it is at height 0, however the runway slopes from where heights count.
  const height = length(path.samples.onGround[i] === 1 ? 0 : (path.samples.height[i] as number), lengths);
  const station = stationInWords(path.ref.kind, path.samples.station[i] as number, (m) => length(m, lengths));
  const label = `${amongWords(labelOf(path.name))}\n${station}\nheight ${height}`;
  return [point(position, { part: 'inspected', label })];
}
