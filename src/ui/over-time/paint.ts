import { blockedColour, classColours } from '../../../styles/ramps';
import type { LightClass } from '../../figures/types';

/** What is painted of a stretch of time. */
export interface Painted {
  readonly light: LightClass;
  readonly glare: boolean;
  readonly blocked: boolean;
}

/** The lines over glare and over light from above: paper on data, as in the legend. */
const lineColour = '#fbf8ef';

export const colourOf = ({ light, blocked }: Painted): string =>
  blocked ? blockedColour : classColours[light];

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
  const { light, glare, blocked } = painted;
  if (blocked || (!glare && light !== 'top-lit')) return;
  context.save();
  context.beginPath();
  context.rect(x, y, width, height);
  context.clip();
  context.strokeStyle = lineColour;
  context.lineWidth = 1.5;
  context.beginPath();
  if (light === 'top-lit')
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
