import type { Position, SurveyFeature } from '../../survey/document';
import type { NewShape } from '../../survey/edits/add-feature';
import { reshapeFeature } from '../../survey/edits/reshape-feature';
import { shiftShape } from '../../survey/edits/shift-shape';
import { shapeOf, withVertexAdded, withVertexAt, type VertexRef } from '../../survey/edits/vertices';
import type { MapPointer } from '../map-surface';
import { slop } from '../pointer-follower';
import type { Desk } from './desk';
import { shiftBetween } from './metre-shift';
import type { Picked } from './pick';
import { Step } from '../../state/step';
import { wordFor } from './words';

type Grip = Exclude<Picked, { what: 'path' }>;

/** A feature, a vertex or a point between two, from the pointer going down until it goes up: one undo step. */
export class Drag {
  readonly grip: Grip;
  readonly #desk: Pick<Desk, 'document' | 'selection' | 'hand' | 'surface'>;
  readonly #start: MapPointer;
  readonly #shape: NewShape;
  readonly #step: Step;

  private constructor(
    desk: Pick<Desk, 'document' | 'selection' | 'hand' | 'surface'>,
    grip: Grip,
    start: MapPointer,
    feature: SurveyFeature,
    shape: NewShape,
  ) {
    this.#desk = desk;
    this.grip = grip;
    this.#start = start;
    this.#shape = grip.what === 'midpoint' ? withVertexAdded(shape, grip.vertex, start.position) : shape;
    this.#step = new Step(desk.document, labelOf(grip, feature));
  }

  /** Null when there is nothing to drag. */
  static begin(
    desk: Pick<Desk, 'document' | 'selection' | 'hand' | 'surface'>,
    grip: Grip,
    start: MapPointer,
  ): Drag | null {
    const feature = desk.document.survey.features.find((f) => f.id === grip.id);
    const shape = feature && shapeOf(feature);
    return feature && shape && !desk.document.readOnly ? new Drag(desk, grip, start, feature, shape) : null;
  }

  /** Whether it has moved; else it was a click. */
  get begun(): boolean {
    return this.#step.begun;
  }

  move(pointer: MapPointer): void {
    const { pixel, position } = this.#start;
    const strayed = Math.hypot(pointer.pixel.x - pixel.x, pointer.pixel.y - pixel.y);
    if (!this.begun && strayed <= slop(pointer.kind)) return;
    const shift = shiftBetween(position, pointer.position);
    const shape =
      this.grip.what === 'feature' ? shiftShape(this.#shape, shift) : this.#bent(this.grip.vertex, shift);
    this.#step.change((survey) => reshapeFeature(survey, this.grip.id, shape));
    if (!this.begun) return;
    const { selection, hand } = this.#desk;
    selection.select(this.grip.id);
    selection.vertex = this.grip.what === 'feature' ? null : this.grip.vertex;
    hand.dragging = this.grip.id;
  }

  /** The grip stays as far from the pointer as it was when it was taken. */
  #bent(vertex: VertexRef, shift: (position: Position) => Position): NewShape {
    const from = vertexAt(this.#shape, vertex);
    return from ? withVertexAt(this.#shape, vertex, shift(from)) : this.#shape;
  }

  finish(): void {
    this.#desk.hand.dragging = null;
  }

  cancel(): void {
    this.#step.cancel();
    const { selection, hand } = this.#desk;
    hand.dragging = null;
    if (this.grip.what === 'midpoint') selection.vertex = null;
  }
}

const labels = { vertex: 'move corner of', midpoint: 'add corner to', feature: 'move' } as const;

const labelOf = (grip: Grip, feature: SurveyFeature): string =>
  grip.what === 'vertex' && feature.properties?.['kind'] === 'runway'
    ? 'move runway end'
    : `${labels[grip.what]} ${wordFor(feature)}`;

/** Where a vertex of a shape is; null when there is no such vertex. */
export function vertexAt(shape: NewShape, { ring, index }: VertexRef): Position | null {
  switch (shape.type) {
    case 'Point':
      return shape.coordinates;
    case 'LineString':
      return shape.coordinates[index] ?? null;
    case 'Polygon':
      return shape.coordinates[ring]?.[index] ?? null;
  }
}
