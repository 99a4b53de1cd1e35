import { looksLikeArchive, unpack } from '../storage/archive';
import type { Autosave } from '../storage/autosave';
import type { Shelf } from '../storage/shelf';
import type { SurveySummary } from '../storage/records';
import { readContents } from '../survey/contents';
import { openSurvey } from '../survey/open';
import { factsOf, messageOf, surveyFile } from './survey-files';

export interface ImportNeeds {
  readonly store: Pick<Autosave, 'read' | 'write'>;
  readonly shelf: Pick<Shelf, 'list'>;
  readonly newId: () => string;
  readonly now: () => number;
}

export interface Imported {
  /** Names of the surveys that are in the list now. */
  readonly added: readonly string[];
  /** How many were there already, letter by letter. */
  readonly known: number;
  /** "field.geojson: The file is empty." */
  readonly refused: readonly string[];
}

interface Text {
  readonly name: string;
  readonly text: string;
}

/**
 * Keeps the surveys of files and archives beside those that are there. The text is kept as it came, so that
 * opening it still lists what is odd about it. What is kept already, letter by letter, is not kept twice.
 */
export async function importSurveys(files: readonly File[], needs: ImportNeeds): Promise<Imported> {
  const added: string[] = [];
  const refused: string[] = [];
  let known = 0;
  const listed = await needs.shelf.list();
  const kept = listed.ok ? listed.value.filter((summary) => summary.deleted === null) : [];
  for (const file of files) {
    for (const { name, text } of await textsOf(file, refused)) {
      const opened = openSurvey(text);
      if (!opened.ok) refused.push(`${name}: ${opened.reason}`);
      else if (await isKept(text, kept, needs.store)) known++;
      else {
        const title = readContents(opened.survey).site.name || name.replace(/\.\w+$/, '');
        const written = await needs.store.write(
          { id: needs.newId(), name: title, changed: needs.now(), facts: factsOf(opened.survey), text },
          0,
        );
        if (written.ok) added.push(title);
        else refused.push(`${name}: ${written.why === 'refused' ? written.reason : 'another tab was first'}`);
      }
    }
  }
  return { added, known, refused };
}

async function textsOf(file: File, refused: string[]): Promise<readonly Text[]> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    // A folder that was dropped, or a file that has gone since: the others can still be read.
    refused.push(`${file.name}: ${messageOf(error)}`);
    return [];
  }
  if (!looksLikeArchive(bytes)) return [{ name: file.name, text: new TextDecoder().decode(bytes) }];
  const unpacked = await unpack(bytes, surveyFile.extensions);
  if (!unpacked.ok) refused.push(`${file.name}: the archive cannot be read (${unpacked.reason})`);
  else if (unpacked.files.length === 0) refused.push(`${file.name}: there is no survey in it`);
  return unpacked.ok ? unpacked.files : [];
}

async function isKept(
  text: string,
  kept: readonly SurveySummary[],
  store: ImportNeeds['store'],
): Promise<boolean> {
  for (const { id, size } of kept)
    if (size === text.length && (await store.read(id))?.text === text) return true;
  return false;
}

const mostNamed = 3;

/** What the notice says of an import. */
export function importWords({ added, known, refused }: Imported): string {
  const [first] = added;
  const words: string[] = [];
  if (added.length === 1 && first !== undefined) words.push(`"${first}" is in the list now.`);
  if (added.length > 1) words.push(`${added.length} surveys are in the list now.`);
  if (known > 0) words.push(known === 1 ? '1 was there already.' : `${known} were there already.`);
  if (refused.length > 0) {
    const more = refused.length - mostNamed;
    words.push(
      `Not imported: ${refused.slice(0, mostNamed).join(' ')}${more > 0 ? ` And ${more} more.` : ''}`,
    );
  }
  return words.join(' ');
}
