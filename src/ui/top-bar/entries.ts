import type { Files } from '../../ports/files';
import type { Imports } from '../../ports/imports';
import type { Merging } from '../../ports/merging';
import type { LazyDialog } from '../dialog/lazy-dialog';
import type { PageAction } from './shortcuts';

interface Named {
  /** Unlike that of any other entry. */
  readonly label: string;
  /** What it is for, in a few words. */
  readonly title: string;
  /** In the bar where the page is wide and in the menu of a narrow one; or in the menu of every page. */
  readonly place: 'bar' | 'menu';
  /** The action of the short-cut table that does the same. */
  readonly action?: PageAction;
}
/** What the entries that open no dialog do something with. */
export interface EntryNeeds {
  readonly files: Pick<Files, 'open' | 'save'>;
  readonly imports: Pick<Imports, 'pick'>;
  readonly merging: Pick<Merging, 'withFile'>;
  readonly view: { readonly foot: { open: string } };
}
export type Entry = Named & ({ readonly run: (on: EntryNeeds) => void } | { readonly dialog: LazyDialog });

/** The search has a place of its own in every bar. */
export const searchDialog: LazyDialog = () => import('../search/AirfieldSearch.svelte');
export const kitDialog: LazyDialog = () => import('../kit-editor/KitEditor.svelte');
export const sheetDialog: LazyDialog = () => import('../sheet/SheetDialog.svelte');
export const requestDialog: LazyDialog = () => import('../request/RequestDialog.svelte');
export const preferencesDialog: LazyDialog = () => import('../preferences/PreferencesDialog.svelte');
const tripDialog: LazyDialog = () => import('../trip/TripDialog.svelte');
export const shortcutsDialog: LazyDialog = () => import('./ShortcutsDialog.svelte');

/** What the top bar and its menu hold besides the search, undo and redo: one line each, in their order. */
export const entries: readonly Entry[] = [
  {
    label: 'Surveys',
    title: 'The surveys on this device',
    place: 'bar',
    dialog: () => import('../surveys/SurveysDialog.svelte'),
  },
  {
    label: 'Open',
    title: 'Open a survey file',
    place: 'bar',
    action: 'open',
    run: ({ files }) => void files.open(),
  },
  {
    label: 'Bring in',
    title: 'Bring in maps, runways, waypoints and recorded flights that others have made',
    place: 'bar',
    run: ({ imports }) => void imports.pick(),
  },
  {
    label: 'Save',
    title: 'Save the survey to a file',
    place: 'bar',
    action: 'save',
    run: ({ files }) => void files.save(),
  },
  {
    label: 'Pass on',
    title: 'Hand this survey to somebody, or to your other device',
    place: 'menu',
    dialog: () => import('../pass-on/PassOnDialog.svelte'),
  },
  {
    label: 'Merge',
    title: 'Compare another survey of this field with the open one, and take from it what you want',
    place: 'menu',
    run: ({ merging }) => void merging.withFile(),
  },
  {
    label: 'Where to stand',
    title: 'Shades where round the airfield pictures are good, and lists places',
    place: 'menu',
    run: ({ view }) => (view.foot.open = 'places'),
  },
  {
    label: 'At the field',
    title: 'What comes past where you stand, now',
    place: 'menu',
    run: ({ view }) => (view.foot.open = 'now'),
  },
  {
    label: 'Field sheet',
    title: 'The day on one or two pages, to print and to take along',
    place: 'menu',
    dialog: sheetDialog,
  },
  {
    label: 'Write a request',
    title: 'A letter to the airfield’s office: may I stand there?',
    place: 'menu',
    dialog: requestDialog,
  },
  {
    label: 'Which field',
    title: 'Your surveys side by side for a day or a week, and a trip over several of them',
    place: 'menu',
    dialog: tripDialog,
  },
  {
    label: 'Near me',
    title: 'Airfields within a distance or a ride, small ones as well',
    place: 'menu',
    dialog: () => import('../near/NearDialog.svelte'),
  },
  {
    label: 'Kit',
    title: 'Bodies, lenses and subjects',
    place: 'menu',
    dialog: kitDialog,
  },
  {
    label: 'Preferences',
    title: 'Look, units, clock, language of dates',
    place: 'menu',
    dialog: preferencesDialog,
  },
  {
    label: 'Short cuts',
    title: 'What the keys do',
    place: 'menu',
    action: 'shortcuts',
    dialog: shortcutsDialog,
  },
];
