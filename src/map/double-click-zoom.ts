/** The map library's own zooming on a double click. */
interface ZoomHandler {
  enable(): void;
  disable(): void;
}

/** A double click zooms, except while it ends a drawing. */
export class DoubleClickZoom {
  readonly #handler: ZoomHandler;
  #zooms = true;

  /** `element`: where the library listens; here it is heard before. */
  constructor(element: HTMLElement, handler: ZoomHandler) {
    this.#handler = handler;
    element.addEventListener(
      'dblclick',
      (event) => {
        if (!this.#zooms) event.stopPropagation();
      },
      true,
    );
  }

  setEnabled(enabled: boolean): void {
    if (!enabled) {
      this.#zooms = false;
      this.#handler.disable();
      return;
    }
    this.#handler.enable();
    // The second click of a double click that ends a drawing comes before the page tells of the double click.
    setTimeout(() => (this.#zooms = true));
  }
}
