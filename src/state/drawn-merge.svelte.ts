import type { Position } from '../survey/document';

/** Where a thing is by one side's survey. */
export interface DrawnSide {
  /** "theirs-only": what mine does not have. */
  readonly side: 'mine' | 'theirs' | 'theirs-only';
  /** A point has one line of one position; an area is closed. */
  readonly lines: readonly (readonly Position[])[];
  /** Somebody looks at its question. */
  readonly marked: boolean;
}

/** What a merge has on the map: empty unless one is under way. */
export class DrawnMerge {
  sides = $state.raw<readonly DrawnSide[]>([]);

  clear(): void {
    this.sides = [];
  }
}
