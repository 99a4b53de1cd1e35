import { earthCentred } from '../../figures/geometry/earth';
import type { Path } from '../../figures/traffic/paths';
import type { Position } from '../../survey/document';
import { Memo } from '../../survey/memo';
import { decimal, length } from '../../units/format';
import type { LengthUnit } from '../../units/length';
import { metresPerPixel } from '../screen';
import { metric, type MapUnits } from '../units';
import { point, type OverlayFeature, type PointFeature } from './features';
import { courseAt, pathLine } from './path-line';
import type { SpotScene } from './scene';

/** m between ticks, whichever is the first that gives the labels room. */
const spacings = [100, 200, 500, 1000, 2000, 5000] as const;
const roomPixels = 120;

/** m of the centre above the datum: on the runway and just above it marks would crowd out what is painted there. */
const labelledFrom = 20;

/** What the station of each kind of path counts. */
const farFrom = {
  arrival: 'out',
  departure: 'from start',
  circuit: 'to fly',
  'flight-path': 'along',
  taxi: 'along',
  parked: '',
  pattern: 'to fly',
  pass: 'along',
} as const;

export function tickSpacing(lat: number, zoom: number): number | null {
  const least = roomPixels * metresPerPixel(lat, zoom);
  return spacings.find((spacing) => spacing >= least) ?? null;
}

/** A tick without what depends on the spot. */
interface Mark {
  readonly geometry: PointFeature['geometry'];
  /** Degrees from true north in which the aircraft flies. */
  readonly turn: number;
  readonly station: string;
  readonly height: string;
  /** Earth-centred, m. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

const kept = new Memo<readonly Mark[]>();

const marksAlong = (path: Path, spacing: number, units: MapUnits): readonly Mark[] =>
  kept.get([path, spacing, units], () => marksOf(path, spacing, units));

function marksOf(path: Path, spacing: number, { lengths }: MapUnits): readonly Mark[] {
  const { station, height, centre, count } = path.samples;
  const { positions } = pathLine(path);
  const marks: Mark[] = [];
  for (let i = 0; i < count; i++) {
    const at = station[i] as number;
    // The threshold and the start of a departure are marked by the runway itself.
    if (at % spacing !== 0 || at === 0 || (height[i] as number) < labelledFrom) continue;
    marks.push({
      geometry: point(positions[i] as Position, {}).geometry,
      turn: courseAt(path, i),
      station: `${stationText(at, spacing, lengths)} ${farFrom[path.ref.kind]}`,
      height: `height ${length(height[i] as number, lengths)}`,
      x: centre[3 * i] as number,
      y: centre[3 * i + 1] as number,
      z: centre[3 * i + 2] as number,
    });
  }
  return marks;
}

/** Ticks along the paths with station, height and slant range from the selected spot's eye. */
export function ticksOf(
  paths: readonly Path[],
  { spot, a }: Pick<SpotScene, 'spot' | 'a'>,
  zoom: number,
  units: MapUnits = metric,
): OverlayFeature[] {
  const spacing = tickSpacing(spot.position[1], zoom);
  if (spacing === null) return [];
  const [x, y, z] = earthCentred(spot.position, a.ground + spot.eyeHeight);
  const ticks: OverlayFeature[] = [];
  for (const path of paths) {
    for (const mark of marksAlong(path, spacing, units)) {
      const slant = Math.sqrt((mark.x - x) ** 2 + (mark.y - y) ** 2 + (mark.z - z) ** 2);
      const { turn, station, height, geometry } = mark;
      const detail = `${height}\nslant ${length(slant, units.lengths)}`;
      const properties = { part: 'tick', turn, station, detail, range: Math.round(slant) };
      ticks.push({ type: 'Feature', properties, geometry });
    }
  }
  return ticks;
}

/** "2 km", "1.5 km", "500 m": as fine as the ticks stand; in feet "4,921 ft". */
export function stationText(station: number, spacing: number, unit: LengthUnit = 'm'): string {
  if (unit === 'ft' || Math.abs(station) < 1000) return length(station, unit);
  const digits = spacing % 1000 === 0 ? 0 : 1;
  return `${decimal(station / 1000, digits)} km`;
}
