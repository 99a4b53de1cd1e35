import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pastUse } from '../../src/figures/flown/past-use';
import { recordLayout, readRecord } from '../../src/imports/wind-record/read-record';
import { readContents } from '../../src/survey/contents';
import { Answering } from '../../src/sweep/answering';
import { SweepClient, type Hand } from '../../src/sweep/client';
import type { Response } from '../../src/sweep/messages';
import type { SweepAsked } from '../../src/sweep/plan';
import { overYear } from '../../src/sweep/over-year';
import type { Survey } from '../../src/survey/document';

const at = Date.UTC(2026, 5, 21, 9);
const asked: SweepAsked = {
  names: null,
  wind: null,
  configuration: 0,
  at,
  side: null,
  cell: null,
  step: 900,
  hours: null,
};
const sample = () =>
  readContents(
    JSON.parse(
      readFileSync(join(import.meta.dirname, '../../sample-sites/tolverby.geojson'), 'utf8'),
    ) as Survey,
  );
const budgetCancel = 50;
const budgetYear = 10_000;
/** Chunks that are looked at: more than half of the finer levels. */
const requests = 400;

/** How long a later question waits for what a worker is at, and what a year with a record takes: on the sample site. */
export function sweepAsked(): void {
  cancelled();
  year();
}

/** What is under way in a worker is not interrupted: a later question waits for one request, save places, whose worker is ended. */
function cancelled(): void {
  const took: number[] = [];
  const queue: (() => void)[] = [];
  const client = new SweepClient((): Hand => {
    const answering = new Answering(() => performance.now());
    const hand: Hand = {
      onmessage: null,
      onerror: null,
      terminate: () => undefined,
      postMessage: (request) =>
        void queue.push(() => {
          if (request.name === 'candidates')
            return answer({ id: request.id, name: 'candidates', body: { candidates: [], none: null } });
          const from = process.cpuUsage().user;
          const { response } = answering.answer(request);
          if (request.name === 'cells') took.push((process.cpuUsage().user - from) / 1000);
          answer(response);
        }),
    };
    const answer = (data: Response) => hand.onmessage?.({ data });
    return hand;
  }, 1);
  client.ask(sample(), asked, null, () => undefined);
  for (let k = 0; k < requests; k++) queue.shift()?.();
  client.close();
  // The first ones find a cold program.
  const warm = took.slice(10).sort((a, b) => a - b);
  const share = (part: number) => warm[Math.min(warm.length - 1, Math.floor(part * warm.length))] ?? NaN;
  console.log(
    `a later question waits for one request of a worker, processor time (${warm.length} of the sample site's)`,
  );
  console.log(
    `  median ${share(0.5).toFixed(0)} ms, 99 % ${share(0.99).toFixed(0)} ms, ${(share(0.99) / budgetCancel).toFixed(2)} x the budget of ${budgetCancel} ms`,
  );
}

function year(): void {
  const contents = sample();
  const places = contents.spots.map((spot) => ({ position: spot.position, eye: 180 + spot.eyeHeight, spot }));
  const twelve = Array.from({ length: 12 }, (_, i) => places[i % places.length]).flatMap(
    (place) => place ?? [],
  );
  const past = pastUse(contents, windsOfTwoYears(contents.site.timeZone), []);
  if (!past) throw new Error('expected past winds to be told by');
  const from = process.cpuUsage().user;
  overYear(contents, past, twelve, at, 900, null);
  const ms = (process.cpuUsage().user - from) / 1000;
  console.log(
    `a year with a record, 12 places every quarter of an hour: ${ms.toFixed(0)} ms, ${(ms / budgetYear).toFixed(2)} x the budget of ${budgetYear} ms`,
  );
}

/** Hour by hour, from a direction that goes round. */
function windsOfTwoYears(timeZone: string) {
  const rows = Array.from(
    { length: 730 * 24 },
    (_, h) => `${new Date(Date.UTC(2024, 0, 1, h)).toISOString()},${(h * 10) % 360},12`,
  );
  const text = ['time,direction,speed_kt', ...rows].join('\n');
  const layout = recordLayout(text);
  if (!layout?.unit) throw new Error('expected a table of winds');
  const steps = readRecord(text, { ...layout, unit: layout.unit }, timeZone, 'winds.csv');
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value.record;
}
