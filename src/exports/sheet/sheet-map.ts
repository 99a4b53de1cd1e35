import { frameAt, mapped, positionOf } from '../../figures/geometry/earth';
import type { Path } from '../../figures/traffic/paths';
import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { labelPlaces, type Box, type Named } from './label-places';
import { tag, type Tag } from './markup';

/** What the map of a sheet shows besides the field itself. */
export interface SheetMapNeeds {
  readonly contents: Pick<
    Contents,
    'runways' | 'spots' | 'taxiRoutes' | 'aprons' | 'noGoAreas' | 'groundUses' | 'site'
  >;
  /** The paths that are drawn: those of the ends in use. */
  readonly paths: readonly Path[];
  /** Where one looks from the spots of the plan: to the aircraft's place at the best of each window. */
  readonly looks: readonly { readonly spot: StandingSpot; readonly at: Position }[];
  readonly spotName: (spot: StandingSpot) => string;
  /** How a length in m is written under the scale bar. */
  readonly length: (m: number) => string;
  /** In words, for who does not see it. */
  readonly title: string;
  /** What it is drawn for; on a phone's screen all but the ground is twice as large. */
  readonly on?: 'paper' | 'phone';
}

type Point = readonly [x: number, y: number];

/** Width of the drawing in its own units, tenths of a millimetre on A4; its height follows the field, within bounds. */
const sizes = {
  paper: { width: 1860, lowest: 760, highest: 1180, foot: 0 },
  // On so small a drawing the scale has a strip of its own.
  phone: { width: 860, lowest: 420, highest: 860, foot: 80 },
} as const;
type Size = (typeof sizes)[keyof typeof sizes];
/** Share of the field's extent left round it. */
const margin = 0.09;

/**
 * The field on paper: black on white, lines only, north up (true). Legible without colour: what may not be entered is
 * grey with a broken edge, ways are thin, runways black, the spots of the plan full circles and others open ones.
 */
export function sheetMap(needs: SheetMapNeeds): Tag {
  const { contents, paths, looks, spotName, length, title, on = 'paper' } = needs;
  const { width } = sizes[on];
  const frame = frameAt(contents.site.reference);
  const metres = (p: Position): Point => mapped(frame, p);
  const corners = [
    ...contents.runways.flatMap(({ line }) => line.map(metres)),
    ...contents.spots.map(({ position }) => metres(position)),
  ];
  const { scale, height, left, top } = fitted(corners.length > 0 ? corners : [[0, 0]], sizes[on]);
  const at = (p: Position): Point => {
    const [x, y] = metres(p);
    return [(x - left) * scale, (top - y) * scale];
  };
  const sheet: Box = { x: 4, y: 4, width: width - 8, height: height - 8 };
  const line = (positions: readonly Position[], style: Tag['attributes']) =>
    tag('polyline', { points: points(positions.map(at)), fill: 'none', stroke: '#000', ...style });
  const area = (rings: readonly (readonly Position[])[], style: Tag['attributes']) =>
    tag('path', {
      d: rings.map((ring) => `M${points(ring.map(at))}Z`).join(''),
      'fill-rule': 'evenodd',
      ...style,
    });
  const ways = contents.groundUses.flatMap(({ use, rings, line: way }) => {
    if (use === 'road' || use === 'motorway')
      return [line(way, { stroke: '#777', 'stroke-width': use === 'road' ? 5 : 9 })];
    if (use === 'path') return [line(way, { stroke: '#777', 'stroke-width': 4, 'stroke-dasharray': '10 8' })];
    if (use === 'rail') return [line(way, { stroke: '#999', 'stroke-width': 6, 'stroke-dasharray': '3 14' })];
    if (use === 'water' && rings.length > 0)
      return [area(rings, { fill: '#eee', stroke: '#999', 'stroke-width': 2 })];
    if (use === 'building' && rings.length > 0) return [area(rings, { fill: '#ddd' })];
    return use === 'aerodrome' && rings.length > 0
      ? [area(rings, { fill: 'none', stroke: '#999', 'stroke-width': 3, 'stroke-dasharray': '24 8 4 8' })]
      : [];
  });
  const planned = new Set(looks.map(({ spot }) => spot.id));
  const spots = contents.spots.map((spot) => ({
    spot,
    at: at(spot.position),
    planned: planned.has(spot.id),
  }));
  const marks = [
    ...spots.map((spot) => spot.at),
    ...contents.runways.flatMap(({ line: ends }) => ends.map(at)),
  ];
  const scaleBox = scaleBoxIn(width, height, marks);
  const northBox = northBoxIn(width, marks);
  const names = labelPlaces(
    [
      ...spots
        .toSorted((a, b) => Number(b.planned) - Number(a.planned))
        .map(({ spot, at: [x, y], planned: isPlanned }) => ({
          ...{ x, y, text: spotName(spot), size: isPlanned ? 36 : 29, gap: 22, needed: isPlanned },
          weight: isPlanned ? 600 : 400,
        })),
      ...contents.runways.flatMap((runway) => endNames(runway, at)),
    ],
    [
      ...spots.map(({ at: [x, y] }) => ({ x: x - 16, y: y - 16, width: 32, height: 32 })),
      ...contents.runways.flatMap(({ line: [a, b] }) => alongBoxes(at(a), at(b))),
      northBox,
      scaleBox,
    ],
    sheet,
  );
  return tag(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-label': title,
      class: on === 'phone' ? 'sheet-map on-phone' : 'sheet-map',
    },
    tag('rect', {
      x: 1,
      y: 1,
      width: width - 2,
      height: height - 2,
      fill: '#fff',
      stroke: '#000',
      'stroke-width': 4,
    }),
    // A drawing within the drawing cuts off what lies beyond the edge.
    tag(
      'svg',
      { x: 4, y: 4, width: width - 8, height: height - 8, viewBox: `4 4 ${width - 8} ${height - 8}` },
      ...contents.noGoAreas.map(({ rings }) =>
        area(rings, { fill: '#ddd', stroke: '#000', 'stroke-width': 3, 'stroke-dasharray': '12 6' }),
      ),
      ...ways,
      ...contents.aprons.map(({ rings }) =>
        area(rings, { fill: '#f2f2f2', stroke: '#555', 'stroke-width': 3 }),
      ),
      ...contents.taxiRoutes.map((route) => line(route.line, { stroke: '#555', 'stroke-width': 4 })),
      ...contents.runways.map((runway) =>
        line(runway.line, { 'stroke-width': Math.max(14, runway.width * scale), 'stroke-linecap': 'butt' }),
      ),
      ...paths.flatMap((path) => flown(path, at, sheet)),
      ...looks.map(({ spot, at: target }) =>
        line([spot.position, target], {
          'stroke-width': 3,
          'stroke-dasharray': '3 9',
          'stroke-linecap': 'round',
        }),
      ),
      ...spots.map(({ at: [cx, cy], planned: isPlanned }) =>
        tag('circle', {
          ...{ cx: round(cx), cy: round(cy), r: isPlanned ? 15 : 11 },
          ...{ fill: isPlanned ? '#000' : '#fff', stroke: isPlanned ? '#fff' : '#000', 'stroke-width': 4 },
        }),
      ),
      ...names.map(({ text, size, box, weight }) =>
        tag(
          'text',
          {
            ...{ x: round(box.x), y: round(box.y + size * 0.92), 'font-size': size, 'font-weight': weight },
            ...{ fill: '#000', stroke: '#fff', 'stroke-width': 7, 'paint-order': 'stroke' },
            'stroke-linejoin': 'round',
          },
          text,
        ),
      ),
    ),
    north(northBox),
    scaleBar(scale, scaleBox, length),
  );
}

const round = (v: number) => Number(v.toFixed(1));
const points = (all: readonly Point[]) => all.map(([x, y]) => `${round(x)},${round(y)}`).join(' ');

/** The part of the ground that is drawn: what is given, with a margin, in an even scale. */
function fitted(corners: readonly Point[], { width, lowest, highest, foot }: Size) {
  const span = (k: 0 | 1) =>
    [Math.min(...corners.map((c) => c[k])), Math.max(...corners.map((c) => c[k]))] as const;
  const [[west, east], [south, north]] = [span(0), span(1)];
  const room = (a: number, b: number) => Math.max(400, (b - a) * (1 + 2 * margin));
  const [wide, tall] = [room(west, east), room(south, north)];
  const height = Math.round(Math.max(lowest, Math.min(highest, (width * tall) / wide)));
  const scale = Math.min(width / wide, height / tall);
  return {
    scale,
    height: height + foot,
    left: (west + east) / 2 - width / scale / 2,
    top: (south + north) / 2 + height / scale / 2,
  };
}

/** What a runway takes of the sheet, in small boxes. */
function alongBoxes([x0, y0]: Point, [x1, y1]: Point): Box[] {
  const pieces = Math.max(1, Math.round(Math.hypot(x1 - x0, y1 - y0) / 30));
  return Array.from({ length: pieces }, (_, i) => {
    const t = (i + 0.5) / pieces;
    return { x: x0 + (x1 - x0) * t - 14, y: y0 + (y1 - y0) * t - 14, width: 28, height: 28 };
  });
}

/** Designators, a little beyond the ends of their runway. */
function endNames({ line, ends }: Contents['runways'][number], at: (p: Position) => Point) {
  const [a, b] = [at(line[0]), at(line[1])];
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const beyond = (from: Point, to: Point): Point => [
    to[0] + ((to[0] - from[0]) / long) * 20,
    to[1] + ((to[1] - from[1]) / long) * 20,
  ];
  const named = ([x, y]: Point, text: string): Named & { needed: boolean; weight: number } => ({
    ...{ x, y, text, size: 40, gap: 14 },
    ...{ needed: true, weight: 600 },
  });
  return [named(beyond(b, a), ends[0].designator), named(beyond(a, b), ends[1].designator)].filter(
    ({ text }) => text !== '',
  );
}

/** The ground track of a path, broken, with an arrow in the direction of flight where it is on the sheet. */
function flown({ ref, samples }: Path, at: (p: Position) => Point, sheet: Box): Tag[] {
  const track: Point[] = [];
  for (let i = 0; i < samples.count; i += 5) {
    const [x = NaN, y = NaN, z = NaN] = samples.centre.subarray(3 * i, 3 * i + 3);
    track.push(at(positionOf([x, y, z])));
  }
  const inside = ([x, y]: Point) =>
    x > sheet.x + 30 && x < sheet.x + sheet.width - 30 && y > sheet.y + 30 && y < sheet.y + sheet.height - 30;
  const onSheet = track.flatMap((p, i) => (inside(p) ? [i] : []));
  // An arrival's arrow stands where it comes in, a departure's where it leaves.
  const where = ref.kind === 'departure' ? onSheet.at(-2) : onSheet[1];
  const [from, to] = [track[(where ?? 0) - 1], track[where ?? 0]];
  const style = { fill: 'none', stroke: '#000', 'stroke-width': 4, 'stroke-dasharray': '26 12' };
  return [
    tag('polyline', { points: points(track), ...style }),
    ...(where !== undefined && from && to ? [arrow(from, to)] : []),
  ];
}

function arrow([x0, y0]: Point, [x, y]: Point): Tag {
  const long = Math.hypot(x - x0, y - y0) || 1;
  const [dx, dy] = [(x - x0) / long, (y - y0) / long];
  const corner = (along: number, across: number): Point => [
    x + dx * along - dy * across,
    y + dy * along + dx * across,
  ];
  return tag('polygon', { points: points([corner(26, 0), corner(-14, 15), corner(-14, -15)]), fill: '#000' });
}

/** In the upper right corner, or the left one where the field, with the names of its ends, reaches into the right. */
function northBoxIn(width: number, marks: readonly Point[]): Box {
  const box = { y: 18, width: 80, height: 128 };
  const isTaken = marks.some(([x, y]) => x > width - box.width - 136 && y < box.y + box.height + 40);
  return { x: isTaken ? 16 : width - box.width - 16, ...box };
}

/** North is up; the arrow is true north. */
function north(box: Box): Tag {
  const [x, y] = [box.x + box.width / 2, box.y];
  return tag(
    'g',
    { class: 'north' },
    tag('rect', { ...box, fill: '#fff' }),
    tag('polygon', {
      points: points([
        [x, y + 6],
        [x + 20, y + 74],
        [x, y + 58],
        [x - 20, y + 74],
      ]),
      fill: '#000',
    }),
    tag('text', { x, y: y + 116, 'font-size': 40, 'font-weight': 600, 'text-anchor': 'middle' }, 'N'),
  );
}

const steps = [50, 100, 200, 500, 1000, 2000, 5000, 10_000];

/** In the lower left corner, or the right one where the field reaches into the left. */
function scaleBoxIn(width: number, height: number, marks: readonly Point[]): Box {
  const box = { y: height - 82, width: 430, height: 70 };
  const isTaken = marks.some(([x, y]) => x < box.width + 60 && y > box.y - 60);
  return { x: isTaken ? width - box.width - 20 : 20, ...box };
}

function scaleBar(scale: number, box: Box, length: (m: number) => string): Tag {
  const metres = steps.findLast((m) => m * scale <= 380) ?? 50;
  const [x, y, long] = [box.x + 10, box.y + 52, metres * scale];
  return tag(
    'g',
    { class: 'scale' },
    tag('rect', { x: box.x, y: box.y + 2, width: round(long + 24), height: 66, fill: '#fff' }),
    tag('path', {
      d: `M${x} ${y - 14}V${y}H${round(x + long)}V${y - 14}`,
      fill: 'none',
      stroke: '#000',
      'stroke-width': 4,
    }),
    tag('text', { x: x + 10, y: y - 14, 'font-size': 30 }, length(metres)),
  );
}
