import { readFileSync } from 'node:fs';
import { Resvg } from '@resvg/resvg-js';

export interface Icon {
  readonly fileName: string;
  /** Pixels of its side. */
  readonly size: number;
  /** Systems cut a maskable icon into a shape of their own: it fills its square, and what counts is in the middle. */
  readonly maskable: boolean;
}

/** Some systems take an installed program's icon as PNG only. */
export const icons: readonly Icon[] = [
  { fileName: 'icon-192.png', size: 192, maskable: false },
  { fileName: 'icon-512.png', size: 512, maskable: false },
  { fileName: 'icon-maskable-512.png', size: 512, maskable: true },
  { fileName: 'apple-touch-icon.png', size: 180, maskable: true },
];

const drawing = readFileSync(new URL('../../public/icon.svg', import.meta.url), 'utf8');
const paper = '#f5f0e3';

/** Of a maskable icon a circle of 80 % of the width is safe (W3C Web Application Manifest, icon masks). */
const maskableShare = 0.8;

/** The drawing smaller, amid paper to the edges. */
const withSafeZone = (svg: string, size: number): string => {
  const side = size * maskableShare;
  const margin = (size - side) / 2;
  const inner = svg.replace('<svg ', `<svg x="${margin}" y="${margin}" width="${side}" height="${side}" `);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${size}"><rect width="100%" height="100%" fill="${paper}"/>${inner}</svg>`;
};

/** `src/public/icon.svg` as PNG. */
export function drawIcon({ size, maskable }: Omit<Icon, 'fileName'>): Uint8Array {
  const svg = maskable ? withSafeZone(drawing, size) : drawing;
  return new Resvg(svg, { fitTo: { mode: 'width', value: size } }).render().asPng();
}
