import type { Position } from '../survey/document';

/** Where this device is: asked for only when somebody wants it, and kept nowhere. */
export interface DevicePosition {
  /** The place, or why there is none and how else one can go on, in words. */
  ask(): Promise<
    { readonly ok: true; readonly position: Position } | { readonly ok: false; readonly reason: string }
  >;
}
