import createGraph, { type Graph, type NodeId } from 'ngraph.graph';
import { aStar } from 'ngraph.path';
import type { Position } from '../../survey/document';
import type { Runway } from '../../survey/schema/runway';
import type { GroundUse } from '../../survey/schema/places';
import { crosses, type Point } from '../geometry/crosses';
import { frameAt, mapped, type Frame } from '../geometry/earth';
import { waysJoinWithin } from '../practice';

/** How one goes: what may be used, and what not. */
export type Going = 'foot' | 'bicycle' | 'car';

interface Piece {
  readonly a: Point;
  readonly b: Point;
}

/** A way from one place to another over the network, m: along ways, and beside them at both ends. */
export interface FoundWay {
  readonly along: number;
  readonly beside: number;
}

/** Whether one may go there: mapped roads and paths that are not said to be closed; a car keeps to roads. */
const isWay = ({ use, access }: GroundUse, going: Going): boolean => {
  if (access === 'forbidden') return false;
  if (going === 'car') return use === 'road' || use === 'motorway';
  return use === 'road' || use === 'path';
};

const apart = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
/** Vertices that maps share are one, to a quarter of a metre. */
const nodeOf = ([x, y]: Point) => `${Math.round(x * 4)} ${Math.round(y * 4)}`;

/** m to a side of the squares by which pieces are found. */
const bin = 100;

/** The nearest point of a piece, and how far along it is, 0 to 1. */
function nearestOn({ a, b }: Piece, [x, y]: Point): { readonly point: Point; readonly share: number } {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const squared = dx * dx + dy * dy;
  const share = squared === 0 ? 0 : Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / squared));
  return { point: [a[0] + dx * share, a[1] + dy * share], share };
}

/**
 * The roads and paths of a survey as a graph, built once: ways that share a vertex meet, and so do those whose end comes
 * within a few metres of another. Ways that cross without either do not: one of them may be a bridge.
 */
export class WayNetwork {
  readonly #frame: Frame;
  readonly #graph: Graph<Point, number> = createGraph();
  readonly #pieces: Piece[] = [];
  readonly #bins = new Map<string, number[]>();
  readonly #runways: readonly Piece[];

  constructor(
    uses: readonly GroundUse[],
    runways: readonly Pick<Runway, 'line'>[],
    origin: Position,
    going: Going,
  ) {
    this.#frame = frameAt(origin);
    this.#runways = runways.map(({ line: [p, q] }) => ({ a: this.#at(p), b: this.#at(q) }));
    const ways = uses
      .filter((use) => use.line.length > 1 && isWay(use, going))
      .map(({ line }) => line.map((position) => this.#at(position)));
    for (const way of ways)
      for (let i = 1; i < way.length; i++) this.#add({ a: way[i - 1] as Point, b: way[i] as Point });
    for (const way of ways) for (const end of [way[0], way.at(-1)]) if (end) this.#join(end);
  }

  get isEmpty(): boolean {
    return this.#pieces.length === 0;
  }

  /**
   * The shortest way between two places that lie within `reach` m of a way, never across a runway; null where there is
   * none.
   */
  find(from: Position, to: Position, reach: number): FoundWay | null {
    const [start, goal] = [this.#reached(this.#at(from), reach), this.#reached(this.#at(to), reach)];
    if (!start || !goal) return null;
    this.#hang('from', start);
    this.#hang('to', goal);
    // On one piece one need not go to its end and back.
    if (start.piece === goal.piece) this.#graph.addLink('from', 'to', apart(start.point, goal.point));
    const found = aStar(this.#graph, { distance: (_, __, { data }) => data }).find('from', 'to');
    const along = found.reduce((sum, { id }, i) => {
      const before = found[i - 1];
      return before ? sum + this.#length(before.id, id) : 0;
    }, 0);
    this.#graph.removeNode('from');
    this.#graph.removeNode('to');
    return found.length === 0 ? null : { along, beside: start.off + goal.off };
  }

  /** m of the link between two nodes; links are kept one way round. */
  #length(a: NodeId, b: NodeId): number {
    return (this.#graph.getLink(a, b) ?? this.#graph.getLink(b, a))?.data ?? 0;
  }

  #link(a: string, b: string, length: number): void {
    const known = this.#graph.getLink(a, b) ?? this.#graph.getLink(b, a);
    if (!known) this.#graph.addLink(a, b, length);
    else known.data = Math.min(known.data, length);
  }

  #at(position: Position): Point {
    return mapped(this.#frame, position);
  }

  #add(piece: Piece): void {
    const { a, b } = piece;
    const [one, other] = [nodeOf(a), nodeOf(b)];
    if (one === other) return;
    this.#graph.addNode(one, a);
    this.#graph.addNode(other, b);
    this.#link(one, other, apart(a, b));
    const index = this.#pieces.push(piece) - 1;
    for (const key of this.#binsOf(a, b, 0)) this.#bins.set(key, [...(this.#bins.get(key) ?? []), index]);
  }

  /** Joins a way's end to the ways that it comes close to. */
  #join(end: Point): void {
    const node = nodeOf(end);
    for (const piece of this.#near(end, waysJoinWithin)) {
      if (nodeOf(piece.a) === node || nodeOf(piece.b) === node) continue;
      const { point } = nearestOn(piece, end);
      const off = apart(point, end);
      if (off > waysJoinWithin) continue;
      for (const corner of [piece.a, piece.b]) this.#link(node, nodeOf(corner), off + apart(point, corner));
    }
  }

  #reached(place: Point, reach: number) {
    let best: { readonly piece: Piece; readonly point: Point; readonly off: number } | null = null;
    for (const piece of this.#near(place, reach)) {
      const { point } = nearestOn(piece, place);
      const off = apart(point, place);
      if (off > reach || (best && off >= best.off)) continue;
      if (this.#runways.some(({ a, b }) => crosses(place, point, a, b))) continue;
      best = { piece, point, off };
    }
    return best;
  }

  #hang(node: string, { piece, point }: { readonly piece: Piece; readonly point: Point }): void {
    this.#graph.addNode(node, point);
    for (const corner of [piece.a, piece.b]) this.#graph.addLink(node, nodeOf(corner), apart(point, corner));
  }

  #near(place: Point, within: number): readonly Piece[] {
    const found = new Set<number>();
    for (const key of this.#binsOf(place, place, within))
      for (const index of this.#bins.get(key) ?? []) found.add(index);
    return [...found].map((index) => this.#pieces[index] as Piece);
  }

  *#binsOf(a: Point, b: Point, room: number): Generator<string> {
    const span = (k: 0 | 1) =>
      [
        Math.floor((Math.min(a[k], b[k]) - room) / bin),
        Math.floor((Math.max(a[k], b[k]) + room) / bin),
      ] as const;
    const [[west, east], [south, north]] = [span(0), span(1)];
    for (let x = west; x <= east; x++) for (let y = south; y <= north; y++) yield `${x} ${y}`;
  }
}
