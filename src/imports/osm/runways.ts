import { angleBetween, RAD } from '../../figures/geometry/angles';
import { groundLine } from '../../figures/geometry/earth';
import type { Position } from '../../survey/document';
import type { Candidate } from '../bring-in/types';
import { namedEnds } from '../bring-in/runway-ends';
import { samePlace, type Mapped, type Tags } from './elements';
import { heightIn } from './heights';

/** Degrees between two pieces of one runway. */
const bend = 5;
/** m that a runway's corners may lie beside the line between its ends. */
const beside = 30;

interface Piece {
  readonly id: string;
  readonly tags: Tags;
  readonly line: readonly Position[];
}

/**
 * Runways from their centrelines. A map often has one runway in pieces (a displaced threshold is a piece of its own):
 * pieces that meet end to end in one direction are one runway.
 */
export function runwaysFrom(pieces: readonly Mapped[], elevation: number, instant: number): Candidate[] {
  const open = pieces.flatMap(({ id, tags, line }): Piece[] => (line ? [{ id, tags, line }] : []));
  const runways: Piece[][] = [];
  for (const piece of open) {
    const touching = runways.filter((runway) => runway.some((other) => goesOn(piece, other)));
    for (const runway of touching) runways.splice(runways.indexOf(runway), 1);
    runways.push([...touching.flat(), piece]);
  }
  return runways.map((runway) => runwayOf(runway, elevation, instant));
}

function goesOn(a: Piece, b: Piece): boolean {
  const [ra, rb] = [a.tags['ref'], b.tags['ref']];
  if (ra !== undefined && rb !== undefined && ra !== rb) return false;
  const meet = endsOf(a).some((p) => endsOf(b).some((q) => samePlace(p, q)));
  const turn = angleBetween(directionOf(a), directionOf(b));
  return meet && Math.min(turn, 180 - turn) <= bend;
}

const endsOf = ({ line }: Piece): readonly Position[] => [line[0] as Position, line.at(-1) as Position];
const directionOf = (piece: Piece): number => {
  const [a, b] = endsOf(piece) as [Position, Position];
  return groundLine(a, b).azimuth ?? 0;
};

function runwayOf(pieces: readonly Piece[], elevation: number, instant: number): Candidate {
  const line = farthest(pieces.flatMap(endsOf));
  const longest = [...pieces].sort((a, b) => lengthOf(b) - lengthOf(a));
  const tag = (key: string) => longest.find(({ tags }) => tags[key] !== undefined)?.tags[key];
  const { designators, doubts } = namedEnds(line, tag('ref') ?? tag('name') ?? '', elevation, instant);
  const ends = designators.map((designator, i) => ({
    designator,
    displaced: displacedAt(line[i] as Position, pieces),
  }));
  const width = heightIn(tag('width'));
  const surface = tag('surface');
  const off = Math.max(...pieces.flatMap((p) => p.line).map((p) => besideLine(line, p)));
  const all = [
    ...doubts,
    ...(off > beside
      ? [`On the map it is no straight line: a corner lies ${Math.round(off)} m beside it. Check both ends.`]
      : []),
  ];
  return {
    source: `osm ${pieces
      .map(({ id }) => id)
      .sort()
      .join('+')}`,
    kind: 'runway',
    group: 'runways',
    shape: { type: 'LineString', coordinates: line },
    properties: {
      name: designators.join('/'),
      ...(width === null || width > 500 || width < 1 ? {} : { width }),
      ...(surface === undefined ? {} : { surface: surface.slice(0, 40) }),
      ends,
      ...(all.length === 0 ? {} : { doubts: all }),
    },
  };
}

/** m of the pieces before the landing threshold that begin at this end. */
function displacedAt(end: Position, pieces: readonly Piece[]): number {
  const found = pieces.find(
    (piece) =>
      pieces.length > 1 &&
      piece.tags['runway'] === 'displaced_threshold' &&
      endsOf(piece).some((p) => samePlace(p, end)),
  );
  return found ? Math.round(lengthOf(found)) : 0;
}

const lengthOf = (piece: Piece): number => {
  const [a, b] = endsOf(piece) as [Position, Position];
  return groundLine(a, b).distance;
};

function besideLine([a, b]: readonly [Position, Position], p: Position): number {
  const [to, along] = [groundLine(a, p), groundLine(a, b)];
  return Math.abs(to.distance * Math.sin(((to.azimuth ?? 0) - (along.azimuth ?? 0)) * RAD));
}

function farthest(places: readonly Position[]): readonly [Position, Position] {
  let best: readonly [Position, Position] = [places[0] as Position, places.at(-1) as Position];
  let most = -1;
  for (const p of places)
    for (const q of places) {
      const { distance } = groundLine(p, q);
      if (distance > most) [most, best] = [distance, [p, q]];
    }
  return best;
}
