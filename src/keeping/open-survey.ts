import { isLong, readSafely, readSurvey, type Reading } from './opening';
import type { OpeningRequest } from './opening-messages';
import type { NewSurvey } from '../ports/files';
import type { SurveyDocument } from '../state/document.svelte';
import type { Saving } from '../state/saving.svelte';
import { Turns } from '../state/turns';
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
  /** The page begins with a kept survey that cannot be shown. */
  readonly cannotShow: (stored: StoredSurvey, reason: string) => void;
}

/**
 * Which survey this tab shows: putting one in the place of another, without losing what was open. What the user chose
 * last is shown, however long the one before takes to be read; another tab's state never comes before that.
 */
export class OpenSurvey {
  readonly #needs: Needs;
  readonly #opening = new Turns();
  readonly #following = new Turns();
  /** What an opening waits for: given up when another survey is chosen. */
  #reading: Reading | null = null;
  /** The file that the next "Save" writes to again. */
  #handle: FileSystemFileHandle | null = null;

  constructor(needs: Needs) {
    this.#needs = needs;
  }

  get id(): string {
    return this.#needs.document.id;
  }

  /** What was open in this tab, else the survey changed last, else the sample site. */
  async resume(): Promise<void> {
    const isLast = this.#begin();
    const { store, cannotShow } = this.#needs;
    const id = tabKept();
    const stored = (id === null ? null : await store.read(id)) ?? (await store.latest());
    if (!stored) return this.#showSample(isLast);
    const opened = await this.#read(stored.text, nameOf(stored), isLast);
    if (!opened || !isLast()) return;
    if (opened.ok) this.#put(opened, stored.id, stored.revision);
    else cannotShow(stored, opened.reason);
  }

  /** The survey changed last, else the sample site: what was open is left as it is. */
  async openLatest(): Promise<void> {
    const isLast = this.#begin();
    const stored = await this.#needs.store.latest();
    const opened = stored && (await this.#read(stored.text, nameOf(stored), isLast));
    if (!isLast()) return;
    if (stored && opened?.ok) this.#put(opened, stored.id, stored.revision);
    else await this.#showSample(isLast);
  }

  async openKept(id: string): Promise<void> {
    const isLast = this.#begin();
    const { saving, store, view } = this.#needs;
    await saving.flush();
    const stored = await store.read(id);
    if (!isLast()) return;
    if (!stored) {
      view.notice = 'This survey is not kept on this device any more.';
      return;
    }
    const opened = await this.#readOrSay(stored.text, nameOf(stored), isLast);
    if (opened) await this.#leaveFor(isLast, () => this.#put(opened, id, stored.revision));
  }

  async openSample(): Promise<void> {
    const isLast = this.#begin();
    const text = await this.#sampleText(isLast);
    if (text !== null) await this.#show(text, {}, isLast);
  }

  /** Puts what is open into safety and goes on; where that fails the user decides. `risk` says what would be lost. */
  async leave(
    goOn: () => Promise<void> | void,
    risk = 'Another one in its place would lose it.',
  ): Promise<void> {
    const { saving, view } = this.#needs;
    await saving.flush();
    if (saving.theirs !== null && saving.atRisk) await this.keepMine();
    if (!saving.atRisk) return goOn();
    view.offer(`The open survey is not kept on this device. ${risk}`, [
      { label: 'Save to a file', run: () => void this.save() },
      { label: 'Discard the changes', run: () => void goOn() },
    ]);
  }

  /**
   * Shows the survey in a text or file, under a new key, once what is open is safe; when it is none the open survey
   * stays, and the notice says why. `changed`: it is to be kept at once, not with the first edit.
   */
  show(source: OpeningRequest, options: ShowOptions = {}): Promise<void> {
    return this.#show(source, options, this.#begin());
  }

  /** Shows a survey that is being made, and keeps it. */
  async start(make: () => Promise<NewSurvey>): Promise<void> {
    const isLast = this.#begin();
    const { survey, ...said } = await make();
    if (isLast()) await this.#show(saveSurvey(survey), { changed: true, ...said }, isLast);
  }

  async save(): Promise<void> {
    const { document, saving, view } = this.#needs;
    try {
      const { survey, id } = document;
      const name = fileName(readContents(survey).site.name);
      const saved = await saveFile(saveSurvey(survey), name, surveyFile, this.#handle);
      if (!saved) return;
      // Another survey may be open by now: it must not be written over this one's file.
      if (id === document.id) this.#handle = saved.handle;
      if (survey === document.survey) saving.savedToFile();
      view.notice = 'Saved to a file.';
    } catch (error) {
      view.notice = `The file could not be saved: ${messageOf(error)}`;
    }
  }

  /** Goes on with this tab's state as a survey of its own. */
  async keepMine(): Promise<void> {
    const { document, saving } = this.#needs;
    document.continueAs(newRecord());
    this.#handle = null;
    saving.opened(0);
    tabKeeps(document.id);
    const { name } = readContents(document.survey).site;
    document.perform('keep as a copy', (s) => setSite(s, { name: copyName(name) }));
    await saving.flush();
  }

  async takeTheirs(theirs: StoredSurvey): Promise<void> {
    await this.follow((await this.#needs.store.read(theirs.id)) ?? theirs);
  }

  /**
   * Shows another tab's newer state of the open survey. The user's view of it stays: what is selected, the tool in
   * hand, what is being drawn, the camera. False when that state is not shown: a newer one has come, this one was
   * changed or another survey opened while a long one was read.
   */
  async follow(theirs: StoredSurvey): Promise<boolean> {
    const isLast = this.#following.begin();
    const { document, saving, view } = this.#needs;
    const { survey } = document;
    if (theirs.id !== document.id) return false;
    const opened = await readSafely(readSurvey(theirs.text, () => undefined));
    // Changed here meanwhile: the next write finds the two states, and the user decides.
    if (!isLast() || document.survey !== survey || !opened) return false;
    if (!opened.ok) {
      view.notice = `What another tab has saved is not shown. ${opened.reason} The survey stays as it was here.`;
      return false;
    }
    document.open({
      id: theirs.id,
      survey: opened.survey,
      problems: opened.problems,
      readOnly: opened.newer,
    });
    saving.opened(theirs.revision);
    if (!document.survey.features.some(({ id }) => id === view.selection.id)) view.selection.select(null);
    if (opened.newer) view.hand.tool = 'select';
    view.surveyChanged(document.survey);
    return true;
  }

  #begin(): () => boolean {
    this.#reading?.cancel();
    this.#reading = null;
    return this.#opening.begin();
  }

  async #show(
    source: OpeningRequest,
    { name, handle, changed, notice, life }: ShowOptions,
    isLast: () => boolean,
  ): Promise<void> {
    const { document, saving, view } = this.#needs;
    const opened = await this.#readOrSay(source, name ?? 'The survey', isLast);
    if (!opened) return;
    await this.#leaveFor(isLast, () => {
      this.#put(opened, newRecord(), 0);
      this.#handle = handle ?? null;
      if (changed && !document.readOnly) saving.changed();
      if (notice === null) view.notice = null;
      else if (notice !== undefined) view.offer(notice, [], life);
    });
  }

  async #showSample(isLast: () => boolean): Promise<void> {
    const text = await this.#sampleText(isLast);
    const opened = text === null ? null : await this.#readOrSay(text, 'The sample site', isLast);
    if (opened) this.#put(opened, newRecord(), 0);
  }

  /** Null when it cannot be had, which the notice says, or when another survey has been chosen since. */
  async #sampleText(isLast: () => boolean): Promise<string | null> {
    try {
      const text = await this.#needs.loadSample();
      return isLast() ? text : null;
    } catch {
      if (isLast()) this.#needs.view.notice = 'The sample site could not be loaded. Is there a network?';
      return null;
    }
  }

  /** Leaves what is open for the survey chosen last. */
  #leaveFor(isLast: () => boolean, put: () => void): Promise<void> {
    return this.leave(() => {
      if (isLast()) put();
    });
  }

  /** The survey; null when it is none, which the notice says, was given up, or another has been chosen since. */
  async #readOrSay(source: OpeningRequest, name: string, isLast: () => boolean): Promise<Good | null> {
    const opened = await this.#read(source, name, isLast);
    if (!opened || !isLast()) return null;
    if (opened.ok) return opened;
    this.#needs.view.notice = `${name} was not opened. ${opened.reason} The survey that was open stays.`;
    return null;
  }

  /** Reads, a long text with its progress in the notice; null when it was given up. */
  async #read(source: OpeningRequest, name: string, isLast: () => boolean): Promise<Opened | null> {
    const { view } = this.#needs;
    const long = isLong(source);
    const say = (how: string) => {
      if (long && isLast())
        view.offer(`Reading ${name}: ${how}`, [{ label: 'Cancel', run: () => reading.cancel() }]);
    };
    const reading = readSurvey(source, (share) => say(`${Math.floor(share * 10)}0 %`));
    this.#reading = reading;
    say('…');
    const opened = await readSafely(reading);
    if (long && isLast()) view.notice = null;
    return opened;
  }

  #put(opened: Good, id: string, revision: number): void {
    const { document, saving, view } = this.#needs;
    this.#handle = null;
    view.reset();
    document.open({ id, survey: opened.survey, problems: opened.problems, readOnly: opened.newer });
    saving.opened(revision);
    tabKeeps(id);
    view.notice = setAsideWords(opened);
  }
}

const nameOf = ({ name }: StoredSurvey): string => name || 'The kept survey';

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
