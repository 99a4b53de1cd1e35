import type { Position } from '../../survey/document';
import { addFeature } from '../../survey/edits/add-feature';
import type { MapPointer } from '../map-surface';
import { slop } from '../pointer-follower';
import type { Desk, Key, MapTool } from './desk';
import { actionOf, drawKeys } from './keys';
import { drawingOf, type DrawTool as Kind } from '../../survey/drawings';
import { isEnough, newFeature } from './new-feature';

/** Pixels within which a click meets a corner that is already there. */
const meets = { mouse: 7, pen: 12, touch: 18 } as const;

/**
 * Draws one feature: a click for each corner; the last corner again, a double click or Enter ends a line, the first
 * corner again closes an area. A runway can also be dragged from end to end. By keyboard, Space sets a corner in the
 * middle of the map.
 */
export class DrawTool implements MapTool {
  readonly #desk: Desk;
  readonly #kind: Kind;
  #points: readonly Position[] = [];
  /** Where the pointer went down with the runway tool. */
  #start: MapPointer | null = null;
  /** Whether corners are being set in the middle of the map, where no pointer shows the next one. */
  #byMiddle = false;

  constructor(desk: Desk, kind: Kind) {
    this.#desk = desk;
    this.#kind = kind;
  }

  down(pointer: MapPointer): boolean {
    if (this.#kind !== 'runway') return false;
    this.#start = pointer;
    return true;
  }

  /** Nothing here waits for that. */
  held(): void {}

  move(pointer: MapPointer): void {
    const start = this.#start;
    if (!start) return;
    if (strayed(start, pointer)) this.#show([this.#points[0] ?? start.position, pointer.position]);
  }

  up(pointer: MapPointer): void {
    const start = this.#start;
    this.#start = null;
    if (!start) return;
    if (!strayed(start, pointer)) return this.tap(pointer);
    this.#points = [this.#points[0] ?? start.position, pointer.position];
    this.#finish(false);
  }

  /** The drag is given up; ends that were clicked before stay. */
  cancel(): void {
    this.#start = null;
    this.#show(this.#points);
  }

  tap(pointer: MapPointer): void {
    const corner = this.#cornerAt(pointer);
    if (corner === 'last') return this.#finish(false);
    if (corner === 'first') return this.#finish(true);
    this.#add(pointer.position);
  }

  hover(pointer: MapPointer | null): void {
    this.#desk.surface.setCursor('crosshair');
    this.#byMiddle = false;
    this.#show(pointer && this.#points.length > 0 ? [...this.#points, pointer.position] : this.#withLast());
  }

  key({ key }: Key): boolean {
    switch (actionOf(drawKeys, key)) {
      case 'giveUp':
        return this.#escape();
      case 'finish':
        if (isEnough(this.#kind, this.#points)) this.#finish(false);
        else this.#addMiddle();
        return true;
      case 'back':
        this.#points = this.#points.slice(0, -1);
        this.#show(this.#withLast());
        return true;
      case 'set':
        this.#addMiddle();
        return true;
      case null:
        return false;
    }
  }

  /** The map moves under the cross: the next corner is shown where it would be set. */
  camera(): void {
    if (this.#byMiddle && this.#points.length > 0) this.#show([...this.#points, this.#desk.surface.centre()]);
  }

  #addMiddle(): void {
    const middle = this.#desk.surface.centre();
    const last = this.#points[this.#points.length - 1];
    this.#byMiddle = true;
    // Twice without moving the map is one corner.
    if (last?.[0] !== middle[0] || last[1] !== middle[1]) this.#add(middle);
  }

  #escape(): boolean {
    const { hand } = this.#desk;
    this.#start = null;
    if (this.#points.length === 0) hand.tool = 'select';
    this.#points = [];
    this.#show([]);
    return true;
  }

  #add(position: Position): void {
    this.#points = [...this.#points, position];
    if (this.#points.length === drawingOf(this.#kind).whole) this.#finish(false);
    else this.#show(this.#withLast());
  }

  #cornerAt({ pixel, kind }: MapPointer): 'first' | 'last' | null {
    const meetsCorner = (position: Position | undefined) => {
      if (!position) return false;
      const { x, y } = this.#desk.surface.project(position);
      return Math.hypot(x - pixel.x, y - pixel.y) <= meets[kind];
    };
    if (drawingOf(this.#kind).shape === 'Point') return null;
    if (meetsCorner(this.#points[this.#points.length - 1])) return 'last';
    return this.#points.length > 2 && meetsCorner(this.#points[0]) ? 'first' : null;
  }

  #finish(closed: boolean): void {
    const { document, selection, hand, notices } = this.#desk;
    const made = newFeature(
      this.#kind,
      this.#points,
      closed,
      this.#desk.contents(),
      this.#desk.terrain(),
      this.#desk.instant(),
    );
    if (!made || document.readOnly) {
      // Too little yet: go on drawing. A runway whose two ends are in one place begins anew.
      if (this.#kind === 'runway' && this.#points.length > 0) {
        this.#points = this.#points.slice(0, 1);
        notices.notice = 'Both ends of the runway would be in one place: set the second one farther away.';
      }
      this.#show(this.#withLast());
      return;
    }
    const id = this.#desk.newId();
    document.perform(made.label, (survey) =>
      addFeature(survey, id, drawingOf(this.#kind).kind, made.shape, made.properties),
    );
    this.#points = [];
    this.#show([]);
    hand.tool = 'select';
    selection.select(id);
  }

  /** While no pointer hovers, the last corner stands in for it. */
  #withLast(): readonly Position[] {
    const last = this.#points[this.#points.length - 1];
    return last ? [...this.#points, last] : [];
  }

  #show(drawing: readonly Position[]): void {
    const { hand } = this.#desk;
    if (drawing.length > 0 || hand.drawing.length > 0) hand.drawing = drawing;
  }
}

const strayed = (from: MapPointer, to: MapPointer) =>
  Math.hypot(from.pixel.x - to.pixel.x, from.pixel.y - to.pixel.y) > slop(to.kind);
