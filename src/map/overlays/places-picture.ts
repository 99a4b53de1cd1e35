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
 * ground is hatched; where nothing is good, nothing is drawn. `isDark`: the map under it is.
 */
export function placesPicture(
  { layer, count, values, closed, stride, usableTo, corners }: DrawnCells,
  isDark = false,
): MapPicture {
  const scale = Math.max(1, Math.floor(wanted / count));
  const size = scale * count;
  const colours = colouredCells({ layer, count, values, closed, stride, usableTo }, isDark);
  const pixels = new Uint32Array(size * size);
  // A line of hatching and as much again as it is moved from row to row.
  const hatched = Uint32Array.from({ length: size + hatchEvery }, (_, x) =>
    x % hatchEvery < 2 ? hatchLine : hatchBetween,
  );
  for (let row = 0; row < count; row++) {
    const top = (count - 1 - row) * scale;
    const line = top * size;
    for (let x = 0; x < size; x++) pixels[line + x] = colours[row * count + ((x / scale) | 0)] as number;
    for (let y = 1; y < scale; y++) pixels.copyWithin(line + y * size, line, line + size);
    // Hatching slants: each line of it differs.
    for (let from = 0; from < count; from++) {
      if (colours[row * count + from] !== hatchMark) continue;
      let to = from;
      while (to < count && colours[row * count + to] === hatchMark) to++;
      const [left, width] = [from * scale, (to - from) * scale];
      for (let y = top; y < top + scale; y++) {
        const at = (left + y) % hatchEvery;
        pixels.set(hatched.subarray(at, at + width), y * size + left);
      }
      from = to;
    }
  }
  return { pixels: new Uint8ClampedArray(pixels.buffer), size, corners };
}

/** Stands for closed ground among the colours: itself it would be invisible. */
const hatchMark = 1;

/** A colour for each cell: coarse ones over their whole square, finer ones over them. */
function colouredCells(
  { layer, count, values, closed, stride, usableTo }: Omit<DrawnCells, 'corners'>,
  isDark: boolean,
): Uint32Array {
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
    for (let i = 0; i < out.length; i++) out[i] = colourOf(i);
    return out;
  }
  for (let cells = 16; cells >= 1; cells /= 2)
    for (let i = 0; i < stride.length; i++) {
      if (stride[i] !== cells) continue;
      const [row, column] = [Math.floor(i / count) - (cells >> 1), (i % count) - (cells >> 1)];
      const [from, to] = [Math.max(0, column), Math.min(count, column + cells)];
      const colour = colourOf(i);
      for (let r = Math.max(0, row); r < Math.min(count, row + cells); r++)
        out.fill(colour, r * count + from, r * count + to);
    }
  return out;
}
