import { archiveName, filesOf } from './export-surveys';
import { copyName, newRecord, type OpenSurvey } from './open-survey';
import type { SurveyDocument } from '../state/document.svelte';
import type { Saving } from '../state/saving.svelte';
import type { View } from '../state/view.svelte';
import type { Autosave } from '../storage/autosave';
import { pickFiles, saveFile } from '../storage/files';
import { askForPersistence, persistence, room } from '../storage/persistence';
import type { Outcome, SurveyToKeep } from '../storage/records';
import type { Shelf } from '../storage/shelf';
import { setSite } from '../survey/edits/set-members';
import { openSurvey, type Opened } from '../survey/open';
import { saveSurvey } from '../survey/save';
import { archiveFile, factsOf, messageOf, surveyFile } from './survey-files';
import type { KeptList, KeptSurvey, Surveys } from '../ports/kept-surveys';

/** ms that a deleted survey can still be put back. */
const keptDeleted = 30 * 24 * 3_600_000;

export interface ListNeeds {
  readonly document: SurveyDocument;
  readonly open: OpenSurvey;
  readonly saving: Saving;
  readonly view: View;
  readonly store: Pick<Autosave, 'read' | 'write'>;
  readonly shelf: Shelf;
  readonly now: () => number;
}

/** The surveys on this device: the part of the composition root behind the list. */
export class SurveyList implements Surveys {
  list = $state.raw<KeptList | null>(null);
  readonly #needs: ListNeeds;

  constructor(needs: ListNeeds) {
    this.#needs = needs;
  }

  get openId(): string {
    return this.#needs.document.id;
  }

  async refresh(): Promise<void> {
    await this.#needs.saving.flush();
    await this.#read();
  }

  close(): void {
    this.list = null;
  }

  /** Another tab has changed what is kept. */
  async heard(): Promise<void> {
    if (this.list !== null) await this.#read();
  }

  async #read(): Promise<void> {
    const { shelf } = this.#needs;
    const [listed, keeping, space] = await Promise.all([shelf.list(), persistence(), room()]);
    const all = listed.ok ? listed.value : [];
    this.list = {
      kept: all.filter(({ deleted }) => deleted === null),
      deleted: all.filter(({ deleted }) => deleted !== null),
      trouble: listed.ok ? null : listed.reason,
      keeping,
      room: space,
    };
  }

  async askToKeep(): Promise<void> {
    await askForPersistence();
    await this.refresh();
  }

  open(id: string): Promise<void> {
    return this.#needs.open.openKept(id);
  }

  async rename({ id, name: old }: KeptSurvey, name: string): Promise<void> {
    const { document, saving, view, store } = this.#needs;
    if (name === old) return;
    if (id === document.id && !document.readOnly) {
      document.perform('rename survey', (s) => setSite(s, { name }));
      await saving.flush();
    } else {
      await this.#copy(id, async (stored, opened) => {
        const survey = setSite(opened.survey, { name });
        const written = await store.write(
          { ...stored, name, facts: factsOf(survey), text: saveSurvey(survey) },
          stored.revision,
        );
        if (!written.ok) view.notice = `"${old}" was not renamed: ${whyNot(written)}.`;
      });
    }
    await this.refresh();
  }

  async duplicate({ id, name: old }: KeptSurvey): Promise<void> {
    const { saving, view, store, now } = this.#needs;
    await saving.flush();
    await this.#copy(id, async (_stored, opened) => {
      const name = copyName(old);
      const survey = setSite(opened.survey, { name });
      const copy: SurveyToKeep = {
        id: newRecord(),
        name,
        changed: now(),
        facts: factsOf(survey),
        text: saveSurvey(survey),
      };
      const written = await store.write(copy, 0);
      view.notice = written.ok
        ? `"${name}" is kept beside "${old}".`
        : `"${old}" was not duplicated: ${whyNot(written)}.`;
    });
    await this.refresh();
  }

  /** Deletes, with an undo in the notice; a survey that was open gives its place to the one changed last. */
  async remove({ id, name }: KeptSurvey): Promise<void> {
    const { open, saving, shelf, view, now } = this.#needs;
    await saving.flush();
    const wasOpen = id === open.id;
    const removed = await shelf.remove(id, now());
    if (removed.ok && wasOpen) await open.openLatest();
    if (removed.ok)
      view.offer(`"${name || 'Unnamed survey'}" was deleted.`, [
        { label: 'Undo', run: () => void this.putBack(id, wasOpen) },
      ]);
    else view.notice = `"${name}" was not deleted: ${removed.reason}.`;
    await this.refresh();
  }

  async putBack(id: string, openIt = false): Promise<void> {
    await this.#did(this.#needs.shelf.putBack(id));
    if (openIt) await this.open(id);
    await this.refresh();
  }

  async discard(id: string): Promise<void> {
    await this.#did(this.#needs.shelf.discard({ id }));
    // There may be room now for what could not be kept.
    await this.refresh();
  }

  /** Forgets what was deleted long ago. */
  async tidy(): Promise<void> {
    const { shelf, now } = this.#needs;
    await shelf.discard({ deletedBefore: now() - keptDeleted });
  }

  async importFiles(given?: readonly File[]): Promise<void> {
    const { view, store, shelf, now } = this.#needs;
    try {
      const files = given ?? (await pickFiles([surveyFile, archiveFile]));
      if (files.length === 0) return;
      const { importSurveys, importWords } = await import('./import-surveys');
      view.notice = importWords(await importSurveys(files, { store, shelf, newId: newRecord, now }));
    } catch (error) {
      view.notice = `The files could not be read: ${messageOf(error)}`;
    }
    await this.refresh();
  }

  async exportAll(): Promise<void> {
    const { saving, view, store, now } = this.#needs;
    await saving.flush();
    const kept = this.list?.kept ?? [];
    const count = `${kept.length} ${kept.length === 1 ? 'survey' : 'surveys'}`;
    try {
      // Not waited for: a browser lets a page ask where to save only shortly after a click.
      const content = import('../storage/archive').then(({ pack }) => pack(filesOf(kept, store)));
      const saved = await saveFile(content, archiveName(now()), archiveFile, null);
      if (saved) view.notice = `${count} saved in one archive.`;
    } catch (error) {
      view.notice = `The archive could not be saved: ${messageOf(error)}`;
    }
  }

  /** Reads a kept survey to make another of it; says why when that cannot be. */
  async #copy(
    id: string,
    make: (
      stored: NonNullable<Awaited<ReturnType<Autosave['read']>>>,
      opened: Opened & { ok: true },
    ) => Promise<void>,
  ): Promise<void> {
    const { store, view } = this.#needs;
    const stored = await store.read(id);
    const opened = stored && openSurvey(stored.text);
    if (!stored || !opened) view.notice = 'This survey is not kept on this device any more.';
    else if (!opened.ok) view.notice = `"${stored.name}" cannot be read: ${opened.reason}`;
    else if (opened.newer)
      view.notice = `A newer Sunside wrote "${stored.name}": it cannot be changed here. Opening it and saving it to a file works.`;
    else await make(stored, opened);
  }

  async #did(outcome: Promise<Outcome<void>>): Promise<void> {
    const { view } = this.#needs;
    const done = await outcome;
    view.notice = done.ok ? null : `That could not be done: ${done.reason}.`;
  }
}

const whyNot = (written: Exclude<Awaited<ReturnType<Autosave['write']>>, { ok: true }>): string =>
  written.why === 'conflict' ? 'another tab has just changed it' : written.reason;
