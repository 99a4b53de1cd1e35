import type { Selection } from '../../state/view.svelte';
import { deleteFeature } from '../../survey/edits/delete-feature';
import { reshapeFeature } from '../../survey/edits/reshape-feature';
import { shapeOf, vertexRefs, whyVertexStays, withoutVertex } from '../../survey/edits/vertices';
import { nearestSample } from '../overlays/path-line';
import type { MapPointer, Taken } from '../map-surface';
import type { Desk, Key, MapTool } from './desk';
import { Drag } from './drag';
import { actionOf, selectKeys } from './keys';
import { Nudge } from './nudge';
import { pick, type Picked } from './pick';
import { wordFor } from './words';

const reasons = {
  'runway-has-two-ends': 'A runway keeps its two ends: move them, or delete the whole runway.',
  'too-few-vertices': 'No corner can be spared here: delete the whole feature instead.',
} as const;

/** Selects, drags, nudges and deletes; and looks at points of a path when a spot is selected. */
export class SelectTool implements MapTool {
  readonly #desk: Desk;
  readonly #nudge: Nudge;
  #drag: Drag | null = null;
  /** What was selected before a finger took hold of something; undefined while none does. */
  #before: Selection['id'] | undefined;
  /** The inspected point that follows the mouse; one that was clicked, or chosen in a panel, stays. */
  #hovered: Selection['inspected'] = null;

  constructor(desk: Desk) {
    this.#desk = desk;
    this.#nudge = new Nudge(desk);
  }

  down(pointer: MapPointer): Taken {
    const picked = this.#pick(pointer);
    if (!picked || picked.what === 'path') return false;
    // A spot goes with the pointer at once; what is larger only once it is selected, so that the map can be panned.
    const isGrip = picked.what !== 'feature' || picked.isSpot || picked.id === this.#desk.selection.id;
    if (!isGrip) return false;
    // A thumb that pans the map begins anywhere: what it begins on stays where it is, unless it rests there first.
    if (pointer.kind === 'touch' && picked.what === 'feature')
      return this.#desk.document.readOnly ? false : 'if-held';
    this.#drag = Drag.begin(this.#desk, picked, pointer);
    return this.#drag !== null;
  }

  held(pointer: MapPointer): void {
    const picked = this.#pick(pointer);
    if (picked?.what === 'feature') this.#begin(picked, pointer);
  }

  grab(id: string, pointer: MapPointer): void {
    const isSpot = this.#desk.contents().spots.some((s) => s.id === id);
    this.#begin({ what: 'feature', id, isSpot }, pointer);
  }

  /** Takes hold of a feature, and shows that it is held: a finger covers what it holds. */
  #begin(picked: Extract<Picked, { what: 'feature' }>, pointer: MapPointer): void {
    this.#drag = Drag.begin(this.#desk, picked, pointer);
    if (!this.#drag) return;
    const { selection, hand } = this.#desk;
    this.#before = selection.id;
    selection.select(picked.id);
    hand.dragging = picked.id;
  }

  move(pointer: MapPointer): void {
    if (!this.#drag) return;
    this.#drag.move(pointer);
    if (this.#drag.begun) this.#desk.surface.setCursor('move');
  }

  up(pointer: MapPointer): void {
    const drag = this.#drag;
    this.#drag = null;
    this.#before = undefined;
    if (!drag) return;
    drag.finish();
    if (!drag.begun) this.#click(drag.grip, pointer);
  }

  cancel(): void {
    this.#drag?.cancel();
    this.#drag = null;
    // What a finger took hold of on its way to a pinch was not meant.
    if (this.#before !== undefined) this.#desk.selection.select(this.#before);
    this.#before = undefined;
  }

  tap(pointer: MapPointer): void {
    this.#click(this.#pick(pointer), pointer);
  }

  hover(pointer: MapPointer | null): void {
    const { surface, selection } = this.#desk;
    const picked = pointer && this.#pick(pointer);
    surface.setCursor(picked ? (picked.what === 'path' ? 'crosshair' : 'pointer') : 'default');
    if (selection.inspected !== this.#hovered) return;
    if (pointer && picked?.what === 'path') this.#inspect(picked.path, pointer);
    else selection.inspected = null;
    this.#hovered = selection.inspected;
  }

  key(key: Key): boolean {
    const action = actionOf(selectKeys, key.key);
    if (action === 'giveUp') return this.#escape();
    if (action === null || this.#drag) return false;
    switch (action) {
      case 'remove':
        return this.#delete();
      case 'nextCorner':
        return this.#chooseCorner(1);
      case 'lastCorner':
        return this.#chooseCorner(-1);
      case 'nudge':
        return this.#nudge.key(key);
    }
  }

  /** Nothing here depends on the camera. */
  camera(): void {}

  #pick(pointer: MapPointer): Picked | null {
    return pick(this.#desk.surface, pointer, this.#selectedIsSpot());
  }

  #selectedIsSpot(): boolean {
    const { selection } = this.#desk;
    return this.#desk.contents().spots.some((s) => s.id === selection.id);
  }

  #click(picked: Picked | null, pointer: MapPointer): void {
    const { selection } = this.#desk;
    this.#hovered = null;
    if (picked?.what === 'path') return this.#inspect(picked.path, pointer);
    selection.inspected = null;
    // Between two corners there is nothing to select: it becomes a corner when it is dragged.
    if (picked?.what === 'midpoint') return;
    selection.select(picked?.id ?? null);
    selection.vertex = picked?.what === 'vertex' ? picked.vertex : null;
  }

  #inspect(path: string, pointer: MapPointer): void {
    const found = this.#desk.paths().find((p) => p.ref.path === path);
    if (!found) return;
    const station = found.samples.station[nearestSample(found, pointer.position)] as number;
    const { selection } = this.#desk;
    if (selection.inspected?.path !== path || selection.inspected.station !== station)
      selection.inspected = { path, station };
  }

  #escape(): boolean {
    const { selection } = this.#desk;
    if (this.#drag) {
      this.cancel();
      return true;
    }
    const had = selection.vertex !== null || selection.inspected !== null || selection.id !== null;
    if (selection.vertex) selection.vertex = null;
    else if (selection.inspected) selection.inspected = null;
    else selection.select(null);
    return had;
  }

  /** Round the corners of what is selected, all rings in their order. */
  #chooseCorner(step: 1 | -1): boolean {
    const { document, selection } = this.#desk;
    const feature = document.survey.features.find((f) => f.id === selection.id);
    const corners = feature ? vertexRefs(feature) : [];
    if (corners.length === 0) return false;
    const { vertex } = selection;
    const at = corners.findIndex((c) => c.ring === vertex?.ring && c.index === vertex.index);
    const next = at < 0 ? (step > 0 ? 0 : -1) : (at + step) % corners.length;
    selection.vertex = corners.at(next) ?? null;
    return true;
  }

  #delete(): boolean {
    const { document, selection, notices } = this.#desk;
    const feature = document.survey.features.find((f) => f.id === selection.id);
    if (!feature || document.readOnly) return false;
    const { vertex } = selection;
    const shape = shapeOf(feature);
    if (!vertex || !shape) {
      document.perform(`delete ${wordFor(feature)}`, (survey) => deleteFeature(survey, feature.id));
      selection.select(null);
      return true;
    }
    const why = whyVertexStays(feature, vertex);
    if (why) notices.notice = reasons[why];
    else {
      const shorter = withoutVertex(shape, vertex);
      document.perform(`delete corner of ${wordFor(feature)}`, (survey) =>
        reshapeFeature(survey, feature.id, shorter),
      );
      selection.vertex = null;
    }
    return true;
  }
}
