import type { Position } from '../../survey/document';
import { mapped, placed, positionOf, type Frame } from './earth';

/** The vertices of a chain with more between them, so that no piece is longer than `step` m. */
export function inPieces(chain: readonly Position[], frame: Frame, step: number): readonly Position[] {
  if (step === Infinity) return chain;
  const out: Position[] = [];
  let before: Position | null = null;
  for (const vertex of chain) {
    if (before) {
      const [x0, y0] = mapped(frame, before);
      const [x1, y1] = mapped(frame, vertex);
      const pieces = Math.min(1000, Math.ceil(Math.hypot(x1 - x0, y1 - y0) / step));
      for (let i = 1; i < pieces; i++) {
        const t = i / pieces;
        out.push(positionOf(placed(frame, x0 + (x1 - x0) * t, y0 + (y1 - y0) * t, 0)));
      }
    }
    out.push(vertex);
    before = vertex;
  }
  return out;
}
