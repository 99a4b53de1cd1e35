/**
 * Calls once what is on the page now has been painted: for what somebody who looks can do without for a frame. A page in the
 * background paints nothing, and goes on at once.
 */
export function afterPaint(go: () => void): void {
  // A frame's own callbacks come before it is painted, a task after it.
  const next = () => setTimeout(go);
  if (document.hidden) next();
  else requestAnimationFrame(next);
}
