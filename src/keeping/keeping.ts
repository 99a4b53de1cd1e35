import { SurveyFiles } from './files';
import { newRecord, OpenSurvey } from './open-survey';
import { recoverLastWords } from './recover';
import type { SurveyDocument } from '../state/document.svelte';
import { Saving } from '../state/saving.svelte';
import type { View } from '../state/view.svelte';
import { Autosave } from '../storage/autosave';
import { Database } from '../storage/database';
import { forgetLastWords, leaveLastWords } from '../storage/last-words';
import { OtherTabs } from '../storage/other-tabs';
import { askForPersistenceAtTimes } from '../storage/persistence';
import type { KeptNote } from '../storage/records';
import { Shelf } from '../storage/shelf';
import { savingSurvey } from '../survey/save';
import { SurveyRescue } from './rescue.svelte';
import { aboutSurvey } from './survey-files';
import { SurveyList } from './surveys.svelte';

export interface KeepingNeeds {
  readonly document: SurveyDocument;
  readonly view: View;
  /** Text of the sample site. */
  readonly loadSample: () => Promise<string>;
  readonly now: () => number;
}

export interface Keeping {
  readonly saving: Saving;
  readonly store: Pick<Autosave, 'read'>;
  readonly files: SurveyFiles;
  readonly rescue: SurveyRescue;
  /** Puts what is open into safety and goes on; where that fails the user decides. */
  readonly leave: (goOn: () => Promise<void>) => Promise<void>;
  /** Opens what this tab had open, and begins to watch the page and the other tabs. */
  start(): Promise<void>;
}

/** Everything that keeps surveys safe: built here, used through `Saving` and `Files`. */
export function keepSurveys({ document, view, loadSample, now }: KeepingNeeds): Keeping {
  const database = new Database();
  const tabs = new OtherTabs();
  const store = new Autosave(database, tabs.tell);
  const saving: Saving = new Saving({
    write: async (survey, revision) => {
      const written = await store.write(survey, revision);
      if (written.ok) void askForPersistenceAtTimes(now());
      return written;
    },
    read: (id) => store.read(id),
    open: () => {
      const { id, survey } = document;
      return { id, ...aboutSurvey(survey), text: () => savingSurvey(survey) };
    },
    leave: (survey, known) => leaveLastWords({ survey, known }),
    forget: () => forgetLastWords(),
    follow: (theirs) => open.follow(theirs),
    now,
  });
  const open: OpenSurvey = new OpenSurvey({
    document,
    saving,
    view,
    store,
    loadSample,
    cannotShow: (stored, reason) => rescue.found(stored, reason),
  });
  const shelf = new Shelf(database, tabs.tell);
  const surveys = new SurveyList({ document, open, saving, view, store, shelf, now });
  const files = new SurveyFiles({ open, saving, view, surveys });
  const rescue = new SurveyRescue({ document, view, files });

  const heard = (note: KeptNote) => {
    if (note.revision === null && note.id === document.id)
      view.notice = 'This survey was deleted in another tab. It is kept again as soon as it is changed here.';
    void saving.heard(note);
    void surveys.heard();
  };
  const shownAgain = async () => {
    // Where tabs cannot tell each other, this is when one learns what another has done meanwhile.
    const kept = await store.read(document.id);
    if (kept) await saving.heard(kept);
  };

  return {
    saving,
    store,
    files,
    rescue,
    leave: (goOn) => open.leave(goOn, 'Loading the page anew would lose it.'),
    async start() {
      const copies = await recoverLastWords(store, newRecord);
      await open.resume();
      if (copies.length > 0)
        view.notice = `The last change before a page was closed is kept as "${copies.join('", "')}": another tab had changed that survey too.`;
      tabs.listen(heard);
      // A phone that puts the page away may never come back to it.
      addEventListener('pagehide', () => void saving.pageGoes(false));
      window.document.addEventListener('visibilitychange', () => {
        if (window.document.visibilityState === 'visible') void shownAgain();
        else void saving.pageGoes(true);
      });
      addEventListener('beforeunload', (event) => {
        if (saving.atRisk) event.preventDefault();
      });
      void surveys.tidy();
    },
  };
}
