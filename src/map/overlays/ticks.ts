import { earthCentred } from '../../figures/geometry/earth';
import type { Path } from '../../figures/traffic/paths';
import { decimal, metres } from '../../units/format';
import { metresPerPixel } from '../screen';
import { point, type OverlayFeature } from './features';
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
} as const;

export function tickSpacing(lat: number, zoom: number): number | null {
  const least = roomPixels * metresPerPixel(lat, zoom);
  return spacings.find((spacing) => spacing >= least) ?? null;
}

/** Ticks along the paths with station, height and slant range from the selected spot's eye. */
export function ticksOf(
  paths: readonly Path[],
  { spot, a }: Pick<SpotScene, 'spot' | 'a'>,
  zoom: number,
): OverlayFeature[] {
  const spacing = tickSpacing(spot.position[1], zoom);
  if (spacing === null) return [];
  const eye = earthCentred(spot.position, a.ground + spot.eyeHeight);
  return paths.flatMap((path) => {
    const { station, height, centre, count } = path.samples;
    const ticks: OverlayFeature[] = [];
    for (let i = 0; i < count; i++) {
      const at = station[i] as number;
      // The threshold and the start of a departure are marked by the runway itself.
      if (at % spacing !== 0 || at === 0) continue;
      if ((height[i] as number) < labelledFrom) continue;
      const slant = Math.hypot(
        (centre[3 * i] as number) - eye[0],
        (centre[3 * i + 1] as number) - eye[1],
        (centre[3 * i + 2] as number) - eye[2],
      );
      ticks.push(
        point(pathLine(path).positions[i] ?? spot.position, {
          part: 'tick',
          turn: courseAt(path, i),
          station: `${stationText(at, spacing)} ${farFrom[path.ref.kind]}`,
          detail: `height ${metres(height[i] as number)}\nslant ${metres(slant)}`,
          range: slant,
        }),
      );
    }
    return ticks;
  });
}

/** "2 km", "1.5 km", "−200 m": as fine as the ticks stand. */
export function stationText(station: number, spacing: number): string {
  if (Math.abs(station) < 1000) return metres(station);
  const digits = spacing % 1000 === 0 ? 0 : 1;
  return `${decimal(station / 1000, digits)} km`;
}
