import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { RAD } from '../../src/figures/geometry/angles';
import { dot, frameAt, inFrame, mapped, type Frame } from '../../src/figures/geometry/earth';
import { sunAt } from '../../src/figures/light/sun';
import { sunThere } from '../../src/figures/light/sun-there';
import { groundAt } from '../../src/figures/sight/ground';
import { siteFrame } from '../../src/figures/sight/site-frame';
import type { ElevationGrid } from '../../src/figures/sight/terrain';
import { outlookOf, type Outlook } from '../../src/figures/outlook';
import { fieldElevation, pathsOf, type Path } from '../../src/figures/traffic/paths';
import type { PathSamples } from '../../src/figures/traffic/samples';
import { readContents, type Contents } from '../../src/survey/contents';
import type { Position } from '../../src/survey/document';
import { areaAbout, cellPosition, type Area } from '../../src/sweep/area';
import { Kernel } from '../../src/sweep/kernel/kernel';
import { busySurvey } from './busy-survey.ts';
import { builtUpSurvey, wavyGround } from './built-up-survey.ts';

const cellM = 20;
const sideM = 4000;
/** 24 instants of a summer's day, from 03:30 UTC every 50 minutes. */
const instants = Array.from({ length: 24 }, (_, k) => Date.UTC(2026, 5, 21, 3, 30) + k * 3_000_000);
const runs = 3;

/** Where to stand: 4 x 4 km at 20 m, 4 paths, 24 instants, by ours and by the same sums in C without any short cut. */
export function sweep(): void {
  const contents = readContents(busySurvey());
  const chosen = pathsOf(contents, (kind, runway) => runway === 'long' && kind !== 'circuit', null);
  const short = chosen.map(shortened);
  console.log(
    `where to stand: ${sideM / 1000} x ${sideM / 1000} km at ${cellM} m, 24 instants, processor time of one core`,
  );
  const brute = compiled();
  for (const [name, paths] of [
    ['4 paths of 61 samples', short],
    [`4 whole paths, ${chosen.reduce((sum, p) => sum + p.samples.count, 0)} samples`, chosen],
  ] as const) {
    const mine = median(() => ours(contents, paths, null));
    console.log(`  open ground, ${name}`);
    console.log(
      `    ours                ${mine.ms.toFixed(0)} ms (sum of worth ${mine.worth.toFixed(1)}, good ${mine.good})`,
    );
    if (!brute) continue;
    const theirs =
      paths === chosen
        ? inC(brute.program, contents, paths)
        : median(() => inC(brute.program, contents, paths));
    console.log(
      `    C, by brute force   ${theirs.ms.toFixed(0)} ms (sum of worth ${theirs.worth.toFixed(1)}, good ${theirs.good})`,
    );
    console.log(`    ratio ours to C     ${(mine.ms / theirs.ms).toFixed(2)} x (budget 1.0, aimed at 0.5)`);
  }
  if (!brute) console.log('    C                   no compiler on this machine (gcc)');
  brute?.remove();
  const built = readContents(builtUpSurvey());
  const builtPaths = pathsOf(built, (kind, runway) => runway === 'long' && kind !== 'circuit', null);
  for (const [name, paths] of [
    ['61 samples', builtPaths.map(shortened)],
    ['whole paths', builtPaths],
  ] as const) {
    const terrain = wavyGround();
    const asked = median(() => ours(built, paths, terrain, false));
    const every = ours(built, paths, terrain);
    const open = ours(built, paths, null, false, true);
    console.log(
      `  500 obstacles and terrain, ${name}: ${asked.ms.toFixed(0)} ms as the program asks (budget 3,000), ${(asked.ms / open.ms).toFixed(1)} x open ground; every instant everywhere ${every.ms.toFixed(0)} ms`,
    );
  }
}

/** 61 samples about the middle of what is photographed: from 600 m before to 600 m after the nearest to the threshold. */
export function shortened(path: Path): Path {
  const { station } = path.samples;
  let at = 0;
  station.forEach((s, i) => {
    if (Math.abs(s - 400) < Math.abs((station[at] ?? NaN) - 400)) at = i;
  });
  const from = Math.max(0, at - 30);
  const to = from + 61;
  const cut = <K extends keyof PathSamples>(key: K, size: number) =>
    (path.samples[key] as Float64Array).slice(from * size, to * size);
  const samples: PathSamples = {
    ...path.samples,
    count: 61,
    station: cut('station', 1),
    centre: cut('centre', 3),
    forward: cut('forward', 3),
    up: cut('up', 3),
    slope: cut('slope', 1),
    attitude: cut('attitude', 1),
    bank: cut('bank', 1),
    height: cut('height', 1),
    share: cut('share', 1),
    speed: cut('speed', 1),
    onGround: path.samples.onGround.slice(from, to),
  };
  return { ...path, samples };
}

interface Run {
  readonly ms: number;
  readonly worth: number;
  readonly good: number;
}

function median(run: () => Run): Run {
  const all = Array.from({ length: runs }, run).sort((a, b) => a.ms - b.ms);
  return all[Math.floor(runs / 2)] as Run;
}

function prepared(contents: Contents) {
  const frame = siteFrame(contents.site.reference);
  const area = areaAbout(contents.runways.slice(0, 1), frame, cellM, sideM);
  return { frame, area };
}

/** `everyInstant`: as `Kernel` has it. `isOpen`: as if nothing stood there. On terrain eyes stand on it, else at the field's height. */
function ours(
  contents: Contents,
  paths: readonly Path[],
  terrain: ElevationGrid | null,
  everyInstant = true,
  isOpen = false,
): Run {
  const { area } = prepared(contents);
  const all = outlookOf(contents, terrain);
  const outlook = isOpen ? { ...all, around: null } : all;
  const field = fieldElevation(contents);
  const heightAt = (position: Position) =>
    terrain ? groundAt(position, contents.runways, field, all.around?.terrain ?? null).elevation : field;
  const from = process.cpuUsage().user;
  const cells = area.count * area.count;
  const kernel = new Kernel({
    paths,
    outlook,
    instants,
    middle: cellPosition(area, Math.floor(cells / 2)),
    everyInstant,
  });
  let [worth, good] = [0, 0];
  for (let i = 0; i < cells; i++) {
    const position = cellPosition(area, i);
    kernel.at(position, heightAt(position) + 1.7);
    for (const total of kernel.worth) worth += total;
    for (const is of kernel.good) good += is;
  }
  return { ms: (process.cpuUsage().user - from) / 1000, worth, good };
}

function compiled(): { readonly program: string; remove(): void } | null {
  const folder = mkdtempSync(join(tmpdir(), 'sunside-sweep-'));
  const program = join(folder, 'brute');
  const remove = () => rmSync(folder, { recursive: true });
  const source = join(import.meta.dirname, 'sweep-brute.c');
  try {
    execFileSync('gcc', ['-O3', '-march=native', '-ffast-math', '-o', program, source, '-lm'], {
      stdio: 'pipe',
    });
    return { program, remove };
  } catch {
    remove();
    return null;
  }
}

function inC(program: string, contents: Contents, paths: readonly Path[]): Run {
  const { frame, area } = prepared(contents);
  const question = questionInC(contents, outlookOf(contents, null), paths, frame, area);
  const input = Buffer.from(Float64Array.from(question).buffer);
  const answer = execFileSync(program, { input, maxBuffer: 1e6 }).toString('utf8');
  return JSON.parse(answer) as Run;
}

/** What `sweep-brute.c` reads: its world is flat, about the site's reference. */
function questionInC(
  contents: Contents,
  { reach, framing }: Outlook,
  paths: readonly Path[],
  frame: Frame,
  area: Area,
) {
  const cells = area.count * area.count;
  const numbers: number[] = [cells, instants.length, paths.length, reach.ranges.length];
  for (const { shortest, longest } of reach.ranges) numbers.push(shortest, longest);
  numbers.push(
    framing.fill,
    framing.sensorWidth,
    framing.sensorHeight,
    framing.facing.counts.length,
    ...framing.facing.points,
  );
  for (const instant of instants) {
    const sun = sunThere(sunAt(cellPosition(area, Math.floor(cells / 2)), instant));
    numbers.push(sun.east, sun.north, sun.up, sun.levelEast, sun.levelNorth, sun.sun.geometricAltitude);
  }
  for (const { samples } of paths) numbers.push(samples.count);
  for (const { samples } of paths)
    for (let i = 0; i < samples.count; i++) {
      const at = (list: Float64Array) =>
        [list[3 * i], list[3 * i + 1], list[3 * i + 2]] as [number, number, number];
      const turned = (list: Float64Array) =>
        [frame.east, frame.north, frame.up].map((axis) => dot(at(list), axis));
      const slope = samples.slope[i] ?? NaN;
      numbers.push(...inFrame(frame, at(samples.centre)), ...turned(samples.forward), ...turned(samples.up));
      numbers.push(slope, samples.attitude[i] ?? NaN);
    }
  const eye = fieldElevation(contents) + 1.7;
  for (let i = 0; i < cells; i++) {
    const position = cellPosition(area, i);
    const [x, y] = mapped(frame, position);
    // The earth falls away from the flat world by some centimetres.
    const up = inFrame(frame, frameAt(position).origin)[2];
    numbers.push(x, y, up + eye * Math.cos((Math.hypot(x, y) / 6.37e6) * RAD));
  }
  return numbers;
}
