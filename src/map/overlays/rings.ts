import { RAD } from '../../figures/geometry/angles';
import { leadingIndex } from '../../figures/summary/spot-summary';
import type { PathFromSpot, PathRef, SpotFigures } from '../../figures/types';
import type { Position } from '../../survey/document';
import { Memo } from '../../survey/memo';
import { degreesPerPixel } from '../screen';
import { line, point, polygon, type OverlayFeature } from './features';
import { sweepsOf, type Sweep, type Wedge } from './ring-wedges';
import type { SpotScene } from './scene';

/** Pixels on screen: radius inside the first ring, width of one band, room between the rings of two paths. */
export interface RingSize {
  readonly inner: number;
  readonly band: number;
  readonly gap: number;
}

/** The selected spot's rings are read, the others compared at a glance: finer ones where spots stand close. */
export const selectedRings: RingSize = { inner: 26, band: 12, gap: 5 };
export const quietRings: readonly [RingSize, RingSize] = [
  { inner: 12, band: 6, gap: 3 },
  { inner: 10, band: 4, gap: 2 },
];

/**
 * Which of the paths' rings are drawn: all of them, those of one path (PathRef.path), or each spot's headline (null), which
 * some paths may not lead.
 */
export type RingChoice =
  'every' | { readonly path: string } | { readonly passedOver: ReadonlySet<string> } | null;

/** Indices of the paths whose rings a spot shows. The headline's is that of the path to wait at (`leadingIndex`). */
export function ringsOf({ paths }: SpotFigures, choice: RingChoice): readonly number[] {
  if (choice === null || (choice !== 'every' && 'passedOver' in choice)) {
    const leading = leadingIndex(paths, choice?.passedOver);
    return leading < 0 ? [] : [leading];
  }
  return paths.flatMap(({ ref, sector }, i) =>
    sector.runs.length > 0 && (choice === 'every' || ref.path === choice.path) ? [i] : [],
  );
}

/** Pixels to the outside of a spot's rings; the inner radius when it has none. */
export const ringsReach = (rings: number, size: RingSize): number =>
  size.inner + rings * (2 * size.band + size.gap);

const kept = new Memo<OverlayFeature[]>();

/** Light rings of the spots that are not selected: built anew for those only that something changed for. */
export const quietRingsOf = (
  { spot, a, b }: SpotScene,
  choice: RingChoice,
  size: RingSize,
  zoom: number,
): OverlayFeature[] =>
  kept.get([a, b, spot.position, choice, size, zoom], () =>
    ringsAt(spot.position, a, b, ringsOf(a, choice), size, zoom).flatMap(({ features }) => features),
  );

/** Light rings of the selected spot, with a tiny letter for each moment. */
export function selectedRingsOf(
  { spot, a, b }: SpotScene,
  choice: RingChoice,
  zoom: number,
): OverlayFeature[] {
  return ringsAt(spot.position, a, b, ringsOf(a, choice), selectedRings, zoom).flatMap(
    ({ features, letters }) => [...features, ...letters],
  );
}

/** One path's two bands: A inside, B outside. */
interface Ring {
  readonly features: readonly OverlayFeature[];
  readonly letters: readonly OverlayFeature[];
}

/** Pixels from the edge of a sector to the middle of its letter. */
const letterBeside = 7;

function ringsAt(
  position: Position,
  a: SpotFigures,
  b: SpotFigures,
  drawn: readonly number[],
  size: RingSize,
  zoom: number,
): readonly Ring[] {
  const screen = screenAt(position, zoom);
  return drawn.flatMap((i, k) => {
    const path = a.paths[i];
    const sweeps = path ? sweepsOfPath(path, b.paths[i], a, b) : [];
    if (!path || sweeps.length === 0) return [];
    const radius = size.inner + k * (2 * size.band + size.gap);
    return [ring(sweeps, radius, size.band, nameOf(path.ref), screen)];
  });
}

function sweepsOfPath(
  a: PathFromSpot,
  b: PathFromSpot | undefined,
  figuresA: SpotFigures,
  figuresB: SpotFigures,
): Sweep[] {
  const sweeps = a.sector.runs.flatMap((run, i) => {
    const other = b?.sector.runs[i];
    return other ? sweepsOf(run, other, figuresA, figuresB) : [];
  });
  // A circuit passes a bearing twice: the nearer pass is drawn last, over the farther one.
  return sweeps.length > 1 ? sweeps.sort((x, y) => y.focalLength - x.focalLength) : sweeps;
}

/** "08 arrival", as the runway's end and what happens there; "" for a path that has its own name on the map. */
const nameOf = ({ path, kind, runway }: PathRef): string =>
  kind === 'taxi' || kind === 'parked'
    ? kind
    : runway === null
      ? ''
      : path.split('/').slice(1).join(' ').replace(/#./, '');

/** The position `radius` pixels from the spot towards a bearing. */
type Screen = (bearing: number, radius: number) => Position;

function screenAt([lng, lat]: Position, zoom: number): Screen {
  const perPixel = degreesPerPixel(zoom);
  const perPixelNorth = perPixel * Math.cos(lat * RAD);
  return (bearing, radius) => [
    lng + radius * perPixel * Math.sin(bearing * RAD),
    lat + radius * perPixelNorth * Math.cos(bearing * RAD),
  ];
}

function ring(sweeps: readonly Sweep[], inner: number, band: number, name: string, screen: Screen): Ring {
  const middle = inner + band;
  const outer = middle + band;
  const features = sweeps.flatMap((sweep) => [
    ...sweep.a.map((wedge) => wedgeFeature(wedge, inner, middle, screen)),
    ...sweep.b.map((wedge) => wedgeFeature(wedge, middle, outer, screen)),
    line(around(sweep.edges, inner, outer, screen), { part: 'ring-edge' }),
    line(
      sweep.edges.map((bearing) => screen(bearing, middle)),
      { part: 'ring-edge' },
    ),
  ]);
  return { features, letters: legend(sweeps, inner, band, name, screen) };
}

/** A letter where each band begins, and the path's name where they end. */
function legend(
  sweeps: readonly Sweep[],
  inner: number,
  band: number,
  name: string,
  screen: Screen,
): OverlayFeature[] {
  const edges = sweeps[sweeps.length - 1]?.edges ?? [];
  const [first, last] = [edges[0], edges[edges.length - 1]];
  if (first === undefined || last === undefined) return [];
  const beyond = (bearing: number, radius: number, way: number) =>
    bearing + way * (letterBeside / (radius * RAD));
  const before = Math.sign(first - last);
  const letter = (text: string, radius: number) =>
    point(screen(beyond(first, radius, before), radius), { part: 'ring-letter', text, anchor: 'center' });
  const end = beyond(last, inner + band, -before);
  // The name goes on to the side to which the end of the bands looks.
  const eastward = Math.sin(end * RAD) > 0;
  return [
    letter('A', inner + band / 2),
    letter('B', inner + 1.5 * band),
    point(screen(end, inner + band), {
      part: 'ring-letter',
      text: name,
      anchor: eastward ? 'left' : 'right',
    }),
  ];
}

const wedgeFeature = ({ edges, colour, glare }: Wedge, inner: number, outer: number, screen: Screen) =>
  polygon([around(edges, inner, outer, screen)], { part: 'ring', colour, glare });

/** The outline of a piece of a ring, closed. */
function around(edges: readonly number[], inner: number, outer: number, screen: Screen): Position[] {
  const out: Position[] = edges.map((bearing) => screen(bearing, inner));
  for (let i = edges.length - 1; i >= 0; i--) out.push(screen(edges[i] as number, outer));
  out.push(out[0] as Position);
  return out;
}
