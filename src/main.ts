import '../styles/tokens.css';
import '../styles/base.css';
import { mount } from 'svelte';
import planUrl from '../sample-sites/tolverby-plan.geojson?url';
import terrainUrl from '../sample-sites/tolverby-terrain.tif?url';
import sampleUrl from '../sample-sites/tolverby.geojson?url';
import { LateAirfields } from './services/airfields';
import { contextsOf } from './app/contexts.svelte';
import { ImportDesk } from './services/bring-in.svelte';
import { SunsideBaseMaps } from './services/base-maps';
import { SunsideGroundHeights } from './services/ground-heights';
import { keepSurveys } from './keeping/keeping';
import { installedProgram } from './app/program.svelte';
import { BaseChoice } from './state/base-maps/base-choice.svelte';
import { Derived } from './state/derived.svelte';
import { SurveyDocument } from './state/document.svelte';
import { Mine } from './state/mine.svelte';
import { Own } from './state/own.svelte';
import { LateAirfieldTools } from './state/late-airfield-tools.svelte';
import { visitDay } from './figures/now/today';
import { FieldVisits } from './state/field-visits';
import { Look } from './state/look.svelte';
import { Preferences } from './state/preferences.svelte';
import { Ways } from './state/ways.svelte';
import { Terrain } from './state/terrain.svelte';
import { OtherFlying } from './state/other-flying.svelte';
import { SiteZones } from './state/site-zones.svelte';
import { View } from './state/view.svelte';
import { KeptFiles } from './storage/kept-files';
import { keptText } from './storage/kept-text';
import { SurveyMovements } from './services/movements';
import { newSurvey } from './survey/new-survey';
import { FileDownloads } from './services/downloads';
import { SurveyMerging } from './services/merging.svelte';
import { fragmentTaken, SurveyPassing } from './services/passing.svelte';
import { KitTables } from './services/tables';
import { followMine } from './app/follow-mine.svelte';
import { wear } from './app/wear.svelte';
import Root from './ui/Root.svelte';
import { WorkerLearning } from './services/learning';
import { SurveyTrips } from './services/trips';
import { WorkersPlaceSearch } from './services/place-search';
import { Weather } from './services/weather';
import { WindHistory } from './services/wind-history';
import { LateWhereabouts } from './services/late-whereabouts.svelte';
import { DevicePhotographs } from './services/photographs';

/** The invented sample site's, and its middle. */
const sampleGroundPlan = {
  data: planUrl,
  credit: 'Tolverby and its ground plan are invented.',
  near: [18.1734, 50.9287],
} as const;

/** The composition root: the only place that knows every room. */
async function start(target: HTMLElement): Promise<void> {
  const now = () => Date.now();
  // Before anything else can see the address.
  const fragment = fragmentTaken();
  const view = new View();
  const survey = new SurveyDocument(
    { id: 'empty', survey: newSurvey({}), problems: [], readOnly: false },
    () => {
      keeping.saving.changed();
      view.surveyChanged(survey.survey);
    },
  );
  const terrain = new Terrain();
  const zones = new SiteZones(async () => (await import('./imports/time-zone')).zoneFinder());
  const flying = new OtherFlying(async () => (await import('./figures/traffic/other-paths')).otherPaths);
  const derived = new Derived({
    ...{ document: survey, view, now, terrain },
    zoneAt: zones.at,
    otherPaths: flying.paths,
    airfieldTools: new LateAirfieldTools(() => import('./state/airfield-tools')),
  });
  const keeping = keepSurveys({ document: survey, view, loadSample: () => textAt(sampleUrl), now });
  const preferences = new Preferences(keptText('sunside-preferences'));
  const look = new Look(preferences, (query) => matchMedia(query));
  wear(look);
  const program = installedProgram(keeping.leave, () => view.hand.busy, now);
  const mine = new Mine(keptText('sunside-mine'));
  followMine(mine, survey);
  const airfields = new LateAirfields({ files: keeping.files, mine, now });
  const files = new KeptFiles();
  const merging = new SurveyMerging({
    document: survey,
    saving: keeping.saving,
    view,
    store: keeping.store,
  });
  const ways = new Ways(keptText('sunside-ways'));
  const visits = new FieldVisits(keptText('sunside-visit'));
  const passing = new SurveyPassing({
    files: keeping.files,
    merging,
    view,
    device: navigator,
    page: () => `${location.origin}${location.pathname}`,
  });
  const handed = contextsOf({
    document: survey,
    view,
    derived,
    files: keeping.files,
    sources: {
      airfields,
      imports: new ImportDesk({ document: survey, view, derived, files: keeping.files, airfields, now }),
      movements: new SurveyMovements({ document: survey, derived }),
      pastWinds: new WindHistory({ document: survey, derived }),
      photographs: new DevicePhotographs(),
      tables: new KitTables(),
      weather: new Weather({ document: survey, derived, now }),
    },
    land: {
      bases: new SunsideBaseMaps({ choice: new BaseChoice(keptText('sunside-base-maps'), files), files }),
      heights: new SunsideGroundHeights({
        terrain,
        files: new KeptFiles('sunside-heights'),
        choice: keptText('sunside-heights'),
        sample: { url: terrainUrl, near: sampleGroundPlan.near },
      }),
      terrain,
    },
    reader: { look, preferences },
    downloads: new FileDownloads(now),
    program,
    passing,
    merging,
    ways,
    trips: new SurveyTrips({ store: keeping.store, ways }),
    mine,
    placeSearch: new WorkersPlaceSearch(),
    learning: new WorkerLearning(),
    whereabouts: new LateWhereabouts(),
    visits,
    own: new Own({ details: keptText('sunside-own'), ticks: keptText('sunside-ticks') }),
    groundPlans: [sampleGroundPlan],
  });
  await keeping.start();
  // The phone threw the page away at the field: it comes back there.
  if (visits.on(visitDay(derived.contents.site, now()))) view.foot.open = 'now';
  mount(Root, { target, props: { handed, rescue: keeping.rescue } });
  void passing.take(fragment);
  addEventListener('hashchange', () => void passing.take(fragmentTaken()));
  // The first start is not to share its network with what is stored for the next ones.
  if (import.meta.env.PROD) whenLoaded(() => void program.start('./sw.js'));
}

async function textAt(url: string): Promise<string> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`status ${answer.status}`);
  return answer.text();
}

function whenLoaded(go: () => void): void {
  if (document.readyState === 'complete') go();
  else addEventListener('load', go, { once: true });
}

const target = document.getElementById('app');
if (!target) throw new Error('expected an element #app in the page');
void start(target);
