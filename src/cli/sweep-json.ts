import type { Wind } from '../figures/traffic/wind/wind';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { PastUse } from '../figures/flown/past-use';
import { recordLayout, readRecord } from '../imports/wind-record/read-record';
import { atOnce } from '../survey/at-once';
import type { Contents } from '../survey/contents';
import type { WindRecord } from '../survey/schema/wind-record';
import { standingEyeHeight } from '../survey/schema/standing-spot';
import { cellPosition } from '../sweep/area';
import { candidatesOf, type Candidate } from '../sweep/candidates';
import { overYear } from '../sweep/over-year';
import { planSweep } from '../sweep/plan';
import { groundCodes, Sweep, type CellFigures } from '../sweep/sweep';
import { isoInstant } from '../time/local-time';
import type { Read } from './arguments';
import type { Told } from './progress';
import type { SweepArguments } from './sweep-arguments';

/** Where to stand, in the form in which the `figures` command prints it (design 2, section 10). `past`: how often ends are in use; null where nothing tells. */
export function sweepJson(
  contents: Contents,
  asked: SweepArguments,
  at: number,
  wind: Wind | null,
  terrain: ElevationGrid | null,
  past: PastUse | null,
  told: Told = () => undefined,
) {
  const planned = planSweep(
    contents,
    {
      side: asked.side,
      cell: asked.cell,
      hours: asked.hours,
      step: asked.step,
      names: asked.paths,
      wind,
      configuration: 0,
      at,
    },
    terrain,
  );
  if (!planned.ok) return { ok: false as const, reason: `--sweep: ${planned.reason}` };
  const { plan } = planned;
  const { area, instants, step } = plan;
  const sweep = new Sweep(contents, plan, terrain);
  const figures = sweep.figuresOf(
    Int32Array.from({ length: area.count ** 2 }, (_, i) => i),
    (done) => told(done, area.count ** 2, 'cells'),
  );
  const { candidates, none } = candidatesOf(sweep, figures);
  const eyes = candidates.map(({ position }) => ({
    position,
    eye: sweep.groundUnder(position).elevation + standingEyeHeight,
  }));
  const year = past && overYear(contents, past, eyes, at, step, terrain);
  return {
    ok: true as const,
    value: {
      side: area.side,
      cell: area.cell,
      instants: instants.map(isoInstant),
      ...(none === 'forbidden-by-field' && {
        reason: 'the field forbids photography: nothing is proposed (sunside.rules.photography)',
      }),
      candidates: candidates.map((candidate, i) => ({
        ...candidateJson(candidate),
        ...(year && { expectedMinutes: year.minutes[i] ?? null }),
      })),
      ...(year && {
        overYear: { thinMonths: year.thinMonths, thinHours: year.thinHours, cloud: year.cloud },
      }),
      ...(asked.cells && { cells: cellsJson(sweep, figures) }),
    },
  };
}

const candidateJson = (c: Candidate) => ({
  position: c.position,
  ground: c.ground,
  way: c.way,
  goodMinutes: c.goodMinutes,
  worth: c.worth,
  focalLength: c.focalLength,
  visibleShare: c.visibleShare,
  paths: c.paths.map(({ path, goodMinutes, from, to }) => ({
    path,
    goodMinutes,
    from: isoInstant(from),
    to: isoInstant(to),
  })),
});

function cellsJson({ plan: { area, step } }: Sweep, figures: CellFigures) {
  const out = [];
  for (let k = 0; k < figures.cells.length; k++) {
    const worth = figures.worth[k] as number;
    if (worth <= 0) continue;
    const focal = figures.focal[k] as number;
    out.push({
      position: cellPosition(area, figures.cells[k] as number),
      ground: groundCodes[figures.ground[k] as number],
      goodMinutes: ((figures.good[k] as number) * step) / 60,
      worth,
      focalLength: Number.isNaN(focal) ? null : focal,
    });
  }
  return out;
}

/** A table of past winds out of a file's text. Times without an offset count as UTC; a table must name its unit. */
export function recordFrom(text: string, file: string, { site }: Pick<Contents, 'site'>): Read<WindRecord> {
  const plan = recordLayout(text);
  if (!plan)
    return { ok: false, reason: `--record: ${file}: this is no table with a row of headings and rows below` };
  const { unit } = plan;
  if (unit === null)
    return {
      ok: false,
      reason: `--record: ${file}: its heading does not say in which unit the speed is, such as "speed_kt"`,
    };
  const { record } = atOnce(readRecord(text, { ...plan, unit }, site.timeZone, file));
  return record.observations > 0
    ? { ok: true, value: record }
    : { ok: false, reason: `--record: ${file}: not one of its rows can be read as a wind` };
}
