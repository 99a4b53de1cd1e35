import type { Obstacle } from '../../survey/schema/places';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { frameAt, mapped } from '../geometry/earth';
import type { Outlook } from '../outlook';
import type { Path } from '../traffic/paths';
import { sinkPerSquareMetre } from './curvature';
import { groundUnder } from './ground';
import { groundUnderAircraft } from './ground-under-aircraft';
import { seasons, targetsAlong } from './spot-sight';
import { blocks, open, type Surroundings } from './surroundings';
import { isWithin, perEdge } from './top-edges';

/** Something that the line of sight meets. m from the eye along the ground; heights in m above mean sea level. */
export interface OnTheLine {
  readonly id: string;
  readonly name: string;
  /** Where the line comes in and where it leaves; one and the same for a wall. */
  readonly from: number;
  readonly to: number;
  readonly foot: number;
  readonly top: number;
  /** Where it begins: its foot, or the underside below which one sees through. */
  readonly underside: number;
  /** m above its foot, as the survey says. */
  readonly height: number;
  /** Whether it hides what is behind it: a mesh does not, nor do trees without leaves. */
  readonly hides: boolean;
}

/** The side view along one line from an eye to an aircraft. Distances m from the eye, heights m above mean sea level. */
export interface SightProfile {
  readonly distance: number;
  readonly eye: number;
  readonly wheels: number;
  readonly centre: number;
  readonly fin: number;
  /** The ground along the line; `assumed` where it is the nearest runway's and no terrain says so. */
  readonly ground: readonly { readonly at: number; readonly height: number }[];
  readonly assumed: boolean;
  readonly obstacles: readonly OnTheLine[];
  /** The line to the centre as light goes: it sags against the curve of the earth. */
  readonly ray: readonly { readonly at: number; readonly height: number }[];
  /** The lowest height at the aircraft's place that shows; null where nothing is in the way. */
  readonly leastVisible: number | null;
  /** What first rises above the line to the centre, else above that to the wheels: "terrain" or an obstacle's id, and where. */
  readonly first: { readonly by: string; readonly at: number } | null;
  /** m by which the eye must be higher to see the aircraft down to its wheels; 0 when it does. */
  readonly raise: number;
}

/** Steps in which the ground is drawn. */
const steps = 240;

const bare = (spot: StandingSpot): Surroundings => {
  const frame = frameAt(spot.position);
  return {
    frame,
    sink: sinkPerSquareMetre(frame),
    obstacles: [],
    tops: [],
    highestTop: -Infinity,
    terrain: null,
    leafy: false,
    near: () => [],
  };
};

/** The profile from a spot to the aircraft at sample `i` of a path, with the leaves of an instant. */
export function sightProfile(
  spot: StandingSpot,
  path: Path,
  i: number,
  outlook: Outlook,
  instant: number,
): SightProfile {
  const around = outlook.around ?? bare(spot);
  const { frame, sink, terrain } = around;
  const { runways, fieldElevation } = outlook;
  const under = groundUnder(spot, runways, fieldElevation, terrain);
  const eye = under.elevation + spot.eyeHeight;
  const [x, y] = mapped(frame, spot.position);
  const { points } = targetsAlong(path, outlook.framing, around);
  const at = (p: number) => points[9 * i + p] as number;
  const [dx, dy] = [at(3) - x, at(4) - y];
  const distance = Math.hypot(dx, dy);
  const [wheels, centre, fin] = [at(2), at(5), at(8)];
  const along = Array.from({ length: steps + 1 }, (_, k) => (k / steps) * distance);
  const atFoot = (s: number): number | null => {
    const share = distance > 0 ? s / distance : 0;
    const height = terrain?.heightAt(x + dx * share, y + dy * share) ?? NaN;
    return Number.isNaN(height) ? null : height;
  };
  // Without terrain the ground is drawn straight from the spot's to that under the aircraft.
  const there = groundUnderAircraft(path, i, centre, outlook);
  const flat = (s: number) => under.elevation + (there - under.elevation) * (distance > 0 ? s / distance : 0);
  // At either end the figures' own ground counts, which the terrain need not agree with: what a spot or a runway states.
  const reach = terrain ? Math.min(terrain.step, distance / 2) : 0;
  const joined = (s: number): number => {
    const [from, own] = s < reach ? [reach, under.elevation] : [distance - reach, there];
    const away = s < reach ? reach - s : s - from;
    const edge = atFoot(from) ?? flat(from);
    return away <= 0 ? (atFoot(s) ?? flat(s)) : edge + ((own - edge) * away) / reach;
  };
  const ground = along.map((s) => ({ at: s, height: joined(s) }));
  const does = seasons(around, outlook.timeZone, [instant])[0]?.does ?? new Uint8Array(0);
  const obstacles = metBy(around, does, x, y, dx, dy, eye, (o, s) => o.base ?? atFoot(s) ?? flat(s));

  // What rises where: each can hide.
  const hiders = obstacles
    .filter((o) => o.hides)
    .flatMap((o) => [o.from, o.to].map((s) => ({ by: o.id, at: s, height: o.top, from: fromOf(o) })));
  if (terrain)
    for (let s = terrain.step; s <= distance - terrain.step; s += terrain.step) {
      const height = atFoot(s);
      if (height !== null) hiders.push({ by: 'terrain', at: s, height, from: -Infinity });
    }
  // In heights less the sinking a sight line is straight.
  const steepness = (height: number, s: number) => (height - eye) / s - sink * s;
  const highest = Math.max(wheels, centre, fin);
  // What one stands in has no side that faces the eye; what the whole aircraft is seen under is not in the way.
  const ahead = hiders
    .filter((h) => h.at > 0.01 && steepness(h.from, h.at) <= steepness(highest, distance))
    .sort((a, b) => a.at - b.at);
  const most = ahead.reduce((m, h) => Math.max(m, steepness(h.height, h.at)), -Infinity);
  const above = (height: number) =>
    ahead.find((h) => {
      const line = steepness(height, distance);
      return steepness(h.height, h.at) > line && steepness(h.from, h.at) <= line;
    });
  const first = above(centre) ?? above(wheels) ?? null;
  const raise = ahead.reduce((least, h) => {
    const needed =
      (h.height / h.at - wheels / distance + sink * (distance - h.at)) / (1 / h.at - 1 / distance);
    return Math.max(least, needed - eye);
  }, 0);
  return {
    distance,
    eye,
    wheels,
    centre,
    fin,
    ground,
    assumed: terrain === null,
    obstacles,
    ray: along.map((s) => ({ at: s, height: rayAt(eye, centre, distance, sink, s) })),
    leastVisible: most === -Infinity ? null : eye + most * distance + sink * distance * distance,
    first: first && { by: first.by, at: first.at },
    raise: distance > 0 ? raise : 0,
  };
}

/** m above mean sea level down to which something hides: without an underside all the way. */
const fromOf = ({ foot, underside }: OnTheLine): number => (underside > foot ? underside : -Infinity);

/** m above mean sea level of the line between two heights, `s` m out: lower between them by what the earth bulges. */
const rayAt = (eye: number, end: number, distance: number, sink: number, s: number): number =>
  distance > 0 ? eye + ((end - eye) * s) / distance - sink * s * (distance - s) : eye;

/** The obstacles on the line from (`x`, `y`) over (`dx`, `dy`), the nearest first. */
function metBy(
  around: Surroundings,
  does: Uint8Array,
  x: number,
  y: number,
  dx: number,
  dy: number,
  eye: number,
  footAt: (obstacle: Obstacle, s: number) => number,
): OnTheLine[] {
  const distance = Math.hypot(dx, dy);
  const box = [Math.min(x, x + dx), Math.min(y, y + dy), Math.max(x, x + dx), Math.max(y, y + dy)] as const;
  const out: OnTheLine[] = [];
  for (const index of around.near(...box)) {
    const [obstacle, tops] = [around.obstacles[index], around.tops[index]];
    if (!obstacle || !tops) continue;
    // What carries the spot hides nothing from it (as `TopRays` has it).
    const carries = tops.closed && tops.top <= eye && isWithin(tops, x, y);
    const met: { s: number; top: number }[] = [];
    for (let k = 0; k < tops.count * perEdge; k += perEdge) {
      const e = tops.edges;
      const [ax, ay] = [(e[k] as number) - x, (e[k + 1] as number) - y];
      const [bx, by] = [(e[k + 3] as number) - x - ax, (e[k + 4] as number) - y - ay];
      const across = dx * by - dy * bx;
      if (across === 0) continue;
      const u = (ax * by - ay * bx) / across;
      const v = (ax * dy - ay * dx) / across;
      if (u <= 0 || u >= 1 || v < 0 || v > 1) continue;
      const [from, to] = [e[k + 2] as number, e[k + 5] as number];
      met.push({ s: u * distance, top: from + v * (to - from) });
    }
    met.sort((a, b) => a.s - b.s);
    const hides = does[index] === blocks && !carries;
    // An area is entered and left again; the line may begin or end within it.
    const pairs = tops.closed
      ? chunked(isWithin(tops, x, y) ? [{ s: 0, top: tops.top }, ...met] : met, distance)
      : met.map((m) => [m, m] as const);
    for (const [a, b] of pairs) {
      const foot = footAt(obstacle, a.s);
      out.push({
        id: obstacle.id,
        name: obstacle.name || 'Obstacle',
        from: a.s,
        to: b.s,
        foot,
        top: Math.max(a.top, b.top),
        underside: foot + obstacle.underside,
        height: obstacle.height,
        hides: hides && does[index] !== open,
      });
    }
  }
  return out.sort((a, b) => a.from - b.from);
}

function chunked<T extends { s: number; top: number }>(met: readonly T[], end: number) {
  const pairs: (readonly [{ s: number; top: number }, { s: number; top: number }])[] = [];
  for (let k = 0; k < met.length; k += 2) {
    const a = met[k] as T;
    pairs.push([a, met[k + 1] ?? { s: end, top: a.top }]);
  }
  return pairs;
}
