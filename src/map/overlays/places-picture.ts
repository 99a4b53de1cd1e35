import { closedGround, outOfReachColour, placeSteps } from '../../../styles/ramps';
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

const packedSteps = (layer: DrawnCells['layer']) =>
  placeSteps[layer].map(({ to, colour }) => ({ to, colour: packed(colour) }));
const beyond = packed(outOfReachColour);
const hatchLine = packed(closedGround.line);
const hatchBetween = (packed(closedGround.between) & 0xffffff) | (0x50 << 24);
const nothing = 0;

/**
 * The cells as a picture. A cell that stands for others fills their square until they are known themselves; closed
 * ground is hatched; where nothing is good, nothing is drawn.
 */
export function placesPicture({
  layer,
  count,
  values,
  closed,
  stride,
  usableTo,
  corners,
}: DrawnCells): MapPicture {
  const scale = Math.max(1, Math.floor(wanted / count));
  const size = scale * count;
  const pixels = new Uint32Array(size * size);
  const steps = packedSteps(layer);
  const colourOf = (value: number): number => {
    if (Number.isNaN(value)) return nothing;
    if (layer === 'focal' && value > usableTo) return beyond;
    return (steps.find(({ to }) => value <= to) ?? steps.at(-1))?.colour ?? nothing;
  };
  // A line of hatching and as much again as it is moved from row to row.
  const hatched = Uint32Array.from({ length: size + hatchEvery }, (_, x) =>
    x % hatchEvery < 2 ? hatchLine : hatchBetween,
  );
  const fill = (row: number, column: number, cells: number, i: number) => {
    const isClosed = closed[i] === 1;
    const colour = colourOf(values[i] as number);
    const [top, left] = [Math.max(0, (count - row - cells) * scale), Math.max(0, column * scale)];
    const [bottom, right] = [(count - row) * scale, Math.min(size, (column + cells) * scale)];
    for (let y = top; y < Math.min(size, bottom); y++) {
      const at = y * size;
      if (!isClosed) pixels.fill(colour, at + left, at + right);
      else {
        const from = (left + y) % hatchEvery;
        pixels.set(hatched.subarray(from, from + right - left), at + left);
      }
    }
  };
  // Coarse ones first: finer ones lie over them.
  for (let cells = 16; cells >= 1; cells /= 2)
    for (let i = 0; i < stride.length; i++)
      if (stride[i] === cells)
        fill(Math.floor(i / count) - (cells >> 1), (i % count) - (cells >> 1), cells, i);
  return { pixels: new Uint8ClampedArray(pixels.buffer), size, corners };
}
