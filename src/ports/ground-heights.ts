import type { Position } from '../survey/document';

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
