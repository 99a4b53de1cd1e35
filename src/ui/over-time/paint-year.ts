import type { YearLight } from '../../figures/when/year-light';
import { colourOf, isFromAbove } from './paint';

const paper = [251, 248, 239, 255] as const;

/** Red, green, blue and alpha of "#rrggbb" or "#rrggbbaa". */
const rgba = (hex: string): readonly number[] =>
  [1, 3, 5, 7].map((at) => (at < hex.length ? parseInt(hex.slice(at, at + 2), 16) : 255));

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
      const colour = entry && !lined ? rgba(colourOf(entry)) : paper;
      pixels.set(colour, 4 * (r * width + d));
    }
  }
  context.putImageData(image, 0, 0);
  return picture;
}
