import { closedGround, outOfReachColour, placeStepsOn } from '../../../styles/ramps';
import type { DrawnCells } from '../../state/drawn-places.svelte';
import type { MapPicture } from '../map-surface';

/** Pixels to a side that a picture is to have at least: hatching needs several for each cell. */
const wanted = 800;
/** Pixels from one slanting line of the hatching to the next. */
const hatchEvery = 8;

/** A colour as canvases keep it in memory, least byte first. */
function packed(colour: string): number {
  const rgb = parseInt(colour.slice(1), 16);
  return ((0xff << 24) | ((rgb & 0xff) << 16) | (rgb & 0xff00) | (rgb >> 16)) >>> 0;
}

const packedSteps = (layer: DrawnCells['layer'], isDark: boolean) =>
  placeStepsOn(layer, isDark).map(({ to, colour }) => ({ to, colour: packed(colour) }));
const beyond = packed(outOfReachColour);
const hatchLine = packed(closedGround.line);
const hatchBetween = (packed(closedGround.between) & 0xffffff) | (0x50 << 24);
const nothing = 0;

/**
 * The cells as a picture. A cell that stands for others fills their square until they are known themselves; closed
 * ground is hatched; where nothing is good, nothing is drawn. `isDark`: the map under it is. In steps of well under a
 * millisecond, so that whoever draws can let the page go on in between.
 */
export function* picturing(
  { layer, count, values, closed, stride, usableTo, corners }: DrawnCells,
  isDark: boolean,
): Generator<void, MapPicture> {
  const scale = Math.max(1, Math.floor(wanted / count));
  const size = scale * count;
  const colours = yield* colouredCells({ layer, count, values, closed, stride, usableTo }, isDark);
  // Behind the picture lie lines of hatching, each moved by a pixel: copied within, they cost no view of them each time.
  const end = size * size;
  const pixels = new Uint32Array(end + hatchEvery * size);
  for (let x = 0; x < hatchEvery * size; x++)
    pixels[end + x] = ((x % size) + Math.floor(x / size)) % hatchEvery < 2 ? hatchLine : hatchBetween;
  for (let row = 0; row < count; row++) {
    yield;
    const top = (count - 1 - row) * scale;
    const cells = colours.subarray(row * count, (row + 1) * count);
    for (let from = 0, to = 0; from < count; from = to) {
      const colour = cells[from] as number;
      while (to < count && cells[to] === colour) to++;
      if (colour === nothing) continue;
      const [left, width] = [from * scale, (to - from) * scale];
      for (let y = top; y < top + scale; y++) {
        const at = y * size + left;
        // Hatching slants: each line of it differs.
        const line = end + (y % hatchEvery) * size + left;
        if (colour === hatchMark) pixels.copyWithin(at, line, line + width);
        else pixels.fill(colour, at, at + width);
      }
    }
  }
  return { pixels: new Uint8ClampedArray(pixels.buffer, 0, 4 * end), size, corners };
}

/** Stands for closed ground among the colours: itself it would be invisible. */
const hatchMark = 1;

/** Cells that are coloured in one step. */
const cellsAtOnce = 2000;

/** A colour for each cell: coarse ones over their whole square, finer ones over them. */
function* colouredCells(
  { layer, count, values, closed, stride, usableTo }: Omit<DrawnCells, 'corners'>,
  isDark: boolean,
): Generator<void, Uint32Array> {
  const steps = packedSteps(layer, isDark);
  const last = steps.at(-1)?.colour ?? nothing;
  const colourOf = (i: number): number => {
    if (closed[i] === 1) return hatchMark;
    const value = values[i] as number;
    if (Number.isNaN(value)) return nothing;
    if (layer === 'focal' && value > usableTo) return beyond;
    for (const { to, colour } of steps) if (value <= to) return colour;
    return last;
  };
  const out = new Uint32Array(count * count);
  if (!stride.includes(0)) {
    for (let i = 0; i < out.length; i++) {
      if (i % cellsAtOnce === 0) yield;
      out[i] = colourOf(i);
    }
    return out;
  }
  let done = 0;
  for (let cells = 16; cells >= 1; cells /= 2)
    // Most of a coarse picture is not known: what is, is looked for by the engine.
    for (let i = stride.indexOf(cells); i >= 0; i = stride.indexOf(cells, i + 1)) {
      if (++done % cellsAtOnce === 0) yield;
      const colour = colourOf(i);
      if (cells === 1) {
        out[i] = colour;
        continue;
      }
      const [row, column] = [Math.floor(i / count) - (cells >> 1), (i % count) - (cells >> 1)];
      const [from, to] = [Math.max(0, column), Math.min(count, column + cells)];
      for (let r = Math.max(0, row); r < Math.min(count, row + cells); r++)
        out.fill(colour, r * count + from, r * count + to);
    }
  return out;
}
