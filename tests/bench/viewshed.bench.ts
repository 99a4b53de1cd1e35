import { cells, country, gdals, hasGdal, ours, ringByRing } from '../support/viewshed.ts';
import { measure, printed } from './measure.ts';

/** What of a made-up elevation model is in sight from one place, by ours and by gdal_viewshed. */
export async function viewshed(): Promise<void> {
  const heights = country();
  const mine = measure(3, () => void ours(heights));
  console.log(`viewshed of ${cells} x ${cells} cells, one eye`);
  const rings = measure(5, () => void ringByRing(heights));
  console.log(`  ours, every own line  ${printed(mine)}`);
  console.log(`  ours, ring by ring    ${printed(rings)}`);
  if (!hasGdal()) return console.log('  gdal_viewshed         not on this machine');
  const runs: number[] = [];
  for (let i = 0; i < 3; i++) runs.push((await gdals(heights)).took);
  const theirs = runs.sort((a, b) => a - b)[1] ?? NaN;
  console.log(`  gdal_viewshed 3.6.2   median ${theirs.toFixed(0)} ms, with start, reading and writing`);
  console.log(
    `  ratio to GDAL         ${(rings.median / theirs).toFixed(2)} x ring by ring (budget 2), ${(mine.median / theirs).toFixed(1)} x every own line`,
  );
}
