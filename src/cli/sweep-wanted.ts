import { endUses } from '../figures/flown/end-uses';
import { pastUse, type PastUse } from '../figures/flown/past-use';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { Wind } from '../figures/traffic/wind/wind';
import type { Contents } from '../survey/contents';
import type { FiguresArguments, Read } from './arguments';
import { bytesOf, longestSurvey } from './file-bytes';
import type { Told } from './progress';
import { recordFrom, sweepJson } from './sweep-json';

/** Where to stand; null when it is not asked. How often ends are in use comes from a file of past winds, else
 * from the survey's own record and its recorded flights. */
export function sweepWanted(
  { sweep, at }: Pick<FiguresArguments, 'sweep' | 'at'>,
  contents: Contents,
  wind: Wind | null,
  terrain: ElevationGrid | null,
  told: Told,
): Read<object | null> {
  if (!sweep) return { ok: true, value: null };
  let past: PastUse | null;
  if (sweep.record !== null) {
    const bytes = bytesOf(sweep.record, longestSurvey);
    if (!bytes.ok) return { ok: false, reason: `--record: ${bytes.reason}` };
    const read = recordFrom(bytes.value.toString('utf8'), sweep.record, contents);
    if (!read.ok) return read;
    past = pastUse(contents, read.value, []);
  } else past = pastUse(contents, contents.windRecord, endUses(contents, terrain));
  return sweepJson(contents, sweep, at, wind, terrain, past, told);
}
