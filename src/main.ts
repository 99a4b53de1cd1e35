import '../styles/tokens.css';
import '../styles/base.css';
import { mount } from 'svelte';
import { AirfieldCatalogue } from './airfields';
import { SunsideApp } from './app.svelte';
import { SurveyFiles } from './files';
import { Derived } from './state/derived.svelte';
import { SurveyDocument } from './state/document.svelte';
import { Saving } from './state/saving.svelte';
import { View } from './state/view.svelte';
import { Autosave } from './storage/autosave';
import { newSurvey } from './survey/new-survey';
import { saveSurvey } from './survey/save';
import Root from './ui/Root.svelte';

const sampleFiles = import.meta.glob<string>('../sample-sites/*.geojson', {
  query: '?url',
  import: 'default',
  eager: true,
});
const sampleUrl = Object.entries(sampleFiles).find(([name]) => !name.endsWith('-plan.geojson'))?.[1] ?? '';
const planUrl = Object.entries(sampleFiles).find(([name]) => name.endsWith('-plan.geojson'))?.[1] ?? '';

/** The composition root: the only place that knows every room. */
async function start(target: HTMLElement): Promise<void> {
  const now = () => Date.now();
  const store = new Autosave();
  const view = new View();
  const survey = new SurveyDocument(
    { id: 'empty', survey: newSurvey({}), problems: [], readOnly: false },
    () => saving.changed(),
  );
  const derived = new Derived(survey, view, now);
  const saving = new Saving(
    (survey, revision) => store.write(survey, revision),
    () => {
      const { id, survey: present } = survey;
      return { id, name: derived.contents.site.name, text: () => saveSurvey(present) };
    },
    now,
  );
  const files = new SurveyFiles(survey, saving, view, store, async () => (await fetch(sampleUrl)).text());
  const app = new SunsideApp(survey, view, derived, files, new AirfieldCatalogue(files));
  await files.resume();
  mount(Root, { target, props: { app } });
  // A phone that puts the page away may never come back to it.
  addEventListener('visibilitychange', () => void saving.flush());
  addEventListener('pagehide', () => void saving.flush());
}

const target = document.getElementById('app');
if (!target) throw new Error('expected an element #app in the page');
void start(target);
