import { outlookOf } from '../../src/figures/outlook';
import { siteFrame } from '../../src/figures/sight/site-frame';
import { groundAt } from '../../src/figures/sight/ground';
import { fieldElevation, pathsOf } from '../../src/figures/traffic/paths';
import { readContents } from '../../src/survey/contents';
import { areaAbout, cellPosition } from '../../src/sweep/area';
import { Kernel } from '../../src/sweep/kernel';
import { builtUpSurvey, wavyGround } from './built-up-survey.ts';
import { shortened } from './sweep.bench.ts';
const instants = Array.from({ length: 24 }, (_, k) => Date.UTC(2026, 5, 21, 3, 30) + k * 3_000_000);
const contents = readContents(builtUpSurvey());
const paths = pathsOf(contents, (kind, runway) => runway === 'long' && kind !== 'circuit').map(shortened);
const terrain = wavyGround();
const area = areaAbout(contents.runways.slice(0, 1), siteFrame(contents.site.reference), 20, 4000);
const outlook = outlookOf(contents, terrain);
const mode = process.argv[2] ?? 'fixed';
for (let r = 0; r < Number(process.argv[3] ?? 1); r++) {
  const from = process.cpuUsage().user;
  const cells = area.count ** 2;
  const kernel = new Kernel({ paths, outlook, instants, middle: cellPosition(area, cells >> 1), everyInstant: process.argv[4] !== 'thrifty' });
  let [worth, good] = [0, 0];
  const per = new Float64Array(24);
  for (let i = 0; i < cells; i++) {
    const p = cellPosition(area, i);
    kernel.at(p, (mode === 'fixed' ? fieldElevation(contents) : groundAt(p, contents.runways, fieldElevation(contents), outlook.around?.terrain ?? null).elevation) + 1.7);
    kernel.worth.forEach((w, t) => { worth += w; per[t]! += w; });
    for (const g of kernel.good) good += g;
  }
  console.log(mode, Math.round((process.cpuUsage().user - from) / 1000), 'ms', worth, good);
}
