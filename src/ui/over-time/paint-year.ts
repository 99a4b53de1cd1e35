import type { YearLight } from '../../figures/when/year-light';
import { colourOf, isFromAbove } from './paint';

const paper = [251, 248, 239] as const;

const rgb = (hex: string): readonly [number, number, number] => [
  parseInt(hex.slice(1, 3), 16),
  parseInt(hex.slice(3, 5), 16),
  parseInt(hex.slice(5, 7), 16),
];

/**
 * A year as a picture of one pixel a quarter of an hour: dates to the right, the clock downwards. Glare and light from
 * above are lines of paper, slanting and level; a time that the clocks skip is paper.
 */
export function yearPicture({ grid, entryAt }: YearLight): OffscreenCanvas {
  const [width, height] = [grid.dates.length, grid.rows];
  const picture = new OffscreenCanvas(width, height);
  const context = picture.getContext('2d');
  if (!context) return picture;
  const image = context.createImageData(width, height);
  const pixels = image.data;
  for (let d = 0; d < width; d++) {
    for (let r = 0; r < height; r++) {
      const i = d * height + r;
      const entry = entryAt(i);
      const lined =
        entry &&
        ((entry.glare && !entry.blocked && (d + r) % 5 === 0) || (isFromAbove(entry) && r % 4 === 0));
      const colour = entry && !lined ? rgb(colourOf(entry)) : paper;
      pixels.set([...colour, 255], 4 * (r * width + d));
    }
  }
  context.putImageData(image, 0, 0);
  return picture;
}
