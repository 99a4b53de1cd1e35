import type { Position } from '../survey/document';
import type { Lens } from '../survey/schema/kit';
import { groundLine, mapped } from '../figures/geometry/earth';
import { verdictFor } from '../figures/optics/verdict';
import { Scratch } from '../figures/scratch';
import { spotFigures } from '../figures/spot-figures';
import { runwaysFrom } from '../figures/spot/runways-from';
import { spotThere } from '../figures/spot/spot-there';
import { middleOf, printedPosition } from './area';
import { chooseCells } from './choose-cells';
import type { GroundThere } from './ground/ground-plan';
import { bestInstant, type CellFigures, type Sweep } from './sweep';

/** When a path is good from a place. Instants; `to`: a step after the last good one. */
export interface GoodPath {
  readonly path: string;
  readonly name: string;
  readonly goodMinutes: number;
  readonly from: number;
  readonly to: number;
  /** The same spell by spell: morning and evening may be good without the noon between. */
  readonly spells: readonly { readonly from: number; readonly to: number }[];
  /** mm, shortest and longest that its best samples need while it is good. */
  readonly focal: { readonly shortest: number; readonly longest: number };
}

/** A place to stand, with all that is said of it. Everything is computed at its own position, as figures would. */
export interface Candidate {
  readonly position: Position;
  readonly ground: 'open' | 'unknown';
  readonly veryClose: boolean;
  /** Name of the way it lies on, null for none. */
  readonly way: string | null;
  /** By the clock: minutes at which some path is good. */
  readonly goodMinutes: number;
  /** Over all paths: what places are ranked by. Two that are good at once count twice, as twice as much comes past. */
  readonly pathMinutes: number;
  readonly worth: number;
  readonly bestInstant: number;
  /** mm at the best instant. */
  readonly focalLength: number | null;
  /** Key of the lens that takes it, the extender on it, and whether it serves all that the paths need while they are good. */
  readonly lens: {
    readonly key: string;
    readonly extender: number | null;
    readonly throughout: boolean;
  } | null;
  /** Of the path that is good for longest: its share in sight, and what hides the rest (ids, or "terrain"). */
  readonly visibleShare: number | null;
  readonly hiddenBy: readonly string[];
  readonly paths: readonly GoodPath[];
  /** Which side of the nearest runway that it is good for, by the compass. */
  readonly side: string | null;
  /** m to the nearest spot of the survey, null without any. */
  readonly nearestSpot: number | null;
  /** m above mean sea level of what one stands on where that is no plain ground. */
  readonly deck: number | null;
}

/** The places, best first; where there are none, why. */
export interface Proposed {
  readonly candidates: readonly Candidate[];
  readonly none: 'forbidden-by-field' | 'nothing-good' | null;
}

/** The places to propose after a sweep, best first. */
export function candidatesOf(sweep: Sweep, figures: CellFigures): Proposed {
  if (sweep.contents.rules.photography === 'forbidden') return { candidates: [], none: 'forbidden-by-field' };
  const { area } = sweep.plan;
  const points = new Map<number, Place | null>();
  const offsets = offsetsOf(area.cell);
  const placeOf = (cell: number) => {
    let place = points.get(cell);
    if (place === undefined) points.set(cell, (place = nearestOpen(sweep, cell, offsets)));
    return place;
  };
  const chosen = chooseCells(figures, sweep.plan, {
    wayOf: (cell) => {
      const { id, name } = sweep.ground.ofCell(...middleOf(area, cell));
      return name || id;
    },
    isStandable: (cell) => placeOf(cell) !== null,
  });
  const scratch = new Scratch();
  const candidates = chosen.flatMap((k) => {
    const place = placeOf(figures.cells[k] as number);
    return place ? [candidateAt(sweep, place, scratch)] : [];
  });
  // Moving within its cell changes a place's figures by a little: the order is that of what a reader sees.
  candidates.sort(
    (a, b) =>
      Number(a.ground === 'unknown') - Number(b.ground === 'unknown') || b.pathMinutes - a.pathMinutes,
  );
  return { candidates, none: candidates.length === 0 ? 'nothing-good' : null };
}

interface Place {
  readonly position: Position;
  readonly there: GroundThere;
}

/** m between the places that are tried in a cell. */
const tried = 1;

/** m east and north of a cell's middle, nearest first: where a place is tried in a cell of so many metres. */
function offsetsOf(cell: number): readonly (readonly [number, number])[] {
  const steps = Math.floor(cell / 2 / tried);
  const offsets: (readonly [number, number])[] = [];
  for (let i = -steps; i <= steps; i++)
    for (let j = -steps; j <= steps; j++) offsets.push([i * tried, j * tried]);
  return offsets.sort((a, b) => Math.hypot(...a) - Math.hypot(...b));
}

/** The open place of an open cell that is nearest to its middle; of an unknown cell its middle. Null where all is closed. */
function nearestOpen(
  { plan: { area }, ground }: Sweep,
  cell: number,
  offsets: ReturnType<typeof offsetsOf>,
): Place | null {
  const [x, y] = middleOf(area, cell);
  const wanted = ground.ofCell(x, y).ground;
  if (wanted === 'closed') return null;
  for (const [dx, dy] of offsets) {
    const position = printedPosition(area.frame, x + dx, y + dy);
    const there = ground.ofPlace(...mapped(area.frame, position));
    if (there.ground === wanted) return { position, there };
  }
  return null;
}

function candidateAt(sweep: Sweep, { position, there }: Place, scratch: Scratch): Candidate {
  const { paths, instants, step } = sweep.plan;
  const { contents, outlook } = sweep;
  const kernel = sweep.lookFrom(position);
  const count = instants.length;
  const best = bestInstant(kernel.worth);
  const focal = kernel.focal[best] as number;
  const open = sweep.hours.at(...mapped(sweep.plan.area.frame, position));
  const isGood = (p: number, t: number) => kernel.good[p * count + t] === 1 && open[t] === 1;
  const minutes = (is: (t: number) => boolean) => (instants.filter((_, t) => is(t)).length * step) / 60;
  const under = sweep.groundUnder(position);
  const spot = spotThere(position, under.stated ? under.elevation : null);
  const seen = spotFigures(spot, paths, outlook, instants, scratch);
  const good = paths.flatMap(({ ref, name }, p): GoodPath[] => {
    const when = instants.flatMap((_, t) => (isGood(p, t) ? [t] : []));
    const [first, last] = [when[0], when.at(-1)];
    if (first === undefined || last === undefined) return [];
    const focals = when.flatMap((t) => seen[t]?.paths[p]?.best.focalLength ?? []);
    return [
      {
        path: ref.path,
        name,
        goodMinutes: minutes((t) => isGood(p, t)),
        from: instants[first] as number,
        to: (instants[last] as number) + step * 1000,
        spells: spellsOf(when).map(([a, b]) => ({
          from: instants[a] as number,
          to: (instants[b] as number) + step * 1000,
        })),
        focal: { shortest: Math.min(...focals), longest: Math.max(...focals) },
      },
    ];
  });
  good.sort((a, b) => b.goodMinutes - a.goodMinutes);
  const bestPath = seen[best]?.paths[sweep.bestPath(position)];
  // Who photographs 26 wants to know on which side of it: another runway's line, drawn on for ever, may pass nearer by.
  const served = contents.runways.filter(({ id }) =>
    paths.some(({ ref }, p) => ref.runway === id && instants.some((_, t) => isGood(p, t))),
  );
  const runways = runwaysFrom(spot, served.length > 0 ? served : contents.runways);
  const [nearestRunway] = runways.toSorted((a, b) => a.centrelineDistance - b.centrelineDistance);
  const distances = contents.spots.map((s) => groundLine(position, s.position).distance);
  return {
    position,
    ground: there.ground === 'open' ? 'open' : 'unknown',
    veryClose: there.veryClose,
    way: there.name || null,
    goodMinutes: minutes((t) => paths.some((_, p) => isGood(p, t))),
    pathMinutes: good.reduce((sum, path) => sum + path.goodMinutes, 0),
    worth: kernel.worth[best] as number,
    bestInstant: instants[best] as number,
    focalLength: Number.isNaN(focal) ? null : focal,
    lens: Number.isNaN(focal) ? null : lensFor(sweep, focal, good),
    visibleShare: bestPath?.visibleShare ?? null,
    hiddenBy: [...new Set(bestPath?.hidden.map(({ by }) => by) ?? [])],
    paths: good,
    side: nearestRunway?.compassSide ?? null,
    nearestSpot: distances.length > 0 ? Math.min(...distances) : null,
    deck: under.stated ? under.elevation : null,
  };
}

/** First and last of each run of successive numbers. */
function spellsOf(indices: readonly number[]): (readonly [first: number, last: number])[] {
  const spells: [number, number][] = [];
  for (const i of indices) {
    const spell = spells.at(-1);
    if (spell && spell[1] === i - 1) spell[1] = i;
    else spells.push([i, i]);
  }
  return spells;
}

/**
 * The lens that frames a needed focal length in mm: the first that fits and serves all that is good there, else the first that
 * fits, else the first that is tight.
 */
function lensFor(
  { contents: { kit, body } }: Sweep,
  needed: number,
  good: readonly GoodPath[],
): Candidate['lens'] {
  const serves = (lens: Lens, mm: number) => {
    const { verdict } = verdictFor(lens, mm, body, kit.fill);
    return verdict === 'fits' || verdict === 'tight';
  };
  const throughout = (lens: Lens) =>
    good.every(({ focal }) => serves(lens, focal.shortest) && serves(lens, focal.longest));
  const verdicts = kit.lenses.map((lens) => verdictFor(lens, needed, body, kit.fill));
  const fitting = verdicts.filter(({ verdict }) => verdict === 'fits');
  const found =
    fitting.find(({ lens }) => throughout(lens)) ??
    fitting[0] ??
    verdicts.find(({ verdict }) => verdict === 'tight');
  return found ? { key: found.lens.key, extender: found.extender, throughout: throughout(found.lens) } : null;
}
