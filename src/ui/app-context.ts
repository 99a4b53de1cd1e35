import { createContext } from 'svelte';
import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import type { View } from '../state/view.svelte';

/** Opening, saving and starting surveys: built by main.ts, which knows files and storage. */
export interface Files {
  /** Lets the user pick a file; a broken one leaves the open survey as it is and says why in the notice. */
  open(): Promise<void>;
  /** A dropped file. */
  openFile(file: File): Promise<void>;
  /** Saves to a file: by the browser's file access, or as a download. */
  save(): Promise<void>;
  /** Starts a survey that was just made (from the catalogue, or empty). */
  start(survey: import('../survey/document').Survey, notice: string | null): void;
  /** Opens the invented sample site. */
  openSample(): Promise<void>;
  /** "saved 18:30", "saving ...", or what went wrong. */
  readonly status: { readonly text: string; readonly trouble: boolean };
  /** Set when another tab saved a newer state of this survey. */
  readonly conflict: { keepMine(): Promise<void>; takeTheirs(): Promise<void> } | null;
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
}

export interface App {
  readonly document: SurveyDocument;
  readonly view: View;
  readonly derived: Derived;
  readonly files: Files;
  /** Filled by the map component once it is there. */
  map: MapControl | null;
  /** A new feature id that is not taken. */
  newId(): string;
}

export const [getApp, setApp] = createContext<App>();
