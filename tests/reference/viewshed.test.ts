import { expect, test } from 'vitest';
import { cells, country, exactly, gdals, hasGdal, ours, ringByRing } from '../support/viewshed';
import { cases } from '../support/thorough';
import { seeded } from '../support/tolerance';

/** Share of the cells that must agree. */
const agree = 0.995;
/** Made once for both: a million cells take a second. */
const heights = country();
const theirs = hasGdal() ? (await gdals(heights)).seen : null;
/** Of the slower way every eighth row is compared. */
const isCompared = (i: number) => Math.floor(i / cells) % 8 === 0;

test('[R63] what of a made-up country is in sight, against gdal_viewshed', (context) => {
  if (!theirs) return context.skip('gdal_viewshed is not on this machine (Debian: gdal-bin)');
  const mine = ours(heights, isCompared);
  const compared = [...mine.keys()].filter(isCompared);
  const apart = compared.filter((i) => mine[i] !== theirs[i]);
  const share = 1 - apart.length / compared.length;
  // Where they differ it is at the edge of what is in sight ...
  const atEdge = apart.filter((i) =>
    [-cells - 1, -cells, -cells + 1, -1, 1, cells - 1, cells, cells + 1].some(
      (step) => theirs[i + step] !== theirs[i],
    ),
  );
  // ... and the cell's own line, looked at closely, mostly sides with ours: GDAL carries heights from ring to ring.
  const random = seeded(7);
  const asked = Array.from({ length: cases(300) }, () => apart[Math.floor(random() * apart.length)] ?? 0);
  const right = asked.filter((i) => exactly(heights, i) === (mine[i] === 1)).length / asked.length;
  process.stdout.write(
    `viewshed of ${cells} x ${cells} cells: ${(100 * share).toFixed(2)} % agree; of ${apart.length} others ${atEdge.length} at an edge; close up ours is right in ${Math.round(100 * right)} % of them\n`,
  );
  expect(mine.reduce((sum, seen) => sum + seen, 0)).toBeGreaterThan(3500);
  expect(share).toBeGreaterThan(agree);
  expect(atEdge.length / apart.length).toBeGreaterThan(0.8);
  expect(right).toBeGreaterThan(0.6);
});

test('[R64] ... and all cells at once, ring by ring: as gdal_viewshed carries heights, and about right close up', (context) => {
  const mine = ringByRing(heights);
  const random = seeded(11);
  const asked = Array.from({ length: cases(1500) }, () => Math.floor(random() * mine.length));
  const right = asked.filter((i) => exactly(heights, i) === (mine[i] === 1)).length / asked.length;
  expect(right).toBeGreaterThan(0.98);
  if (!theirs) return context.skip('gdal_viewshed is not on this machine (Debian: gdal-bin)');
  const apart = mine.filter((seen, i) => seen !== theirs[i]).length;
  process.stdout.write(
    `ring by ring: ${apart} of ${mine.length} cells differ from gdal_viewshed; close up ${(100 * right).toFixed(1)} % are right\n`,
  );
  expect(apart / mine.length).toBeLessThan(1 - agree);
});
