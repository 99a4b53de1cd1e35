import type { Survey } from '../../survey/document';
import { reshapeFeature } from '../../survey/edits/reshape-feature';
import { shiftShape } from '../../survey/edits/shift-shape';
import { shapeOf, withVertexAt, type VertexRef } from '../../survey/edits/vertices';
import type { Desk, Key } from './desk';
import { vertexAt } from './drag';
import { shiftedBy } from './metre-shift';
import { Step } from '../../state/step';
import { wordFor } from './words';

const ways: Readonly<Record<string, readonly [east: number, north: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** ms without a key after which the next one begins a new undo step. */
const pause = 2000;

interface Series {
  readonly step: Step;
  readonly id: string;
  readonly vertex: VertexRef | null;
  at: number;
}

/** Arrow keys move the selected vertex, or else the selected feature: 1 m, with Shift 10 m, with Alt 0.1 m. A series is one undo step. */
export class Nudge {
  readonly #desk: Pick<Desk, 'document' | 'selection'>;
  #series: Series | null = null;

  constructor(desk: Pick<Desk, 'document' | 'selection'>) {
    this.#desk = desk;
  }

  /** Whether the key moved something. */
  key({ key, shift, alt, at }: Key): boolean {
    const way = ways[key];
    const { document, selection } = this.#desk;
    const feature = document.survey.features.find((f) => f.id === selection.id);
    const shape = feature && shapeOf(feature);
    if (!way || !feature || !shape || document.readOnly) return false;
    const metres = alt ? 0.1 : shift ? 10 : 1;
    const move = shiftedBy(way[0] * metres, way[1] * metres);
    const { vertex } = selection;
    const from = vertex && vertexAt(shape, vertex);
    const moved = vertex && from ? withVertexAt(shape, vertex, move(from)) : shiftShape(shape, move);
    const series = this.#seriesFor(feature.id, vertex, at, `move ${wordFor(feature)}`);
    series.step.change((survey: Survey) => reshapeFeature(survey, feature.id, moved));
    series.at = at;
    return true;
  }

  #seriesFor(id: string, vertex: VertexRef | null, at: number, label: string): Series {
    const going = this.#series;
    if (going?.step.goesOn && going.id === id && going.vertex === vertex && at - going.at <= pause)
      return going;
    this.#series = { step: new Step(this.#desk.document, label), id, vertex, at };
    return this.#series;
  }
}
