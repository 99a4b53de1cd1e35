import Flatbush from 'flatbush';
import type { Position } from '../../survey/document';
import { atOnce } from '../../survey/at-once';
import { lastAnswer, Memo } from '../../survey/memo';
import type { Obstacle } from '../../survey/schema/places';
import { isLeafy, leafSeason, sightOf, type Does } from '../../survey/schema/sights';
import type { Runway } from '../../survey/schema/runway';
import type { Frame } from '../geometry/earth';
import { sinkPerSquareMetre } from './curvature';
import type { Terrain } from './terrain';
import { topEdges, type TopEdges } from './top-edges';

/** What stands round the field, ready for sight lines: the same for every spot. */
export interface Surroundings {
  readonly frame: Frame;
  /** m of sinking for each squared m of distance (`sinkPerSquareMetre`). */
  readonly sink: number;
  readonly obstacles: readonly Obstacle[];
  /** One entry an obstacle. */
  readonly tops: readonly TopEdges[];
  /** m above mean sea level that no obstacle is above. */
  readonly highestTop: number;
  readonly terrain: Terrain | null;
  /** Whether any obstacle comes and goes with its leaves. */
  readonly leafy: boolean;
  /** Indices of the obstacles whose box meets a box of the site frame. */
  near(west: number, south: number, east: number, north: number): readonly number[];
}

const kept = new Memo<TopEdges>();

/** What `surroundings` asks of each obstacle, one by one: asked then, it is found here. */
export function* raisingEdges(
  obstacles: readonly Obstacle[],
  runways: readonly Runway[],
  field: number,
  frame: Frame,
  terrain: Terrain | null,
): Generator<void, readonly TopEdges[]> {
  const tops: TopEdges[] = [];
  for (const obstacle of obstacles) {
    tops.push(
      kept.get([obstacle, frame, runways, field, terrain], () =>
        topEdges(obstacle, frame, runways, field, terrain),
      ),
    );
    yield;
  }
  return tops;
}

/** Null on open ground, where nothing can be hidden. */
export const surroundings = lastAnswer(
  (
    obstacles: readonly Obstacle[],
    runways: readonly Runway[],
    field: number,
    frame: Frame,
    terrain: Terrain | null,
  ): Surroundings | null => {
    if (obstacles.length === 0 && !terrain) return null;
    const tops = atOnce(raisingEdges(obstacles, runways, field, frame, terrain));
    kept.keepOnly(obstacles);
    const index = tops.length > 0 ? new Flatbush(tops.length) : null;
    for (const { west, south, east, north } of tops) index?.add(west, south, east, north);
    index?.finish();
    return {
      frame,
      sink: sinkPerSquareMetre(frame),
      obstacles,
      tops,
      highestTop: tops.reduce((highest, { top }) => Math.max(highest, top), -Infinity),
      terrain,
      leafy: obstacles.some((o) => isLeafy(o.sight)),
      near: (west, south, east, north) => index?.search(west, south, east, north) ?? [],
    };
  },
);

/** What an obstacle does to a sight line, as numbers for the loops. */
export const open = 0;
export const blocks = 1;
export const mesh = 2;
const numberFor: Readonly<Record<Does, number>> = { opens: open, hides: blocks, veils: mesh };

const keptDoing = new Memo<Uint8Array>({ each: 12 });

/** What each obstacle does in a month (1 to 12). Leaves without stated months are those of the hemisphere's season. */
export const standing = (around: Surroundings, month: number): Uint8Array =>
  keptDoing.get([around, month], () =>
    Uint8Array.from(around.obstacles, (obstacle) => {
      const { inLeaf, bare } = sightOf(obstacle.sight);
      return numberFor[monthsInLeaf(obstacle, around.frame.position).includes(month) ? inLeaf : bare];
    }),
  );

/** The months (1 to 12) in which an obstacle's leaves hide: stated, else those of the hemisphere's season. */
export function monthsInLeaf({ leafMonths }: Obstacle, [, lat]: Position): readonly number[] {
  if (leafMonths.length > 0) return leafMonths;
  return lat >= 0 ? leafSeason.north : leafSeason.south;
}
