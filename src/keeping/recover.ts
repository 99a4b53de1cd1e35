import { copyName } from './open-survey';
import type { Autosave } from '../storage/autosave';
import { allLastWords, forgetLastWords } from '../storage/last-words';
import { setSite } from '../survey/edits/set-members';
import { openSurvey } from '../survey/open';
import { saveSurvey } from '../survey/save';

/**
 * Keeps what pages left when they went: in its place where nobody has written there since, else as a copy beside
 * it. What the browser refuses stays where it is for the next time. Returns the names of the copies.
 */
export async function recoverLastWords(
  store: Pick<Autosave, 'read' | 'write'>,
  newId: () => string,
): Promise<readonly string[]> {
  const copies: string[] = [];
  for (const { key, words } of allLastWords()) {
    const { survey, known } = words;
    if ((await store.read(survey.id))?.text !== survey.text) {
      const written = await store.write(survey, known);
      if (!written.ok) {
        if (written.why === 'refused') continue;
        const name = copyName(survey.name);
        const text = renamed(survey.text, name);
        if (!(await store.write({ ...survey, id: newId(), name, text }, 0)).ok) continue;
        copies.push(name);
      }
    }
    forgetLastWords(key);
  }
  return copies;
}

/** A text that no reader understands is kept as it is: its name stands in the list alone. */
function renamed(text: string, name: string): string {
  try {
    const opened = openSurvey(text);
    return opened.ok ? saveSurvey(setSite(opened.survey, { name })) : text;
  } catch {
    return text;
  }
}
