import { readFileSync } from 'node:fs';
import { frameFor, framed, type FrameChoice } from '../../src/figures/frame/frame-for';
import { sceneryRound } from '../../src/figures/frame/scenery';
import { viewPoint } from '../../src/figures/frame/from-eye';
import { lensCoverage } from '../../src/figures/optics/lens-coverage';
import { landscape } from '../../src/figures/optics/framing';
import { nothingPinned } from '../../src/figures/optics/settings';
import { outlookOf } from '../../src/figures/outlook';
import { pathsOf } from '../../src/figures/traffic/paths';
import { readContents } from '../../src/survey/contents';
import { openSurvey } from '../../src/survey/open';
import { measure, printed } from './measure';

/** What the settings card and the viewfinder cost in script, without drawing: the card follows a drag (budget 1 ms). */
export function frames(): void {
  const opened = openSurvey(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
  if (!opened.ok) throw new Error(opened.reason);
  const contents = readContents(opened.survey);
  const outlook = outlookOf(contents, null);
  const paths = pathsOf(contents, (kind) => kind === 'arrival' || kind === 'departure', null);
  const [spot] = contents.spots;
  const [path] = paths;
  const [lens] = contents.kit.lenses;
  if (!spot || !path || !lens) throw new Error('expected a spot, a path and a lens');
  const at = Date.parse('2026-06-21T17:00:00Z');
  const choice: FrameChoice = { lens, hold: landscape, pinned: nothingPinned };
  const moved = (i: number) => ({ ...spot, eyeHeight: 1.7 + (i % 50) / 100 });
  const card = measure(500, (i) => void framed(moved(i), path, 400, contents, outlook, at, choice));
  const frame = measure(
    500,
    (i) => void frameFor(spot, 186, path, i % path.samples.count, contents, outlook, at, choice),
  );
  const scenery = measure(50, () => void sceneryRound(viewPoint(spot, 186), contents, 186));
  const lenses = measure(10, () => void lensCoverage(contents, paths, outlook, [at, at - 36_000_000]));
  console.log('settings and viewfinder, script without drawing');
  console.log(`  one settings card     ${printed(card)}`);
  console.log(`  one frame             ${printed(frame)}`);
  console.log(`  scenery of a spot     ${printed(scenery)}`);
  console.log(`  which lens to take    ${printed(lenses)}`);
}
