import { wrap180 } from '../../figures/geometry/angles';
import type { Position } from '../../survey/document';
import type { Bounds } from '../map-surface';
import { degreesPerPixel } from '../screen';
import { line, overlay, type Overlay, type OverlayFeature } from './features';

/** Degrees between bold lines, with the number of fine ones in each: whole degrees, minutes and seconds. */
const steps = [
  { bold: 30, parts: 3 },
  { bold: 10, parts: 2 },
  { bold: 5, parts: 5 },
  { bold: 1, parts: 6 },
  { bold: 1 / 2, parts: 3 },
  { bold: 1 / 6, parts: 2 },
  { bold: 1 / 12, parts: 5 },
  { bold: 1 / 60, parts: 6 },
  { bold: 1 / 120, parts: 3 },
  { bold: 1 / 360, parts: 2 },
  { bold: 1 / 720, parts: 5 },
  { bold: 1 / 1800, parts: 2 },
  { bold: 1 / 3600, parts: 2 },
] as const;
/** Pixels that bold lines stand apart at least. */
const roomPixels = 150;

/** Meridians and parallels over the given bounds and half as much again on each side. */
export function gridOverlay([[west, south], [east, north]]: Bounds, zoom: number): Overlay {
  const least = roomPixels * degreesPerPixel(zoom);
  const { bold, parts } = [...steps].reverse().find((s) => s.bold >= least) ?? steps[0];
  const [padX, padY] = [(east - west) / 2, (north - south) / 2];
  const [x0, x1] = [west - padX, east + padX];
  const [y0, y1] = [Math.max(-85, south - padY), Math.min(85, north + padY)];
  // Half the world and more would be drawn the shorter way round, which is the other one.
  const parts90 = Math.ceil((x1 - x0) / 90);
  const along = Array.from({ length: parts90 + 1 }, (_, i) => x0 + ((x1 - x0) * i) / parts90);
  return overlay([
    ...ruled(
      x0,
      x1,
      bold,
      parts,
      (lng) => [
        [lng, y0],
        [lng, y1],
      ],
      'E',
      'W',
    ),
    ...ruled(y0, y1, bold, parts, (lat) => along.map((lng): Position => [lng, lat]), 'N', 'S'),
  ]);
}

function ruled(
  from: number,
  to: number,
  bold: number,
  parts: number,
  lineAt: (value: number) => readonly Position[],
  positive: string,
  negative: string,
): OverlayFeature[] {
  const fine = bold / parts;
  const lines: OverlayFeature[] = [];
  for (let k = Math.ceil(from / fine); k * fine <= to; k++) {
    const value = k * fine;
    const label = k % parts === 0 ? angleText(value, positive, negative) : '';
    lines.push(line(lineAt(value), { weight: label === '' ? 'fine' : 'bold', label }));
  }
  return lines;
}

/** "51°07′30″ N": as many parts as the value has. */
function angleText(value: number, positive: string, negative: string): string {
  const wrapped = positive === 'E' ? wrap180(value) : value;
  const seconds = Math.round(Math.abs(wrapped) * 3600);
  const two = (x: number) => String(x).padStart(2, '0');
  const [d, m, s] = [Math.floor(seconds / 3600), Math.floor((seconds % 3600) / 60), seconds % 60];
  const text = `${d}°${m > 0 || s > 0 ? `${two(m)}′` : ''}${s > 0 ? `${two(s)}″` : ''}`;
  return seconds === 0 ? text : `${text} ${wrapped > 0 ? positive : negative}`;
}
