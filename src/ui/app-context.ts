import { createContext } from 'svelte';
import type { CalendarEntry } from '../exports/calendar';
import type { BaseChoice } from '../state/base-maps/base-choice.svelte';
import type { OwnKind } from '../state/base-maps/own-map';
import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import type { Look } from '../state/look.svelte';
import type { Preferences } from '../state/preferences.svelte';
import type { Terrain } from '../state/terrain.svelte';
import type { NoticeLife, View } from '../state/view.svelte';
import type { Position, Survey } from '../survey/document';
import type { ListEntries, ListName } from '../survey/kit-lists';
import type { SpeedUnit } from '../units/speed';
import type { Formats } from './formats';
import type { Imports } from './import/imports';
import type { MovementLists } from './movements/lists';

/** Opening, saving and starting surveys: built by main.ts, which knows files and storage. */
export interface Files {
  /** Lets the user pick a file; a broken one leaves the open survey as it is and says why in the notice. */
  open(): Promise<void>;
  /** A dropped file. */
  openFile(file: File): Promise<void>;
  /** Saves to a file: by the browser's file access, or as a download. */
  save(): Promise<void>;
  /** Starts a survey that was just made (from the catalogue, or empty). `life`: how long the notice stands. */
  start(survey: Survey, notice: string | null, life?: NoticeLife): Promise<void>;
  /** Opens the invented sample site. */
  openSample(): Promise<void>;
  /** "saved 18:30", "saving ...", or what went wrong. */
  readonly status: { readonly text: string; readonly trouble: boolean };
  /** Set when another tab saved a newer state of this survey. */
  readonly conflict: { keepMine(): Promise<void>; takeTheirs(): Promise<void> } | null;
  /** Why the browser keeps nothing of the open survey's changes; null while it does, or once they are in a file. */
  readonly refused: string | null;
  readonly surveys: Surveys;
}

/** A survey in the list of those kept on this device. */
export interface KeptSurvey {
  readonly id: string;
  readonly name: string;
  /** ms since 1970. */
  readonly changed: number;
  /** Length of its text. */
  readonly size: number;
  /** The airfield's code, or coordinates where there is no name either ("" for neither), the planned day (ISO 8601, null for none); null where nothing is known. */
  readonly facts: { readonly place: string; readonly date: string | null; readonly spots: number } | null;
}

export interface KeptList {
  /** Changed last first. */
  readonly kept: readonly KeptSurvey[];
  /** Deleted ones that can still be put back. */
  readonly deleted: readonly KeptSurvey[];
  /** Why the browser keeps no list, null where it does. */
  readonly trouble: string | null;
  /** Whether the browser may clear all this when space runs short. */
  readonly keeping: 'kept' | 'may-be-cleared' | 'unknown';
  /** Bytes; null where the browser does not say. */
  readonly room: { readonly used: number; readonly quota: number } | null;
}

/** The surveys on this device. What each did, or why it could not, stands in the notice. */
export interface Surveys {
  /** Null until it is read for the first time. */
  readonly list: KeptList | null;
  /** Which survey this tab shows. */
  readonly openId: string;
  refresh(): Promise<void>;
  /** The list is not shown any more: nothing needs to keep it up to date. */
  close(): void;
  open(id: string): Promise<void>;
  rename(survey: KeptSurvey, name: string): Promise<void>;
  duplicate(survey: KeptSurvey): Promise<void>;
  /** With an undo in the notice. */
  remove(survey: KeptSurvey): Promise<void>;
  putBack(id: string): Promise<void>;
  /** Forgets a deleted survey for good. */
  discard(id: string): Promise<void>;
  /** Files and archives, picked where none are given; the open survey stays open. */
  importFiles(files?: readonly File[]): Promise<void>;
  exportAll(): Promise<void>;
  /** Asks the browser to clear nothing. */
  askToKeep(): Promise<void>;
}

/** One line of the airfield search. */
export interface AirfieldMatch {
  /** Unlike that of any other line. */
  readonly key: number;
  /** The code that people know it by, "" for none, and all others. */
  readonly code: string;
  readonly otherCodes: readonly string[];
  readonly name: string;
  /** "Town, Country", as far as the data say. */
  readonly place: string;
  /** "heliport", "seaplane base"; "" for the usual kinds. */
  readonly kind: string;
  /** Runways of which both ends are known, and all that the data name. */
  readonly locatedRunways: number;
  readonly runways: number;
}

/** The airfield catalogue and the surveys that start from it: built by airfields.ts, which knows the imports. */
export interface Airfields {
  /** Fetches the catalogue once. Null when it is there, else why it is not, in words for the user. */
  load(): Promise<string | null>;
  /** What fits the typed text, best first; nothing before the catalogue is there. */
  search(text: string): readonly AirfieldMatch[];
  /** Starts a survey of one airfield and shows it. */
  start(match: AirfieldMatch): Promise<void>;
  /** Starts a survey with nothing drawn yet at a position. */
  startEmpty(name: string, position: Position): Promise<void>;
  /** Whose data it is and under which licence: shown wherever the matches are. */
  readonly credit: { readonly text: string; readonly licence: string; readonly licenceUrl: string };
}

/** What a table of bodies, lenses or subjects would bring, before anything is changed. */
export type TableReading<L extends ListName> =
  | {
      readonly ok: true;
      readonly entries: readonly {
        readonly row: number;
        readonly entry: ListEntries[L];
        readonly change: 'new' | 'replaces' | 'same';
      }[];
      readonly left: readonly { readonly row: number; readonly reason: string }[];
      readonly remarks: readonly string[];
    }
  | { readonly ok: false; readonly reason: string };

/** Tables (CSV) of the kit and the subjects: built by tables.ts, which knows imports, exports and files. */
export interface Tables {
  /** Lets the user pick one; null when they think better of it. */
  pick(): Promise<File | null>;
  /** Changes nothing: says what would come in, beside what is there already. */
  read<L extends ListName>(
    list: L,
    file: File,
    existing: readonly ListEntries[L][],
  ): Promise<TableReading<L>>;
  /** Saves to a file: by the browser's file access, or as a download. */
  save<L extends ListName>(list: L, entries: readonly ListEntries[L][]): Promise<void>;
}

/** What a browser may withhold from a page. */
export type Missing = 'offline' | 'keeping' | 'position' | 'clipboard';

/** A newer program than the one on this page. */
export interface NewVersion {
  /** Stored and waiting; running in other tabs already; or guessed, since a part of this one is not there any more. */
  readonly why: 'waiting' | 'started-elsewhere' | 'part-missing';
  /** Puts what is open into safety and starts it, which loads the page anew. */
  take(): Promise<void>;
  /** Not now: it waits until the next start. */
  later(): void;
}

/** The program as it lies on this device: built by program.svelte.ts, which knows the service worker. */
export interface Program {
  /** Whether it starts without a network. */
  readonly offline: 'ready' | 'soon' | 'never';
  readonly missing: readonly Missing[];
  readonly newVersion: NewVersion | null;
}

/** Winds that people type or paste: built by weather.ts, which loads the reader of reports when it is needed. */
export interface WeatherReader {
  /**
   * Reads a wind, METAR or TAF and keeps it in the survey; null, or why it cannot be read. `magnetic`: a typed
   * direction was told from magnetic north.
   */
  enter(text: string, magnetic: boolean): Promise<string | null>;
}

/** How a table of past winds will be read: guessed from its head, to be mended by the user. Columns by index. */
export interface PastWindsPlan {
  readonly name: string;
  readonly text: string;
  readonly delimiter: string;
  readonly headings: readonly string[];
  readonly mapping: Readonly<Record<'time' | 'clock' | 'direction' | 'speed' | 'gust', number | null>>;
  /** Null where the table does not say. */
  readonly unit: SpeedUnit | null;
  readonly clock: 'utc' | 'site';
  readonly order: 'dmy' | 'mdy';
  readonly orderUnsure: boolean;
}

export interface PastWindsRead {
  readonly observations: number;
  readonly left: readonly { readonly row: number; readonly reason: string }[];
  readonly leftCount: number;
  readonly repeated: number;
}

/** Tables of past winds: built by wind-history.ts, which knows imports and files. */
export interface PastWinds {
  pick(): Promise<File | null>;
  /** Null for a file without rows. */
  plan(file: File): Promise<PastWindsPlan | null>;
  /** Keeps what could be read in the survey; nothing is kept where nothing could. */
  read(plan: PastWindsPlan, progress: (share: number) => void): Promise<PastWindsRead>;
}

/** What of the plan is taken along as files: built by plan-files.ts, which knows exports and files. */
export interface PlanFiles {
  /** As a calendar file: by the browser's file access, or as a download. */
  save(entries: readonly CalendarEntry[]): Promise<void>;
}

/** A camera request that the map obeys: the only thing panels may ask of the map. */
export interface MapControl {
  goTo(position: readonly [number, number], zoom?: number): void;
  /** Shows the whole survey. */
  fit(): void;
  /** Where a position is on the page, in CSS pixels of the map; null before the map is there. */
  project(position: readonly [number, number]): { readonly x: number; readonly y: number } | null;
  /** The position in the middle of the map. */
  centre(): readonly [number, number];
  focus(): void;
  /** As if this key was pressed on the map: what a button does that stands for a key. */
  press(key: string): void;
  /** What the keys do on the map, for the list of short cuts. */
  readonly keys: readonly {
    readonly title: string;
    readonly lines: readonly {
      readonly keys: readonly string[];
      readonly words: string;
      readonly written?: readonly string[];
    }[];
  }[];
}

/** A ground plan that ships with the program: the address of its GeoJSON, and whose it is. */
export interface GroundPlan {
  readonly data: string;
  readonly credit: string;
}

/** A base map as it is typed in. */
export interface BaseMapDraft {
  readonly kind: OwnKind;
  readonly address: string;
  /** "" for the server's name. */
  readonly name: string;
  /** Whose map it is, as its provider wants it said; "" for none. */
  readonly credit: string;
  /** The last zoom that a tile server has. */
  readonly maxZoom: number;
}

/** GeoJSON of the world's land. */
export interface LandOverlay {
  readonly type: 'FeatureCollection';
  readonly features: readonly {
    readonly type: 'Feature';
    readonly properties: Readonly<Record<string, never>>;
    readonly geometry: {
      readonly type: 'Polygon';
      readonly coordinates: readonly (readonly Position[])[];
    };
  }[];
}

/** What lies under the survey: built by base-maps.ts, which knows files and the imports. */
export interface BaseMaps {
  readonly choice: BaseChoice;
  /** Looks at the address, adds the map and shows it. Null when that is done, else what to mend. */
  addAddress(draft: BaseMapDraft): Promise<string | null>;
  /** Keeps a PMTiles file on this device, picked by the user where none is given; null also when none was picked. */
  addFile(file: File | null, draft: Pick<BaseMapDraft, 'name' | 'credit'>): Promise<string | null>;
  /** Forgets the files of maps that were taken off the list. */
  tidy(): Promise<void>;
  /** Fetched once, when it is first asked for. */
  land(): Promise<LandOverlay | null>;
}

/** Where the ground's heights come from: built by ground-heights.ts, which knows files and the imports. */
export interface GroundHeights {
  /** Another airfield is looked at: what was chosen is loaded for it. */
  look(about: Position): Promise<void>;
  /** Fetches heights about a position from the net, now and for every airfield from now on. */
  useOnline(about: Position): Promise<void>;
  /** Lets the user pick a file and keeps it on this device. */
  pickFile(about: Position): Promise<void>;
  none(): void;
}

export interface App {
  readonly document: SurveyDocument;
  readonly view: View;
  readonly derived: Derived;
  readonly files: Files;
  readonly airfields: Airfields;
  readonly tables: Tables;
  readonly weather: WeatherReader;
  readonly pastWinds: PastWinds;
  readonly movements: MovementLists;
  readonly imports: Imports;
  readonly bases: BaseMaps;
  readonly planFiles: PlanFiles;
  readonly terrain: Terrain;
  readonly ground: GroundHeights;
  readonly preferences: Preferences;
  readonly look: Look;
  readonly program: Program;
  /** Figures printed and read back as the preferences say. */
  readonly format: Formats;
  /** The ground plan of the open survey's neighbourhood, null where there is none. */
  readonly plan: GroundPlan | null;
  /** Filled by the map component once it is there. */
  map: MapControl | null;
  /** A new feature id that is not taken. */
  newId(): string;
}

export const [getApp, setApp] = createContext<App>();
