/** px from the upper left corner of what an element is placed in. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An attachment that tells where its element lies, now and whenever it or what it is placed in changes size; null once it goes. */
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
  if (element.offsetParent) observer.observe(element.offsetParent);
  return () => {
    observer.disconnect();
    tell(null);
  };
};
