import { Session } from 'node:inspector';
import { PerformanceObserver } from 'node:perf_hooks';
import type { Position } from '../../src/survey/document';
import { reshapeFeature } from '../../src/survey/edits/reshape-feature';
import { Scratch } from '../../src/figures/scratch';
import { sceneDrawer } from '../../src/map/overlays/compose';
import { sceneOf } from '../map/scene';
import { builtUpSurvey, wavyGround } from './built-up-survey.ts';
import { busySurvey } from './busy-survey.ts';

const which = process.argv[2] ?? 'busy';
const mode = process.argv[3] ?? 'time';
const moves = Number(process.argv[4] ?? 1000);
const scratch = new Scratch();
const at = (i: number): Position => [-0.48 + 0.00003 * (i % 700), 51.473 + 0.001 * Math.sin(i)];
let survey = which === 'busy' ? busySurvey() : builtUpSurvey();
const ground = which === 'busy' ? null : wavyGround();
const draw = sceneDrawer();
const move = (i: number) => {
  survey = reshapeFeature(survey, 'spot3', { type: 'Point', coordinates: at(i) });
  const scene = sceneOf(
    survey,
    'spot3',
    which === 'busy' ? (kind) => kind === 'arrival' || kind === 'departure' : (kind) => kind !== 'circuit',
    ground,
    scratch,
  );
  return draw({ ...scene, dragging: true });
};
let sum = 0;
for (let i = 0; i < 300; i++) sum += move(i).live.features.length;
if (mode === 'time') {
  const times: number[] = [];
  let gcs = 0;
  const seen = new PerformanceObserver((list) => {
    for (const e of list.getEntries()) if ((e as unknown as { detail: { kind: number } }).detail.kind === 1) gcs++;
  });
  seen.observe({ entryTypes: ['gc'] });
  const cpu = process.cpuUsage();
  for (let i = 0; i < moves; i++) {
    const from = performance.now();
    sum += move(i).live.features.length;
    times.push(performance.now() - from);
  }
  const used = process.cpuUsage(cpu);
  times.sort((a, b) => a - b);
  await new Promise((r) => setTimeout(r, 20));
  console.log(
    `${which} median ${times[moves >> 1]?.toFixed(3)} p95 ${times[Math.floor(0.95 * moves)]?.toFixed(3)} p99 ${times[Math.floor(0.99 * moves)]?.toFixed(3)} cpu/move ${((used.user + used.system) / 1000 / moves).toFixed(3)} minor ${gcs}`,
  );
} else {
  const session = new Session();
  session.connect();
  const post = (m: string, p?: object) =>
    new Promise<any>((ok, no) => session.post(m, p, (e: unknown, r: unknown) => (e ? no(e) : ok(r))));
  await post('HeapProfiler.startSampling', {
    samplingInterval: 2048,
    includeObjectsCollectedByMajorGC: true,
    includeObjectsCollectedByMinorGC: true,
  });
  for (let i = 0; i < moves; i++) sum += move(i).live.features.length;
  const { profile } = await post('HeapProfiler.stopSampling');
  const by = new Map<string, number>();
  const incl = new Map<string, number>();
  let total = 0;
  const walk = (n: any, stack: Set<string>) => {
    const k = `${n.callFrame.functionName || '(anon)'}:${n.callFrame.lineNumber + 1}`;
    by.set(k, (by.get(k) ?? 0) + n.selfSize);
    total += n.selfSize;
    const all = new Set(stack).add(k);
    for (const s of all) incl.set(s, (incl.get(s) ?? 0) + n.selfSize);
    for (const c of n.children) walk(c, all);
  };
  walk(profile.head, new Set());
  console.log(`${which} ${(total / moves / 1024).toFixed(1)} kB a move`);
  const top = (m: Map<string, number>) =>
    [...m].sort((a, b) => b[1] - a[1]).slice(0, 32).map(([k, v]) => `${(v / moves / 1024).toFixed(2).padStart(8)} ${k}`);
  const a = top(by);
  const b = top(incl);
  a.forEach((l, i) => console.log(l.padEnd(50), b[i] ?? ''));
}
if (sum < 0) console.log(sum);
