import { createContext } from 'svelte';
import type { Airfields } from '../ports/airfields';
import type { BaseMaps } from '../ports/base-maps';
import type { Files } from '../ports/files';
import type { GroundHeights } from '../ports/ground-heights';
import type { GroundPlan } from '../ports/ground-plan';
import type { Imports } from '../ports/imports';
import type { MapControl } from '../ports/map-control';
import type { MovementLists } from '../ports/movement-lists';
import type { PastWinds } from '../ports/past-winds';
import type { PlanFiles } from '../ports/plan-files';
import type { Program } from '../ports/program';
import type { Tables } from '../ports/tables';
import type { WeatherReader } from '../ports/weather';
import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import type { Look } from '../state/look.svelte';
import type { Preferences } from '../state/preferences.svelte';
import type { Terrain } from '../state/terrain.svelte';
import type { View } from '../state/view.svelte';
import type { Formats } from './formats';

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
