import type { Step } from '../../state/step';

/** A drag on a handle, a strip or a grid, from the pointer going down until it goes up or it is given up: one undo step. */
export class PointerDrag {
  #step: Step | null = null;

  /** The step that the drag makes; null while nothing is dragged. */
  get step(): Step | null {
    return this.#step;
  }

  begin(event: PointerEvent & { currentTarget: HTMLElement }, step: Step): void {
    event.preventDefault();
    event.currentTarget.setPointerCapture(event.pointerId);
    this.#step = step;
  }

  end(): void {
    this.#step = null;
  }

  giveUp(): void {
    this.#step?.cancel();
    this.#step = null;
  }
}
