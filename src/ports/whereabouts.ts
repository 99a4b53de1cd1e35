import type { DevicePosition } from '../figures/now/place-now';
import type { Position } from '../survey/document';

/** A position and when it was found (ms since 1970). */
export interface Fix extends DevicePosition {
  readonly at: number;
}

/** Why there is no position: the user said no, none comes, plain http, or the device has none to give. */
export type WhereTrouble = 'refused' | 'lost' | 'insecure' | 'missing';

/** Why there is no heading. */
export type HeadingTrouble = 'refused' | 'missing';

/** Where the device was when it was asked once, or why it does not say. */
export type AskedOnce =
  { readonly ok: true; readonly position: Position } | { readonly ok: false; readonly trouble: WhereTrouble };

/**
 * Where the device is, where it points, and whether its screen stays on: asked for only when somebody wants it. What
 * is watched is for the view of the day at the field alone, and forgotten when that is left. Nothing of it is kept or
 * sent.
 */
export interface Whereabouts {
  readonly watching: boolean;
  /** The last position found; null while there is none. */
  readonly fix: Fix | null;
  readonly trouble: WhereTrouble | null;
  /** Degrees from magnetic north; null while nobody asked, or none comes. */
  readonly compass: number | null;
  readonly headingTrouble: HeadingTrouble | null;
  readonly awake: boolean;
  /** Whether the screen can be kept on at all. */
  readonly canStayAwake: boolean;
  /** Asks once, to a town's exactness, and watches nothing; to be called by what the user pressed. */
  ask(): Promise<AskedOnce>;
  /** Asks for the position; to be called by what the user pressed. */
  watch(): void;
  /** Watches if the user has said yes to it before, and asks nobody: for a page that was thrown away meanwhile. */
  watchAgain(): Promise<void>;
  /** Asks for the heading; to be called by what the user pressed. */
  point(): Promise<void>;
  stayAwake(on: boolean): Promise<void>;
  /** Forgets all of it. */
  leave(): void;
}

/** The way to it: most visits never ask where they are. */
export interface WhereaboutsSeat {
  /** Null until somebody has asked for it. */
  readonly current: Whereabouts | null;
  open(): Promise<Whereabouts>;
}
