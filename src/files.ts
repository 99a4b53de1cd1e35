import type { SurveyDocument } from './state/document.svelte';
import type { Saving } from './state/saving.svelte';
import type { View } from './state/view.svelte';
import type { Autosave, StoredSurvey } from './storage/autosave';
import { pickFile, saveFile, type FileKind } from './storage/files';
import { tabKeeps, tabKept } from './storage/tab';
import type { Survey } from './survey/document';
import { freshId } from './survey/ids';
import { openSurvey } from './survey/open';
import { saveSurvey, surveyExtension, surveyMediaType } from './survey/save';
import type { Files } from './ui/app-context';

const surveyFile: FileKind = {
  mediaType: surveyMediaType,
  extensions: [surveyExtension, '.json'],
  description: 'Sunside survey (GeoJSON)',
};

/** A record of its own for every survey that is opened or started. */
const newRecord = () => freshId(new Set());

/** Opening, saving and starting surveys: the part of the composition root that knows files and storage. */
export class SurveyFiles implements Files {
  readonly #document: SurveyDocument;
  readonly #saving: Saving;
  readonly #view: View;
  readonly #store: Autosave;
  readonly #loadSample: () => Promise<string>;
  /** The file that the next "Save" writes to again. */
  #handle: FileSystemFileHandle | null = null;

  constructor(
    document: SurveyDocument,
    saving: Saving,
    view: View,
    store: Autosave,
    loadSample: () => Promise<string>,
  ) {
    this.#document = document;
    this.#saving = saving;
    this.#view = view;
    this.#store = store;
    this.#loadSample = loadSample;
  }

  get status() {
    return this.#saving.status;
  }

  get conflict() {
    const theirs = this.#saving.theirs;
    if (!theirs) return null;
    return { keepMine: () => this.#keepMine(), takeTheirs: () => this.#takeTheirs(theirs) };
  }

  /** What was open in this tab, else the survey changed last, else the sample site. */
  async resume(): Promise<void> {
    const id = tabKept();
    const stored = (id ? await this.#store.read(id) : null) ?? (await this.#store.latest());
    if (stored && this.#show(stored.text, stored.id, stored.revision)) return;
    await this.openSample();
  }

  async open(): Promise<void> {
    try {
      const file = await pickFile(surveyFile);
      if (file) await this.#openText(file.name, file.text, file.handle);
    } catch (error) {
      this.#view.notice = `The file could not be read: ${messageOf(error)}`;
    }
  }

  async openFile(file: File): Promise<void> {
    await this.#openText(file.name, await file.text(), null);
  }

  async openSample(): Promise<void> {
    await this.#saving.flush();
    this.#show(await this.#loadSample(), newRecord(), 0);
  }

  async start(survey: Survey, notice: string | null): Promise<void> {
    await this.#saving.flush();
    this.#show(saveSurvey(survey), newRecord(), 0);
    this.#saving.changed();
    this.#view.notice = notice;
  }

  async save(): Promise<void> {
    try {
      const text = saveSurvey(this.#document.survey);
      const saved = await saveFile(text, fileName(this.#document.survey), surveyFile, this.#handle);
      if (!saved) return;
      this.#handle = saved.handle;
      this.#view.notice = 'Saved to a file.';
    } catch (error) {
      this.#view.notice = `The file could not be saved: ${messageOf(error)}`;
    }
  }

  async #openText(name: string, text: string, handle: FileSystemFileHandle | null): Promise<void> {
    await this.#saving.flush();
    if (!this.#show(text, newRecord(), 0, name)) return;
    this.#handle = handle;
    if (!this.#document.readOnly) this.#saving.changed();
  }

  /** Shows the survey in a text; when it is none the open survey stays, and the notice says why. */
  #show(text: string, id: string, revision: number, file?: string): boolean {
    const opened = openSurvey(text);
    if (!opened.ok) {
      this.#view.notice = `${file ?? 'The kept survey'} was not opened. ${opened.reason} The survey that was open stays.`;
      return false;
    }
    this.#handle = null;
    this.#view.reset();
    this.#document.open({ id, survey: opened.survey, problems: opened.problems, readOnly: opened.newer });
    this.#saving.opened(revision);
    tabKeeps(id);
    if (opened.newer)
      this.#view.notice =
        'This survey was written by a newer Sunside. It is shown, but cannot be changed here.';
    return true;
  }

  async #keepMine(): Promise<void> {
    this.#document.open({
      id: newRecord(),
      survey: this.#document.survey,
      problems: this.#document.openingProblems,
      readOnly: false,
    });
    this.#saving.opened(0);
    tabKeeps(this.#document.id);
    this.#saving.changed();
    await this.#saving.flush();
  }

  async #takeTheirs(theirs: StoredSurvey): Promise<void> {
    const newest = (await this.#store.read(theirs.id)) ?? theirs;
    this.#show(newest.text, newest.id, newest.revision);
  }
}

const messageOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

/** A file name that every system takes, from the survey's name. */
function fileName(survey: Survey): string {
  const site = survey.sunside['site'];
  const name = typeof site === 'object' && site !== null && 'name' in site ? site.name : null;
  const plain =
    typeof name === 'string'
      ? name
          .normalize('NFKD')
          .replace(/[^\p{L}\p{N}]+/gu, '-')
          .replace(/^-+|-+$/g, '')
      : '';
  return `${plain.slice(0, 60).toLowerCase() || 'survey'}${surveyExtension}`;
}
