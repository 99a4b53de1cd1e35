import type { Contents } from '../../survey/contents';
import type { GroundUse, Obstacle, Use } from '../../survey/schema/places';
import { mayStand } from '../../figures/access/may-stand';
import { alongRunway } from '../../figures/geometry/along-runway';
import { mapped, type Frame } from '../../figures/geometry/earth';
import { blastHalfWidth, blastLength } from '../../figures/practice';
import { sightOf } from '../../survey/schema/sights';
import type { Area } from '../area';
import {
  arcadeHalfWidth,
  atSpot,
  besideWay,
  footpathClear,
  headroom,
  lineHalfWidth,
  railClear,
  rotorDiametersClear,
  runwayClear,
  taxiClear,
  usualRotor,
  winchClear,
} from '../practice';
import { Bins } from './bins';
import { isNear, meetsSquare, shapeIn, shapeOf, toChain, type Shape } from './shape';

/** Why nobody stands somewhere, in the order in which it is asked. */
const closedReasons = [
  'no-go',
  'runway',
  'taxi-route',
  'apron',
  'building',
  'water',
  'rail',
  'motorway',
  'jet-blast',
  'helipad',
  'winch-run',
  'access',
  'refused',
] as const;
export type ClosedBy = (typeof closedReasons)[number];

export type GroundClass = 'open' | 'unknown' | 'closed';

export interface GroundThere {
  readonly ground: GroundClass;
  readonly closedBy: ClosedBy | null;
  /** Name and id of what it is, or lies beside: the way of open ground, what closes closed ground. */
  readonly name: string;
  readonly id: string | null;
  /** Open, though nearer to a runway, taxi route or apron than one usually stands. */
  readonly veryClose: boolean;
}

interface Closing {
  readonly shape: Shape;
  readonly margin: number;
  readonly by: ClosedBy;
  readonly name: string;
  readonly id: string;
  /** Whether one can walk beneath it. */
  readonly overhead: boolean;
}

interface Opening {
  readonly shape: Shape;
  readonly margin: number;
  readonly name: string;
  readonly id: string;
  readonly use: Use | 'deck';
  /** Whether the map says in so many words that people may walk there. */
  readonly said: boolean;
}

/** A deck or a mound that one may stand on. */
interface Deck {
  readonly obstacle: Obstacle;
  readonly shape: Shape;
  readonly margin: number;
}

/** Buffers that a public footpath is let through. */
const letThrough: readonly ClosedBy[] = ['runway', 'taxi-route', 'apron'];
/** What a mapped footway leads over or along. */
const crossed: readonly ClosedBy[] = ['rail', 'motorway'];

const nothing: GroundThere = { ground: 'unknown', closedBy: null, name: '', id: null, veryClose: false };

/** Where one may stand round an airfield, from what the survey brought in: design 2, section 10. Places in m of the site frame. */
export class GroundPlan {
  readonly #closing: Bins<Closing>;
  readonly #opening: Bins<Opening>;
  readonly #decks: Bins<Deck>;
  readonly #outlines: readonly Shape[];
  readonly #centrelines: readonly Shape[];
  readonly #half: number;
  /** Spots where one has to ask first. */
  readonly #toAsk: readonly Shape[];

  /** `instant`: permissions hold on some days only. */
  constructor(contents: Contents, area: Area, instant: number) {
    const { frame, cell } = area;
    this.#half = cell / 2;
    const box = {
      west: area.west - cell,
      south: area.south - cell,
      east: area.west + area.side + cell,
      north: area.south + area.side + cell,
    };
    this.#centrelines = contents.runways.flatMap((r) => shapeOf(frame, { line: r.line }) ?? []);
    this.#outlines = contents.groundUses
      .filter(({ use, rings }) => use === 'aerodrome' && rings.length > 0)
      .flatMap((use) => shapeOf(frame, use) ?? []);
    const spots = contents.spots.map((spot) => ({ spot, status: mayStand(spot, contents, instant).status }));
    this.#toAsk = spots.flatMap(({ spot, status }) =>
      status === 'ask' ? (shapeOf(frame, { line: [spot.position] }) ?? []) : [],
    );
    const forbidden = spots.flatMap(({ spot, status }) => (status === 'forbidden' ? [spot] : []));
    this.#closing = new Bins(closings(contents, frame, forbidden), box);
    const reach = besideWay + this.#half * Math.SQRT2;
    this.#opening = new Bins(openings(contents, frame, reach), box);
    this.#decks = new Bins(
      contents.obstacles
        .filter(({ standOn, rings }) => standOn && rings.length > 0)
        .flatMap((obstacle) => {
          const shape = shapeOf(frame, obstacle);
          return shape ? [{ obstacle, shape, margin: 0 }] : [];
        }),
      box,
    );
  }

  /** The deck or mound that a place lies on. */
  deckAt(x: number, y: number): Obstacle | null {
    return this.#decks.at(x, y).find(({ shape }) => isNear(shape, x, y, 0))?.obstacle ?? null;
  }

  /** A cell about its middle: closed as its middle is, open if a way is near any part of it. */
  ofCell(x: number, y: number): GroundThere {
    return this.#at(x, y, (shape, within) => meetsSquare(shape, x, y, this.#half, within));
  }

  /** One place. */
  ofPlace(x: number, y: number): GroundThere {
    return this.#at(x, y, (shape, within) => isNear(shape, x, y, within));
  }

  #at(x: number, y: number, meets: (shape: Shape, within: number) => boolean): GroundThere {
    const footpath = () => this.#ways(x, y, isNearPlace(x, y)).find(({ use }) => use === 'path') ?? null;
    const closing = this.#closing.at(x, y).filter(({ shape, margin }) => isNear(shape, x, y, margin));
    closing.sort((a, b) => closedReasons.indexOf(a.by) - closedReasons.indexOf(b.by));
    let veryClose = false;
    for (const { by, name, id, overhead } of closing) {
      if (by === 'building') {
        // The deck that somebody has marked lies on the building that the map has.
        if (this.deckAt(x, y) !== null) continue;
        const under = overhead ? this.#wayUnder(x, y) : undefined;
        if (under) return { ...nothing, name: under.name, id: under.id };
      }
      if (crossed.includes(by) && footpath() !== null) continue;
      if (letThrough.includes(by) && this.#isPublicPath(x, y)) {
        veryClose = true;
        continue;
      }
      return { ground: 'closed', closedBy: by, name, id, veryClose: false };
    }
    // Inside the fence what is public for others need not be so for those who stand and wait.
    const isInside = this.#outlines.some((outline) => isNear(outline, x, y, 0));
    if (isInside || this.#toAsk.some((spot) => isNear(spot, x, y, atSpot))) return nothing;
    const [way] = veryClose ? [this.#publicPath(x, y)] : this.#ways(x, y, meets);
    return way ? { ground: 'open', closedBy: null, name: way.name, id: way.id, veryClose } : nothing;
  }

  /** Open ways that are near, named ones first, then the nearest. */
  #ways(x: number, y: number, meets: (shape: Shape, within: number) => boolean): Opening[] {
    const found = this.#opening
      .at(x, y)
      .filter(({ shape, use }) => meets(shape, use === 'deck' ? 0 : besideWay));
    const distance = ({ shape }: Opening) =>
      isNear(shape, x, y, 0) ? 0 : Math.min(...shape.chains.map((chain) => toChain(chain, x, y)));
    return found.sort((a, b) => Number(a.name === '') - Number(b.name === '') || distance(a) - distance(b));
  }

  /** A footway under a building that is said to be public, an arcade: it is the house's all the same, so one asks first. */
  #wayUnder(x: number, y: number): Opening | undefined {
    return this.#opening
      .at(x, y)
      .find(({ shape, use, said }) => said && use === 'path' && isNear(shape, x, y, arcadeHalfWidth));
  }

  #publicPath(x: number, y: number): Opening | undefined {
    return this.#ways(x, y, isNearPlace(x, y)).find(({ use, said }) => use === 'path' && said);
  }

  /** A mapped public footpath, outside the aerodrome's outline and not right beside a runway. */
  #isPublicPath(x: number, y: number): boolean {
    return (
      this.#publicPath(x, y) !== undefined &&
      !this.#outlines.some((outline) => isNear(outline, x, y, 0)) &&
      !this.#centrelines.some((line) => isNear(line, x, y, footpathClear - 1e-9))
    );
  }
}

const isNearPlace = (x: number, y: number) => (shape: Shape, within: number) => isNear(shape, x, y, within);

type Sized = { readonly rings?: GroundUse['rings']; readonly line?: GroundUse['line']; readonly id: string };

function closings(contents: Contents, frame: Frame, forbidden: Contents['spots']): Closing[] {
  const out: Closing[] = [];
  const add = (by: ClosedBy, thing: Sized, margin: number, name: string, overhead = false) => {
    const shape = shapeOf(frame, thing);
    if (shape) out.push({ shape, margin, by, name, id: thing.id, overhead });
  };
  for (const area of contents.noGoAreas) add('no-go', area, 0, area.name || area.reason);
  for (const runway of contents.runways) {
    const length = alongRunway(runway, runway.line[0])?.length ?? 0;
    const clear = runwayClear.find(({ under }) => length < under)?.clear ?? 0;
    add('runway', runway, clear, runway.name);
  }
  for (const route of contents.taxiRoutes) add('taxi-route', route, taxiClear, route.name);
  for (const apron of contents.aprons) add('apron', apron, taxiClear, apron.name);
  for (const obstacle of contents.obstacles)
    if (
      obstacle.rings.length > 0 &&
      !obstacle.standOn &&
      sightOf(obstacle.sight).level &&
      obstacle.sight === 'solid'
    )
      add('building', obstacle, 0, obstacle.name, obstacle.underside >= headroom);
  for (const use of contents.groundUses) {
    const half = use.rings.length > 0 ? 0 : lineHalfWidth;
    if (use.use === 'building') {
      if (use.rings.length > 0) add('building', use, 0, use.name);
    } else if (use.use === 'water') add('water', use, half, use.name);
    else if (use.use === 'rail' || use.use === 'motorway') add(use.use, use, railClear, use.name);
    else if (use.use !== 'aerodrome' && use.access === 'forbidden') add('access', use, half, use.name);
  }
  const rotor = contents.subject.propulsion === 'rotor' ? contents.subject.span : usualRotor;
  for (const pad of contents.helipads)
    add('helipad', { id: pad.id, line: [pad.position] }, rotorDiametersClear * rotor, pad.name);
  for (const run of contents.winchRuns) add('winch-run', run, winchClear, run.name);
  if (contents.subject.propulsion === 'jet') out.push(...blasts(contents, frame));
  for (const { id, position, name } of forbidden) add('refused', { id, line: [position] }, atSpot, name);
  return out;
}

/** Behind every end from which jets take off. */
function blasts({ runways }: Contents, frame: Frame): Closing[] {
  return runways.flatMap((runway) =>
    ([0, 1] as const).flatMap((end): Closing[] => {
      if (runway.ends[end].closed) return [];
      const [ax, ay] = mapped(frame, runway.line[end]);
      const [bx, by] = mapped(frame, runway.line[end === 0 ? 1 : 0]);
      const length = Math.hypot(ax - bx, ay - by);
      if (length < 1) return [];
      const [e, n] = [(ax - bx) / length, (ay - by) / length];
      const corner = (back: number, side: number) =>
        [ax + back * e - side * n, ay + back * n + side * e] as const;
      const ring = [
        corner(0, -blastHalfWidth),
        corner(blastLength, -blastHalfWidth),
        corner(blastLength, blastHalfWidth),
        corner(0, blastHalfWidth),
        corner(0, -blastHalfWidth),
      ];
      const name = runway.ends[end].designator;
      return [
        { shape: shapeIn([ring], true), margin: 0, by: 'jet-blast', name, id: runway.id, overhead: false },
      ];
    }),
  );
}

const walked: readonly string[] = ['road', 'path', 'parking', 'green'] satisfies readonly Use[];

function openings(contents: Contents, frame: Frame, margin: number): Opening[] {
  const out: Opening[] = [];
  for (const use of contents.groundUses) {
    if (!walked.includes(use.use) || use.access === 'forbidden' || use.access === 'ask') continue;
    const shape = shapeOf(frame, use);
    const said = use.access !== 'unknown';
    if (shape) out.push({ shape, margin, name: use.name, id: use.id, use: use.use, said });
  }
  for (const obstacle of contents.obstacles) {
    if (!obstacle.standOn || obstacle.rings.length === 0) continue;
    const shape = shapeOf(frame, obstacle);
    if (shape) out.push({ shape, margin, name: obstacle.name, id: obstacle.id, use: 'deck', said: true });
  }
  return out;
}
