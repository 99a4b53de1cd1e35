import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import type { Obstacle } from '../../survey/schema/places';
import type { Runway } from '../../survey/schema/runway';
import { sightOf } from '../../survey/schema/sights';
import { RAD, wrap180 } from '../geometry/angles';
import { destination, groundLine } from '../geometry/earth';
import { groundUnder } from '../sight/ground';
import type { Terrain } from '../sight/terrain';
import { outlineOf } from '../sight/outline';
import { endElevations, longestFlown } from '../traffic/runway-geometry';
import { surfaceOf } from '../traffic/surface';
import { placeFrom, type EastNorthUp, type ViewPoint } from './from-eye';

/** A paved strip between two edges, point by point. */
export interface Strip {
  readonly left: readonly EastNorthUp[];
  readonly right: readonly EastNorthUp[];
}

export interface RunwayStrip extends Strip {
  readonly paved: boolean;
  /** m. */
  readonly length: number;
  readonly width: number;
  /** m of the landing thresholds from the first point and from the last. */
  readonly displaced: readonly [number, number];
}

/** A block, a wall, a hedge or a fence: lower and upper edge, point by point; closed when it has an inside. */
export interface Block {
  readonly id: string;
  readonly foot: readonly EastNorthUp[];
  readonly top: readonly EastNorthUp[];
  readonly closed: boolean;
  readonly looks: 'wall' | 'wires' | 'leaves';
  /** m. */
  readonly height: number;
}

/** What stands round an eye. */
export interface Scenery {
  /** The ground in rings from the eye outwards: `spokes` points a ring, the point under the eye first. */
  readonly ground: { readonly points: readonly EastNorthUp[]; readonly spokes: number };
  readonly runways: readonly RunwayStrip[];
  readonly taxiRoutes: readonly Strip[];
  readonly aprons: readonly (readonly EastNorthUp[])[];
  readonly blocks: readonly Block[];
}

type Places = Pick<Contents, 'runways' | 'aprons' | 'taxiRoutes' | 'obstacles'>;

/** m from the eye to each ring of the ground; the last is beyond every horizon from a car park's roof. */
const ringsAt = [4, 10, 25, 60, 120, 250, 500, 1000, 2000, 4000, 8000, 15_000, 25_000] as const;
const spokes = 48;
/** m from the eye to which its own ground reaches, and from which it is the ground of all. */
const ownGround = [25, 120] as const;
/** m between the points of a strip, so that it follows the earth. */
const stripStep = 100;
/** m from a taxi route's line to the edge of its pavement: 23 m, code letter E's of ICAO Annex 14 (from memory). */
const taxiHalf = 11.5;

/**
 * Everything on the ground round an eye, at the heights that the figures have it at; `field`: the field's elevation in m
 * above mean sea level, `runways` with what the terrain says where they say nothing (`grounded`).
 */
export function sceneryRound(
  view: ViewPoint,
  { runways, aprons, taxiRoutes, obstacles }: Places,
  field: number,
  terrain: Terrain | null = null,
): Scenery {
  const groundAt = (position: Position) =>
    groundUnder({ ground: null, position }, runways, field, terrain).elevation;
  const onGround = (position: Position, above = 0) => placeFrom(view, position, groundAt(position) + above);
  return {
    ground: groundRound(view, groundAt),
    runways: runways.flatMap((runway) => runwayStrip(view, runway, field) ?? []),
    taxiRoutes: taxiRoutes.map(({ line }) => taxiStrip(line, onGround)),
    aprons: aprons.flatMap(({ rings }) => (rings[0] ? [rings[0].map((position) => onGround(position))] : [])),
    blocks: obstacles.flatMap((obstacle) => blocksOf(view, obstacle, groundAt)),
  };
}

function groundRound(view: ViewPoint, groundAt: (position: Position) => number): Scenery['ground'] {
  const points: EastNorthUp[] = [[0, 0, -view.eyeHeight]];
  for (const radius of ringsAt) {
    const own = Math.max(0, Math.min(1, (ownGround[1] - radius) / (ownGround[1] - ownGround[0])));
    for (let i = 0; i < spokes; i++) {
      const position = destination(view.position, (360 * i) / spokes, radius);
      const height = own === 1 ? view.ground : own * view.ground + (1 - own) * groundAt(position);
      points.push(placeFrom(view, position, height));
    }
  }
  return { points, spokes };
}

function runwayStrip(view: ViewPoint, runway: Runway, field: number): RunwayStrip | null {
  const [a, b] = runway.line;
  const { distance: length, azimuth } = groundLine(a, b);
  if (azimuth === null || length > longestFlown) return null;
  const [from, to] = endElevations(runway, field);
  const steps = Math.max(1, Math.ceil(length / stripStep));
  const edge = (side: number) =>
    Array.from({ length: steps + 1 }, (_, i) => {
      const centre = destination(a, azimuth, (length * i) / steps);
      return placeFrom(
        view,
        destination(centre, azimuth + side, runway.width / 2),
        from + ((to - from) * i) / steps,
      );
    });
  return {
    left: edge(-90),
    right: edge(90),
    paved: !['unpaved', 'water'].includes(surfaceOf(runway.surface)),
    length,
    width: runway.width,
    displaced: [runway.ends[0].displaced, runway.ends[1].displaced],
  };
}

function taxiStrip(line: readonly Position[], onGround: (position: Position) => EastNorthUp): Strip {
  const at = line.flatMap((position, i): { position: Position; across: number; half: number }[] => {
    const before = i > 0 ? groundLine(line[i - 1] as Position, position).azimuth : null;
    const after = i + 1 < line.length ? groundLine(position, line[i + 1] as Position).azimuth : null;
    const course = after ?? before;
    if (course === null) return [];
    // At a corner the edge lies on the line that halves it, a little farther out.
    const turn = before === null || after === null ? 0 : wrap180(after - before);
    return [
      {
        position,
        across: course - turn / 2,
        half: taxiHalf / Math.max(0.4, Math.cos((turn / 2) * RAD)),
      },
    ];
  });
  const edge = (side: number) =>
    at.map(({ position, across, half }) => onGround(destination(position, across + side, half)));
  return { left: edge(-90), right: edge(90) };
}

function blocksOf(view: ViewPoint, obstacle: Obstacle, groundAt: (position: Position) => number): Block[] {
  const { height, underside, base, sight, id } = obstacle;
  const { chains, closed } = outlineOf(obstacle);
  const [outer = []] = chains;
  if (outer.length < 2) return [];
  const foot = outer.map((position) => base ?? groundAt(position));
  const raised = (by: number) =>
    outer.map((position, i) => placeFrom(view, position, (foot[i] as number) + by));
  const { looks } = sightOf(sight);
  return [{ id, closed, looks, height, foot: raised(underside), top: raised(height) }];
}
