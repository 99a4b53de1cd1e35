import { encodePng } from './png.ts';

/**
 * The drawing of `src/public/icon.svg` once more, as polygons in its square of 64: some systems take an installed
 * program's icon as PNG only. A test compares the two pictures.
 */
type Point = readonly [x: number, y: number];
interface Shape {
  readonly colour: number;
  readonly outline: readonly Point[];
}

const arc = ([x, y]: Point, radius: number, fromDeg: number, toDeg: number): Point[] =>
  Array.from({ length: 49 }, (_, i) => {
    const angle = ((fromDeg + ((toDeg - fromDeg) * i) / 48) * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

const square = (corner: number): Point[] => [
  ...arc([64 - corner, corner], corner, -90, 0),
  ...arc([64 - corner, 64 - corner], corner, 0, 90),
  ...arc([corner, 64 - corner], corner, 90, 180),
  ...arc([corner, corner], corner, 180, 270),
];

/** Centre of the circle through two points, on the left of the way from one to the other as the screen shows it. */
function centreOf(a: Point, b: Point, radius: number): Point {
  const [dx, dy] = [(b[0] - a[0]) / 2, (b[1] - a[1]) / 2];
  const half = Math.hypot(dx, dy);
  const off = Math.sqrt(radius * radius - half * half) / half;
  return [a[0] + dx - dy * off, a[1] + dy + dx * off];
}

/** The shorter arc from one point to another. */
function arcBetween(a: Point, b: Point, radius: number, clockwise: boolean): Point[] {
  const centre = clockwise ? centreOf(a, b, radius) : centreOf(b, a, radius);
  const angle = ([x, y]: Point) => (Math.atan2(y - centre[1], x - centre[0]) * 180) / Math.PI;
  const [from, to] = [angle(a), angle(b)];
  const turn = clockwise ? (to - from + 360) % 360 : -((from - to + 360) % 360);
  return arc(centre, radius, from, from + turn);
}

/** A line of some width without caps. */
function stroke(a: Point, b: Point, width: number): Point[] {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [nx, ny] = [(-(b[1] - a[1]) / length) * (width / 2), ((b[0] - a[0]) / length) * (width / 2)];
  return [
    [a[0] + nx, a[1] + ny],
    [b[0] + nx, b[1] + ny],
    [b[0] - nx, b[1] - ny],
    [a[0] - nx, a[1] - ny],
  ];
}

const drawing: readonly Shape[] = [
  { colour: 0x22251f, outline: stroke([8, 46], [56, 34], 7) },
  {
    colour: 0xdfcb5d,
    outline: [...arcBetween([12, 26], [46, 19], 20, true), ...arcBetween([39, 26], [22, 29], 10, false)],
  },
  {
    colour: 0xc4391d,
    outline: [
      [24, 60],
      [30, 49],
      [36, 60],
    ],
  },
];
const paper = 0xf5f0e3;

export interface Icon {
  readonly fileName: string;
  /** Pixels of its side. */
  readonly size: number;
  /** Systems cut a maskable icon into a shape of their own: it fills its square, and what counts is in the middle. */
  readonly maskable: boolean;
}

export const icons: readonly Icon[] = [
  { fileName: 'icon-192.png', size: 192, maskable: false },
  { fileName: 'icon-512.png', size: 512, maskable: false },
  { fileName: 'icon-maskable-512.png', size: 512, maskable: true },
  { fileName: 'apple-touch-icon.png', size: 180, maskable: true },
];

/** Of a maskable icon a circle of 80 % of the width is safe (W3C Web Application Manifest, icon masks). */
const maskableScale = 0.8;

/** Points tried along each side of a pixel. */
const fine = 4;

export function drawIcon({ size, maskable }: Omit<Icon, 'fileName'>): Uint8Array<ArrayBuffer> {
  const rgba = new Uint8Array(size * size * 4);
  const scale = (size / 64) * (maskable ? maskableScale : 1);
  const shift = (size - 64 * scale) / 2;
  const placed = (outline: readonly Point[]) =>
    outline.map(([x, y]): Point => [x * scale + shift, y * scale + shift]);
  const ground = maskable
    ? { colour: paper, outline: square(0).map(([x, y]): Point => [(x * size) / 64, (y * size) / 64]) }
    : { colour: paper, outline: placed(square(10)) };
  paint(rgba, size, ground);
  for (const { colour, outline } of drawing) paint(rgba, size, { colour, outline: placed(outline) });
  return encodePng(size, rgba);
}

/** Lays a shape over what is there: its share of each pixel is counted on a grid of points. */
function paint(rgba: Uint8Array, size: number, { colour, outline }: Shape): void {
  const covered = new Uint8Array(size);
  for (let y = 0; y < size; y++) {
    covered.fill(0);
    for (let row = 0; row < fine; row++) {
      const crossings = crossingsAt(outline, y + (row + 0.5) / fine);
      for (let i = 0; i + 1 < crossings.length; i += 2)
        for (let x = 0; x < size * fine; x++) {
          const at = (x + 0.5) / fine;
          if (at >= (crossings[i] ?? 0) && at < (crossings[i + 1] ?? 0)) {
            const pixel = Math.floor(x / fine);
            covered[pixel] = (covered[pixel] ?? 0) + 1;
          }
        }
    }
    for (let x = 0; x < size; x++) blend(rgba, (y * size + x) * 4, colour, (covered[x] ?? 0) / fine ** 2);
  }
}

/** Where the outline crosses a row, from left to right. */
function crossingsAt(outline: readonly Point[], y: number): number[] {
  const out: number[] = [];
  outline.forEach((b, i) => {
    const a = outline.at(i - 1) ?? b;
    if (a[1] <= y !== b[1] <= y) out.push(a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]));
  });
  return out.sort((p, q) => p - q);
}

function blend(rgba: Uint8Array, at: number, colour: number, share: number): void {
  if (share === 0) return;
  const below = (rgba[at + 3] ?? 0) / 255;
  const alpha = share + below * (1 - share);
  [colour >> 16, (colour >> 8) & 255, colour & 255].forEach((part, i) => {
    rgba[at + i] = Math.round((part * share + (rgba[at + i] ?? 0) * below * (1 - share)) / alpha);
  });
  rgba[at + 3] = Math.round(alpha * 255);
}
