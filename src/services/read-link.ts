import { mostUnpacked, readFragment } from '../exports/pass-on/link-fragment';
import type { Arrived } from '../ports/passing';
import { aboutSurvey } from '../keeping/survey-files';
import { unpackText } from '../storage/archive';
import type { Survey } from '../survey/document';
import { openSurvey } from '../survey/open';
import { kindOf } from '../survey/read-feature';

const stays = 'The survey that is open stays.';
const sentences = {
  newer: `That link was made by a newer version of Sunside. Load the page anew, then open the link again. ${stays}`,
  broken: `That link does not hold a whole survey: it may have been cut on its way. Ask for it again, or for a file. ${stays}`,
  'too-long': `That link is longer than any that Sunside makes. Ask for a file instead. ${stays}`,
  'too-large': `What that link holds is larger than any survey that a link is made for. Ask for a file instead. ${stays}`,
} as const;

export type ReadLink =
  | ({ readonly ok: true; readonly text: string } & Pick<Arrived, 'name' | 'counts'>)
  | { readonly ok: false; readonly reason: string };

/** What a fragment holds, or why it cannot be shown; null for one that is none of ours. */
export async function readLink(fragment: string): Promise<ReadLink | null> {
  const read = readFragment(fragment);
  if (!read) return null;
  if (read.is !== 'survey') return { ok: false, reason: sentences[read.is] };
  const unpacked = await unpackText(read.packed, mostUnpacked);
  if (!unpacked.ok) return { ok: false, reason: sentences[unpacked.why] };
  const { text } = unpacked;
  const opened = openSurvey(text);
  if (!opened.ok)
    return { ok: false, reason: `What that link holds is no survey. ${opened.reason} ${stays}` };
  return { ok: true, text, name: aboutSurvey(opened.survey).name, counts: countsOf(opened.survey) };
}

function countsOf(survey: Survey): Arrived['counts'] {
  const counts = new Map<string, number>();
  for (const feature of survey.features) {
    const kind = kindOf(feature) ?? '';
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  return [...counts].map(([kind, count]) => ({ kind, count }));
}
