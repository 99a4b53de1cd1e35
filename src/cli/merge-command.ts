import { parseArgs } from 'node:util';
import { merge } from '../merging/merge';
import type { Question, Take } from '../merging/questions';
import { saveSurvey } from '../survey/save';
import type { Read } from './arguments';
import { surveyIn } from './survey-in';

export interface Ended {
  readonly status: 0 | 2 | 3;
  readonly out: string;
  readonly err: string;
}

const mergeUsage =
  'usage: npm run -s merge -- MINE.geojson THEIRS.geojson [--base BASE.geojson] [--take mine|theirs]';

/**
 * Prints two surveys made one. What both changed differently ends it with status 3 and the questions as JSON, unless
 * `--take` answers them all; bad input with status 2 and one line.
 */
export function mergeCommand(args: readonly string[]): Ended {
  const read = readMergeArguments(args);
  if (!read.ok) return refused(read.reason);
  const { mine, theirs, base, take } = read.value;
  const surveys = [mine, theirs, ...(base === null ? [] : [base])].map(surveyIn);
  const bad = surveys.find((survey) => !survey.ok);
  if (bad && !bad.ok) return refused(bad.reason);
  const [m, t, b] = surveys.map((survey) => (survey.ok ? survey.value.survey : null));
  if (!m || !t) return refused(mergeUsage);
  const merged = merge(m, t, { base: b ?? null, decide: () => take });
  if (merged.open.length > 0)
    return { status: 3, out: '', err: `${JSON.stringify(merged.open.map(printed), null, 1)}\n` };
  return { status: 0, out: saveSurvey(merged.survey), err: '' };
}

const refused = (reason: string): Ended => ({
  status: 2,
  out: '',
  err: `${reason.replace(/\s+/g, ' ')}\n`,
});

/** What a side does not have is null. */
const printed = ({ id, pointer, mine, theirs, base }: Question) => ({
  id,
  pointer,
  mine: mine ?? null,
  theirs: theirs ?? null,
  ...(base === undefined ? {} : { base }),
});

interface MergeArguments {
  readonly mine: string;
  readonly theirs: string;
  readonly base: string | null;
  readonly take: Take | null;
}

function readMergeArguments(args: readonly string[]): Read<MergeArguments> {
  const options = { base: { type: 'string' }, take: { type: 'string' } } as const;
  let parsed;
  try {
    parsed = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    return { ok: false, reason: `${error instanceof Error ? error.message : String(error)} (${mergeUsage})` };
  }
  const [mine, theirs, ...more] = parsed.positionals;
  if (mine === undefined || theirs === undefined || more.length > 0)
    return {
      ok: false,
      reason: `two survey files are needed, got ${parsed.positionals.length} (${mergeUsage})`,
    };
  const { base, take } = parsed.values;
  if (take !== undefined && take !== 'mine' && take !== 'theirs')
    return { ok: false, reason: `--take: expected mine or theirs, got "${take}"` };
  return { ok: true, value: { mine, theirs, base: base ?? null, take: take ?? null } };
}
