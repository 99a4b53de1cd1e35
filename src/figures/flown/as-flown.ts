import type { Contents } from '../../survey/contents';
import { along, dot, minus, type Vec3 } from '../geometry/earth';
import { grounded } from '../sight/grounded';
import type { ElevationGrid } from '../sight/terrain';
import type { EyeThere } from '../spot/eye-at';
import { fieldElevation, type Path } from '../traffic/paths';
import { endGeometry } from '../traffic/runway-geometry';
import type { Sample } from '../types';
import { bandAt, type FlownAt } from './band-at';

/** How far flights of eight in ten spread about the path at a sample: m to the right, m upwards. */
export interface SpreadAt {
  readonly flights: number;
  readonly up: FlownAt['height'];
  readonly right: FlownAt['height'];
}

/**
 * What recorded flights that were taken into the survey say of a path's station; null where they say nothing. `terrain`: what
 * ends without a stated height lie on.
 */
export function spreadAt(
  { ref: { kind, runway: id, end } }: Pick<Path, 'ref'>,
  { station, height }: Pick<Sample, 'station' | 'height'>,
  contents: Pick<Contents, 'site' | 'runways'>,
  terrain: ElevationGrid | null,
): SpreadAt | null {
  const field = grounded(contents, terrain);
  const runway = field.runways.find((r) => r.id === id);
  const band = end === null ? null : runway?.ends[end].flown?.find((b) => b.kind === kind);
  const there = band && bandAt(band, station);
  const geometry = runway && end !== null ? endGeometry(runway, end, fieldElevation(field)) : null;
  if (!band || !there || !geometry) return null;
  // Departures count their heights from the pavement end, bands from the landing threshold.
  const datum = kind === 'departure' ? geometry.thresholdElevation - geometry.elevation : 0;
  const [low, middle, high] = there.height;
  return {
    flights: band.flights,
    up: [low + datum - height, middle + datum - height, high + datum - height],
    right: there.offset ?? [0, 0, 0],
  };
}

/** Focal lengths in mm that eight flights in ten need where the path needs `focalLength`: as the slant range, so the focal length. */
export function focalAsFlown(
  spread: SpreadAt,
  path: Pick<Path, 'samples'>,
  sample: Pick<Sample, 'station' | 'focalLength'>,
  eye: EyeThere,
): { readonly shortest: number; readonly longest: number } | null {
  const i = path.samples.station.indexOf(sample.station);
  if (i < 0 || sample.focalLength === null) return null;
  const vector = (list: Float64Array): Vec3 => [
    list[3 * i] as number,
    list[3 * i + 1] as number,
    list[3 * i + 2] as number,
  ];
  const [sight, forward, up] = [
    minus(vector(path.samples.centre), eye.point),
    vector(path.samples.forward),
    vector(path.samples.up),
  ];
  const right: Vec3 = [
    forward[1] * up[2] - forward[2] * up[1],
    forward[2] * up[0] - forward[0] * up[2],
    forward[0] * up[1] - forward[1] * up[0],
  ];
  const far = (v: Vec3) => Math.sqrt(dot(v, v));
  const { focalLength } = sample;
  const corners = [spread.up[0], spread.up[2]].flatMap((u) =>
    [spread.right[0], spread.right[2]].map(
      (r) => (focalLength * far(along(along(sight, up, u), right, r))) / far(sight),
    ),
  );
  return { shortest: Math.min(...corners), longest: Math.max(...corners) };
}
