/** px from the upper left corner of what it is placed in. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * An attachment that tells where its element lies within a parent, `up` levels above it, now and whenever one of the two
 * changes size; null once it goes. The observer tells first after the next layout: to look before would be a layout of its own.
 */
export const boxOf =
  (tell: (box: Box | null) => void, up = 1) =>
  (element: HTMLElement) => {
    let parent = element.parentElement;
    for (let level = 1; level < up; level++) parent = parent?.parentElement ?? null;
    const look = () => {
      let [x, y] = [element.offsetLeft, element.offsetTop];
      for (
        let at = element.offsetParent;
        at instanceof HTMLElement && at !== parent && parent?.contains(at);
        at = at.offsetParent
      ) {
        x += at.offsetLeft;
        y += at.offsetTop;
      }
      tell({ x, y, width: element.offsetWidth, height: element.offsetHeight });
    };
    const observer = new ResizeObserver(look);
    observer.observe(element);
    if (parent) observer.observe(parent);
    return () => {
      observer.disconnect();
      tell(null);
    };
  };
