import type { DrawnSide } from '../../state/drawn-merge.svelte';
import type { Position } from '../../survey/document';
import { line, overlay, point, type Overlay } from './features';

const names = { mine: 'mine', theirs: 'theirs', 'theirs-only': 'new' } as const;

/** Both states of what a merge asks about: mine whole lines and discs, theirs dashed lines and squares. */
export const mergeOverlay = (sides: readonly DrawnSide[]): Overlay =>
  overlay(
    sides.flatMap(({ side, lines, marked }) => {
      const of = side === 'mine' ? 'mine' : 'theirs';
      return lines.flatMap((positions) => {
        const [first] = positions;
        if (!first) return [];
        const drawn = positions.length > 1 ? [line(positions, { part: `${of}-line`, marked })] : [];
        const mark = point(middle(positions), { part: of, text: names[side], marked });
        return [...drawn, mark];
      });
    }),
  );

/** The name stands at a corner in the middle of the line. */
const middle = (positions: readonly Position[]): Position =>
  positions[Math.floor((positions.length - 1) / 2)] as Position;
