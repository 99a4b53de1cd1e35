import { cells, country, gdals, hasGdal, ours } from '../support/viewshed.ts';
import { measure, printed } from './measure.ts';

/** What of a made-up elevation model is in sight from one place, by ours and by gdal_viewshed. */
export async function viewshed(): Promise<void> {
  const heights = country();
  const mine = measure(3, () => void ours(heights));
  console.log(`viewshed of ${cells} x ${cells} cells, one eye`);
  console.log(`  ours                  ${printed(mine)}`);
  if (!hasGdal()) return console.log('  gdal_viewshed         not on this machine');
  const runs: number[] = [];
  for (let i = 0; i < 3; i++) runs.push((await gdals(heights)).took);
  const theirs = runs.sort((a, b) => a - b)[1] ?? NaN;
  console.log(`  gdal_viewshed 3.6.2   median ${theirs.toFixed(0)} ms, with start, reading and writing`);
  console.log(`  ratio ours to GDAL    ${(mine.median / theirs).toFixed(1)} x`);
}
