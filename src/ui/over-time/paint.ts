import { blockedColour, classColours, faded, flatColour } from '../../../styles/ramps';
import type { LightEntry } from '../../figures/when/light-row';
import { isSunUp } from '../words/sample-words';

/** What is painted of a stretch of time. */
export type Painted = LightEntry;

/** The lines over glare and over light from above: paper on data, as in the legend. */
const lineColour = '#fbf8ef';

/**
 * By day a colour fades with what the picture is worth, and flat light has one of its own. Twilight and night say
 * already that nothing is worth a wait: made paler they would look like day. Glare stays dark, so that its lines show.
 */
export function colourOf({ light, glare, flat, blocked, worth }: Painted): string {
  if (blocked) return blockedColour;
  return isSunUp(light) && !glare
    ? faded(flat ? flatColour : classColours[light], worth)
    : classColours[light];
}

/** Whether level lines say that the light is from above: not without sun. */
export const isFromAbove = ({ light, flat, blocked }: Painted): boolean =>
  light === 'top-lit' && !flat && !blocked;

/** A canvas of the size that it has on the page, in device pixels; draw in CSS pixels. Null where there is no canvas. */
export function sized(
  canvas: HTMLCanvasElement,
  width: number,
  height: number,
): CanvasRenderingContext2D | null {
  const ratio = devicePixelRatio || 1;
  canvas.width = Math.max(1, Math.round(width * ratio));
  canvas.height = Math.max(1, Math.round(height * ratio));
  const context = canvas.getContext('2d');
  context?.scale(ratio, ratio);
  return context;
}

/** Fills a box with the light of a stretch: its colour, slanting lines for glare, level ones for light from above. */
export function fillLight(
  context: CanvasRenderingContext2D,
  painted: Painted,
  x: number,
  y: number,
  width: number,
  height: number,
): void {
  context.fillStyle = colourOf(painted);
  context.fillRect(x, y, width, height);
  const glare = painted.glare && !painted.blocked;
  const above = isFromAbove(painted);
  if (!glare && !above) return;
  context.save();
  context.beginPath();
  context.rect(x, y, width, height);
  context.clip();
  context.strokeStyle = lineColour;
  context.lineWidth = 1.5;
  context.beginPath();
  if (above)
    for (let at = y + 4; at < y + height; at += 7) {
      context.moveTo(x, at);
      context.lineTo(x + width, at);
    }
  if (glare)
    for (let at = Math.floor((x - height) / 6) * 6; at < x + width; at += 6) {
      context.moveTo(at, y + height);
      context.lineTo(at + height, y);
    }
  context.stroke();
  context.restore();
}
