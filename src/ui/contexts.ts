import { createContext } from 'svelte';
import type { Airfields } from '../ports/airfields';
import type { BaseMaps } from '../ports/base-maps';
import type { Files } from '../ports/files';
import type { GroundHeights } from '../ports/ground-heights';
import type { GroundPlan } from '../ports/ground-plan';
import type { Imports } from '../ports/imports';
import type { Learning } from '../ports/learning';
import type { MapControl } from '../ports/map-control';
import type { MovementLists } from '../ports/movement-lists';
import type { Merging } from '../ports/merging';
import type { Passing } from '../ports/passing';
import type { PastWinds } from '../ports/past-winds';
import type { Photographs } from '../ports/photographs';
import type { PlaceSearch } from '../ports/place-search';
import type { Downloads } from '../ports/downloads';
import type { Program } from '../ports/program';
import type { LateTrips } from '../ports/trips';
import type { Tables } from '../ports/tables';
import type { WeatherReader } from '../ports/weather';
import type { WhereaboutsSeat } from '../ports/whereabouts';
import type { Answers } from '../state/answers';
import type { Derived } from '../state/derived.svelte';
import type { FieldVisits } from '../state/field-visits';
import type { SurveyDocument } from '../state/document.svelte';
import type { Look } from '../state/look.svelte';
import type { Mine } from '../state/mine.svelte';
import type { Own } from '../state/own.svelte';
import type { Ways } from '../state/ways.svelte';
import type { Preferences } from '../state/preferences.svelte';
import type { Terrain } from '../state/terrain.svelte';
import type { View } from '../state/view.svelte';
import type { Box } from './box-of';
import type { Formats } from './formats';

/** The open survey, to be read and edited. */
export type Editing = Pick<
  SurveyDocument,
  'id' | 'survey' | 'readOnly' | 'perform' | 'replace' | 'cancel' | 'choose'
>;
/** What was done to it, to be taken back. */
export type Steps = Pick<SurveyDocument, 'undo' | 'redo' | 'undoLabel' | 'redoLabel'>;
/** What follows from it, in groups. */
export type Figures = Pick<
  Derived,
  'contents' | 'terrain' | 'day' | 'light' | 'airfield' | 'flow' | 'sights'
>;
/** The sample of a path that is looked into. */
export type Inspected = Derived['inspection'];
/** What is chosen and looked at. */
export type Looking = Pick<View, 'selection' | 'hand' | 'shown' | 'viewfinder' | 'foot' | 'places' | 'merge'>;
/** The quiet line for the user. */
export type Notices = Pick<View, 'notice' | 'noticeActions' | 'offer'>;

/** What lies on the map and is not to be covered: the legend, its buttons, the scale, and whose map it is. */
export type Furniture = 'legend' | 'keys' | 'scale' | 'credit';

/** The map, once it is there. */
export interface MapSeat {
  control: MapControl | null;
  /** Whether its first picture is drawn, or there will be none. */
  settled: boolean;
  /** Grows with every move of the camera: what is placed by screen position is placed anew. */
  tick: number;
  /** What lies on the map in its corners, where a callout would hide it. */
  readonly furniture: readonly Box[];
  furnish(what: Furniture, box: Box | null): void;
}

/** Who reads the page: figures printed and read back as they prefer, and the look that they asked for. */
export interface Reader {
  readonly format: Formats;
  readonly look: Look;
  readonly preferences: Preferences;
}

/** Where data comes into the survey from. */
export interface Sources {
  readonly airfields: Airfields;
  readonly imports: Imports;
  readonly movements: MovementLists;
  readonly pastWinds: PastWinds;
  readonly photographs: Photographs;
  readonly tables: Tables;
  readonly weather: WeatherReader;
}

/** What lies under the survey and is not in it. */
export interface Land {
  readonly bases: BaseMaps;
  readonly heights: GroundHeights;
  readonly terrain: Terrain;
  /** The ground plan of the open survey's neighbourhood, null where there is none. */
  readonly groundPlan: GroundPlan | null;
}

/** All that components can ask for. Each takes the contexts that it uses; only the composition root has the list. */
export interface Contexts {
  readonly editing: Editing;
  readonly steps: Steps;
  readonly figures: Figures;
  readonly inspected: Inspected;
  readonly answers: Answers;
  readonly view: Looking;
  readonly notices: Notices;
  readonly map: MapSeat;
  readonly reader: Reader;
  readonly files: Files;
  readonly sources: Sources;
  readonly land: Land;
  readonly downloads: Downloads;
  readonly program: Program;
  readonly passing: Passing;
  readonly merging: Merging;
  readonly ways: Ways;
  readonly trips: LateTrips;
  readonly mine: Mine;
  readonly placeSearch: PlaceSearch;
  readonly learning: Learning;
  readonly own: Own;
  readonly whereabouts: WhereaboutsSeat;
  readonly visits: FieldVisits;
}

export const [getEditing, setEditing] = createContext<Editing>();
export const [getSteps, setSteps] = createContext<Steps>();
export const [getFigures, setFigures] = createContext<Figures>();
export const [getInspected, setInspected] = createContext<Inspected>();
export const [getAnswers, setAnswers] = createContext<Answers>();
export const [getView, setView] = createContext<Looking>();
export const [getNotices, setNotices] = createContext<Notices>();
export const [getMap, setMap] = createContext<MapSeat>();
export const [getReader, setReader] = createContext<Reader>();
export const [getFiles, setFiles] = createContext<Files>();
export const [getSources, setSources] = createContext<Sources>();
export const [getLand, setLand] = createContext<Land>();
export const [getDownloads, setDownloads] = createContext<Downloads>();
export const [getProgram, setProgram] = createContext<Program>();
export const [getPassing, setPassing] = createContext<Passing>();
export const [getMerging, setMerging] = createContext<Merging>();
export const [getTrips, setTrips] = createContext<LateTrips>();
export const [getWays, setWays] = createContext<Ways>();
export const [getMine, setMine] = createContext<Mine>();
export const [getPlaceSearch, setPlaceSearch] = createContext<PlaceSearch>();
export const [getLearning, setLearning] = createContext<Learning>();
export const [getOwn, setOwn] = createContext<Own>();
export const [getWhereabouts, setWhereabouts] = createContext<WhereaboutsSeat>();
export const [getVisits, setVisits] = createContext<FieldVisits>();

/** Called once, above the page. */
export function provide(handed: Contexts): void {
  setEditing(handed.editing);
  setSteps(handed.steps);
  setFigures(handed.figures);
  setInspected(handed.inspected);
  setAnswers(handed.answers);
  setView(handed.view);
  setNotices(handed.notices);
  setMap(handed.map);
  setReader(handed.reader);
  setFiles(handed.files);
  setSources(handed.sources);
  setLand(handed.land);
  setDownloads(handed.downloads);
  setProgram(handed.program);
  setPassing(handed.passing);
  setMerging(handed.merging);
  setWays(handed.ways);
  setTrips(handed.trips);
  setMine(handed.mine);
  setPlaceSearch(handed.placeSearch);
  setLearning(handed.learning);
  setOwn(handed.own);
  setWhereabouts(handed.whereabouts);
  setVisits(handed.visits);
}
