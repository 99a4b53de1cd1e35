import type { SurveyDocument } from './state/document.svelte';
import type { Saving } from './state/saving.svelte';
import type { View } from './state/view.svelte';
import type { Autosave } from './storage/autosave';
import { saveFile } from './storage/files';
import type { StoredSurvey } from './storage/records';
import { tabKeeps, tabKept } from './storage/tab';
import { readContents } from './survey/contents';
import { setSite } from './survey/edits/set-members';
import { freshId } from './survey/ids';
import { openSurvey, type Opened } from './survey/open';
import { saveSurvey } from './survey/save';
import { fileName, messageOf, surveyFile } from './survey-files';

/** A record of its own for every survey that is opened or started. */
export const newRecord = (): string => freshId(new Set());

export interface Needs {
  readonly document: SurveyDocument;
  readonly saving: Saving;
  readonly view: View;
  readonly store: Pick<Autosave, 'read' | 'latest'>;
  /** Text of the sample site. */
  readonly loadSample: () => Promise<string>;
}

/** Which survey this tab shows: putting one in the place of another, without losing what was open. */
export class OpenSurvey {
  readonly #document: SurveyDocument;
  readonly #saving: Saving;
  readonly #view: View;
  readonly #store: Needs['store'];
  readonly #loadSample: () => Promise<string>;
  /** The file that the next "Save" writes to again. */
  #handle: FileSystemFileHandle | null = null;

  constructor({ document, saving, view, store, loadSample }: Needs) {
    this.#document = document;
    this.#saving = saving;
    this.#view = view;
    this.#store = store;
    this.#loadSample = loadSample;
  }

  get id(): string {
    return this.#document.id;
  }

  /** What was open in this tab, else the survey changed last, else the sample site. */
  async resume(): Promise<void> {
    const id = tabKept();
    const stored = id === null ? null : await this.#store.read(id);
    if (!stored || !this.#showStored(stored)) await this.openLatest();
  }

  /** The survey changed last, else the sample site: what was open is left as it is. */
  async openLatest(): Promise<void> {
    const stored = await this.#store.latest();
    if (!stored || !this.#showStored(stored)) this.show(await this.#loadSample());
  }

  openKept(id: string): Promise<void> {
    return this.leave(async () => {
      const stored = await this.#store.read(id);
      if (stored) this.#showStored(stored);
      else this.#view.notice = 'This survey is not kept on this device any more.';
    });
  }

  openSample(): Promise<void> {
    return this.leave(async () => void this.show(await this.#loadSample()));
  }

  /** Puts what is open into safety and goes on; where that fails the user decides. `risk` says what would be lost. */
  async leave(goOn: () => Promise<void>, risk = 'Another one in its place would lose it.'): Promise<void> {
    await this.#saving.flush();
    if (this.#saving.theirs !== null && this.#saving.atRisk) await this.keepMine();
    if (!this.#saving.atRisk) return goOn();
    this.#view.offer(`The open survey is not kept on this device. ${risk}`, [
      { label: 'Save to a file', run: () => void this.save() },
      { label: 'Discard the changes', run: () => void goOn() },
    ]);
  }

  /**
   * Shows the survey in a text, under a new key; when it is none the open survey stays, and the notice says why.
   * `changed`: it is to be kept at once, not with the first edit.
   */
  show(
    text: string,
    {
      source,
      handle,
      changed,
    }: { source?: string; handle?: FileSystemFileHandle | null; changed?: true } = {},
  ): boolean {
    if (!this.#put(text, newRecord(), 0, source ?? 'The survey')) return false;
    this.#handle = handle ?? null;
    if (changed && !this.#document.readOnly) this.#saving.changed();
    return true;
  }

  async save(): Promise<void> {
    try {
      const { survey } = this.#document;
      const name = fileName(readContents(survey).site.name);
      const saved = await saveFile(saveSurvey(survey), name, surveyFile, this.#handle);
      if (!saved) return;
      this.#handle = saved.handle;
      if (survey === this.#document.survey) this.#saving.savedToFile();
      this.#view.notice = 'Saved to a file.';
    } catch (error) {
      this.#view.notice = `The file could not be saved: ${messageOf(error)}`;
    }
  }

  /** Goes on with this tab's state as a survey of its own. */
  async keepMine(): Promise<void> {
    this.#document.continueAs(newRecord());
    this.#handle = null;
    this.#saving.opened(0);
    tabKeeps(this.#document.id);
    const { name } = readContents(this.#document.survey).site;
    this.#document.perform('keep as a copy', (s) => setSite(s, { name: copyName(name) }));
    await this.#saving.flush();
  }

  async takeTheirs(theirs: StoredSurvey): Promise<void> {
    this.follow((await this.#store.read(theirs.id)) ?? theirs);
  }

  /** Shows another tab's newer state of the open survey; what is selected stays so. */
  follow(theirs: StoredSurvey): void {
    const { selected } = this.#view;
    const handle = this.#handle;
    if (!this.#showStored(theirs)) return;
    this.#handle = handle;
    if (this.#document.survey.features.some((f) => f.id === selected)) this.#view.select(selected);
  }

  #showStored({ text, id, revision, name }: StoredSurvey): boolean {
    return this.#put(text, id, revision, name || 'The kept survey');
  }

  #put(text: string, id: string, revision: number, source: string): boolean {
    const opened = openSurvey(text);
    if (!opened.ok) {
      this.#view.notice = `${source} was not opened. ${opened.reason} The survey that was open stays.`;
      return false;
    }
    this.#handle = null;
    this.#view.reset();
    this.#document.open({ id, survey: opened.survey, problems: opened.problems, readOnly: opened.newer });
    this.#saving.opened(revision);
    tabKeeps(id);
    this.#view.notice = setAsideWords(opened);
    return true;
  }
}

/** What of a file could not be used, in a sentence; null when all of it could. */
function setAsideWords({ survey, problems }: Extract<Opened, { ok: true }>): string | null {
  const aside = [...problems, ...readContents(survey).problems].filter((problem) => !problem.used).length;
  if (aside === 0) return null;
  return `${aside === 1 ? 'One thing' : `${aside} things`} in this survey could not be used. Nothing is lost: the list of problems names each.`;
}

/** "Field (copy)", and "Field (copy 2)" for a copy of that. */
export function copyName(name: string): string {
  const [, base = name, number] = /^(.*) \(copy(?: (\d+))?\)$/.exec(name) ?? [];
  const copied = base !== name;
  return `${base || 'Unnamed survey'} (copy${copied ? ` ${Number(number ?? 1) + 1}` : ''})`;
}
