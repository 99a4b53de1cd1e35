/** px from the upper left corner of what an element is placed in. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * An attachment that tells where its element lies, now and whenever it or what it is placed in, its parent, changes size; null
 * once it goes. The observer tells first after the next layout: to look before would be a layout of its own.
 */
export const boxOf = (tell: (box: Box | null) => void) => (element: HTMLElement) => {
  const look = () =>
    tell({
      x: element.offsetLeft,
      y: element.offsetTop,
      width: element.offsetWidth,
      height: element.offsetHeight,
    });
  const observer = new ResizeObserver(look);
  observer.observe(element);
  if (element.parentElement) observer.observe(element.parentElement);
  return () => {
    observer.disconnect();
    tell(null);
  };
};
