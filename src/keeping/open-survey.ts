import { isLong, readSurvey } from './opening';
import type { OpeningRequest } from './opening-messages';
import type { SurveyDocument } from '../state/document.svelte';
import type { Saving } from '../state/saving.svelte';
import type { NoticeLife, View } from '../state/view.svelte';
import type { Autosave } from '../storage/autosave';
import { saveFile } from '../storage/files';
import type { StoredSurvey } from '../storage/records';
import { tabKeeps, tabKept } from '../storage/tab';
import { readContents } from '../survey/contents';
import { setSite } from '../survey/edits/set-members';
import { freshId } from '../survey/ids';
import type { Opened } from '../survey/open';
import { saveSurvey } from '../survey/save';
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
    if (!stored || !(await this.#showStored(stored))) await this.openLatest();
  }

  /** The survey changed last, else the sample site: what was open is left as it is. */
  async openLatest(): Promise<void> {
    const stored = await this.#store.latest();
    if (stored && (await this.#showStored(stored))) return;
    const opened = await this.#read(await this.#loadSample(), 'The sample site');
    if (opened) this.#put(opened, newRecord(), 0);
  }

  async openKept(id: string): Promise<void> {
    await this.#saving.flush();
    const stored = await this.#store.read(id);
    if (!stored) {
      this.#view.notice = 'This survey is not kept on this device any more.';
      return;
    }
    const opened = await this.#read(stored.text, stored.name || 'The kept survey');
    if (opened) await this.leave(() => this.#put(opened, id, stored.revision));
  }

  async openSample(): Promise<void> {
    await this.show(await this.#loadSample());
  }

  /** Puts what is open into safety and goes on; where that fails the user decides. `risk` says what would be lost. */
  async leave(
    goOn: () => Promise<void> | void,
    risk = 'Another one in its place would lose it.',
  ): Promise<void> {
    await this.#saving.flush();
    if (this.#saving.theirs !== null && this.#saving.atRisk) await this.keepMine();
    if (!this.#saving.atRisk) return goOn();
    this.#view.offer(`The open survey is not kept on this device. ${risk}`, [
      { label: 'Save to a file', run: () => void this.save() },
      { label: 'Discard the changes', run: () => void goOn() },
    ]);
  }

  /**
   * Shows the survey in a text or file, under a new key, once what is open is safe; when it is none the open survey
   * stays, and the notice says why. `changed`: it is to be kept at once, not with the first edit.
   */
  async show(
    source: OpeningRequest,
    { name, handle, changed, notice, life }: ShowOptions = {},
  ): Promise<void> {
    const opened = await this.#read(source, name ?? 'The survey');
    if (!opened) return;
    await this.leave(() => {
      this.#put(opened, newRecord(), 0);
      this.#handle = handle ?? null;
      if (changed && !this.#document.readOnly) this.#saving.changed();
      if (notice === null) this.#view.notice = null;
      else if (notice !== undefined) this.#view.offer(notice, [], life);
    });
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
    await this.follow((await this.#store.read(theirs.id)) ?? theirs);
  }

  /** Shows another tab's newer state of the open survey; what is selected stays so. */
  async follow(theirs: StoredSurvey): Promise<void> {
    const { survey } = this.#document;
    const opened = await this.#read(theirs.text, theirs.name || 'The kept survey');
    // Changed while a long one was read: the next write finds the two states, and the user decides.
    if (!opened || this.#document.survey !== survey) return;
    const { id: selected } = this.#view.selection;
    const handle = this.#handle;
    this.#put(opened, theirs.id, theirs.revision);
    this.#handle = handle;
    if (this.#document.survey.features.some((f) => f.id === selected)) this.#view.selection.select(selected);
  }

  async #showStored({ text, id, revision, name }: StoredSurvey): Promise<boolean> {
    const opened = await this.#read(text, name || 'The kept survey');
    if (opened) this.#put(opened, id, revision);
    return opened !== null;
  }

  /** Reads, a long text with its progress in the notice; null when it is none or was given up. */
  async #read(source: OpeningRequest, name: string): Promise<Good | null> {
    const view = this.#view;
    const reading = readSurvey(source, (share) => say(`${Math.floor(share * 10)}0 %`));
    const long = isLong(source);
    const say = (how: string) => {
      if (long) view.offer(`Reading ${name}: ${how}`, [{ label: 'Cancel', run: () => reading.cancel() }]);
    };
    say('…');
    const opened = await reading.opened;
    if (long) view.notice = null;
    if (opened && !opened.ok)
      view.notice = `${name} was not opened. ${opened.reason} The survey that was open stays.`;
    return opened?.ok ? opened : null;
  }

  #put(opened: Good, id: string, revision: number): void {
    this.#handle = null;
    this.#view.reset();
    this.#document.open({ id, survey: opened.survey, problems: opened.problems, readOnly: opened.newer });
    this.#saving.opened(revision);
    tabKeeps(id);
    this.#view.notice = setAsideWords(opened);
  }
}

type Good = Extract<Opened, { ok: true }>;

export interface ShowOptions {
  /** What messages call it. */
  readonly name?: string;
  readonly handle?: FileSystemFileHandle | null;
  readonly changed?: true;
  /** Said once it is shown, in place of what is odd about it. */
  readonly notice?: string | null;
  readonly life?: NoticeLife;
}

/** What of a file could not be used, in a sentence; null when all of it could. */
function setAsideWords({ survey, problems }: Good): string | null {
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
