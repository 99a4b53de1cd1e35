import { previewOf, surroundingsOf } from './import-preview';
import type { Proposal } from '../imports/bring-in/types';
import { ImportWorker } from '../imports/bring-in/client';
import { practice } from '../imports/practice';
import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import { inSlices, pagePauses } from '../state/in-slices';
import { Turns } from '../state/turns';
import type { View } from '../state/view.svelte';
import type { Position, Survey } from '../survey/document';
import { bringingIn } from '../survey/edits/bring-in';
import { messageOf } from '../keeping/survey-files';
import type { Airfields } from '../ports/airfields';
import type { Files } from '../ports/files';
import type { ImportAnswers, ImportPreview, ImportUnderWay } from '../ports/imports';

export interface ImportNeeds {
  readonly document: SurveyDocument;
  readonly view: View;
  readonly derived: Pick<Derived, 'contents' | 'ahead'>;
  readonly files: Pick<Files, 'openFile'>;
  readonly airfields: Pick<Airfields, 'startEmpty'>;
  readonly now: () => number;
}

const firstAnswers: ImportAnswers = {
  radius: practice.radius,
  buildingHeight: practice.buildingHeight,
  airfield: null,
  altitudeMeaning: 'sea-level',
  qnh: 1013.25,
  geoid: 0,
  altitudeUnit: 'ft',
  tieToRunway: false,
};

/** Files that are being brought in: read by a worker, previewed, and taken over in one undo step. */
export class ImportInProgress implements ImportUnderWay {
  readonly files: readonly string[];
  progress = $state.raw<number | null>(0);
  refused = $state.raw<readonly string[]>([]);
  answers = $state.raw<ImportAnswers>(firstAnswers);
  preview = $state.raw<ImportPreview | null>(null);
  taking = $state.raw(false);
  #endTaking = (): void => undefined;
  #unticked = $state.raw<readonly string[]>([]);
  #proposal: Proposal | null = null;
  readonly #worker = new ImportWorker();
  readonly #needs: ImportNeeds;
  readonly #done: () => void;
  readonly #questions = new Turns();
  /** The survey (id) that the proposal is for. */
  #for = '';

  constructor(files: readonly File[], needs: ImportNeeds, done: () => void) {
    this.files = files.map(({ name }) => name);
    this.#needs = needs;
    this.#done = done;
    this.#unlessItFails(this.#read(files));
  }

  get ticked(): readonly string[] {
    const names = this.preview?.groups.map(({ name }) => name) ?? [];
    return names.filter((name) => !this.#unticked.includes(name));
  }

  answer(answers: Partial<ImportAnswers>): void {
    this.#stopTaking();
    this.answers = { ...this.answers, ...answers };
    this.#unlessItFails(this.#propose());
  }

  tick(group: string, on: boolean): void {
    this.#stopTaking();
    const others = this.#unticked.filter((name) => name !== group);
    this.#unticked = on ? others : [...others, group];
  }

  take(): void {
    const proposal = this.#proposal;
    if (!proposal || this.taking) return;
    const { document } = this.#needs;
    // Another survey was opened under it: what would come into that one has not been shown yet.
    if (this.#for !== document.id) return this.#unlessItFails(this.#propose());
    const before = document.survey;
    this.taking = true;
    this.#endTaking = inSlices(this.#taken(before, proposal), pagePauses, (after) => {
      this.taking = false;
      // Changed under it: once more.
      if (document.survey !== before) return this.take();
      this.#show(before, after);
    });
  }

  /** The survey with what is ticked, and with its figures known: then it is shown without a stop. */
  *#taken(survey: Survey, { candidates, credits, site }: Proposal): Generator<void, Survey> {
    const features = candidates.filter(({ group }) => !this.#unticked.includes(group));
    const after = yield* bringingIn(survey, { features, credits, site });
    yield* this.#needs.derived.ahead(after);
    return after;
  }

  #show(before: Survey, after: Survey): void {
    const { document, view } = this.#needs;
    document.perform(`bring in ${this.files.join(', ')}`, () => after);
    const more = after.features.length - before.features.length;
    this.close();
    if (after === before) view.notice = 'Nothing has changed: all of it was there already.';
    else
      view.offer(
        `${more === 1 ? 'One thing is' : `${more} things are`} new in this survey. Check what came in against the ground before you rely on it.`,
        [{ label: 'Undo', run: () => document.undo() }],
        // Only while bringing in is the last step: else "Undo" would take back another one.
        { holds: (survey) => survey === after, then: null },
      );
  }

  close(): void {
    this.#stopTaking();
    this.#worker.stop();
    this.#questions.begin();
    this.#done();
  }

  /** Nothing has changed by then. */
  #stopTaking(): void {
    this.#endTaking();
    this.taking = false;
  }

  async #read(files: readonly File[]): Promise<void> {
    const { refused } = await this.#worker.ask('read', { files, now: this.#needs.now() }, (share) => {
      this.progress = share;
    });
    this.refused = refused;
    await this.#propose();
  }

  async #propose(): Promise<void> {
    const isLast = this.#questions.begin();
    const { document, derived } = this.#needs;
    const { id } = document;
    const surroundings = surroundingsOf(document.survey, derived.contents);
    const proposal = await this.#worker.ask('propose', { surroundings, answers: this.answers });
    if (!isLast()) return;
    this.#proposal = proposal;
    this.#for = id;
    this.preview = previewOf(proposal, document.survey, surroundings, (place) => this.#startAt(place));
    this.progress = null;
  }

  #unlessItFails(work: Promise<void>): void {
    work.catch((error: unknown) => {
      this.progress = null;
      this.refused = [`The files could not be read: ${messageOf(error)}`];
    });
  }

  /** A new survey at a place, in which the same files are previewed again. */
  async #startAt(place: Position): Promise<void> {
    const name = this.#proposal?.placeName ?? '';
    await this.#needs.airfields.startEmpty(name || 'New survey', place);
    await this.#propose();
  }
}
