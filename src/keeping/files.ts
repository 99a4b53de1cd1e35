import type { OpenSurvey } from './open-survey';
import type { Saving } from '../state/saving.svelte';
import type { View } from '../state/view.svelte';
import { pickFile } from '../storage/files';
import { messageOf, surveyFile } from './survey-files';
import type { SurveyList } from './surveys.svelte';
import type { Files, NewSurvey } from '../ports/files';

export interface FilesNeeds {
  readonly open: OpenSurvey;
  readonly saving: Saving;
  readonly view: View;
  readonly surveys: SurveyList;
}

/** Opening, saving and starting surveys: the part of the composition root that knows files. */
export class SurveyFiles implements Files {
  readonly surveys: SurveyList;
  readonly #open: OpenSurvey;
  readonly #saving: Saving;
  readonly #view: View;

  constructor({ open, saving, view, surveys }: FilesNeeds) {
    this.#open = open;
    this.#saving = saving;
    this.#view = view;
    this.surveys = surveys;
  }

  get status() {
    return this.#saving.status;
  }

  get refused() {
    return this.#saving.atRisk ? this.#saving.refused : null;
  }

  get conflict() {
    const { theirs } = this.#saving;
    if (!theirs) return null;
    return { keepMine: () => this.#open.keepMine(), takeTheirs: () => this.#open.takeTheirs(theirs) };
  }

  async open(): Promise<void> {
    try {
      const picked = await pickFile(surveyFile);
      if (picked) await this.#openText(picked.file, picked.handle);
    } catch (error) {
      this.#view.notice = `The file could not be read: ${messageOf(error)}`;
    }
  }

  async openFile(file: File): Promise<void> {
    try {
      if (/\.zip$/i.test(file.name)) await this.surveys.importFiles([file]);
      else await this.#openText(file, null);
    } catch (error) {
      this.#view.notice = `The file could not be read: ${messageOf(error)}`;
    }
  }

  openSample(): Promise<void> {
    return this.#open.openSample();
  }

  start(make: () => Promise<NewSurvey>): Promise<void> {
    return this.#open.start(make);
  }

  save(): Promise<void> {
    return this.#open.save();
  }

  #openText(file: File, handle: FileSystemFileHandle | null): Promise<void> {
    return this.#open.show(file, { name: file.name, handle, changed: true });
  }
}
