import { describe, expect, it } from 'vitest';
import { drawIcon, icons } from '../../../src/cli/page/icons';
import { decodePng, type Colour } from '../../support/png';

const paper: Colour = [0xf5, 0xf0, 0xe3, 255];
const runway: Colour = [0x22, 0x25, 0x1f, 255];

describe.each(icons)('$fileName', ({ size, maskable }) => {
  const pixels = decodePng(Buffer.from(drawIcon({ size, maskable })));
  /** The colour at a place of the drawing's square of 64. */
  const at = (x: number, y: number) => {
    const scale = (size / 64) * (maskable ? 0.8 : 1);
    const shift = (size - 64 * scale) / 2;
    return pixels[Math.floor(y * scale + shift)]?.[Math.floor(x * scale + shift)];
  };

  it('[X20] has its size, and the drawing in its place', () => {
    expect([pixels.length, pixels[0]?.length]).toEqual([size, size]);
    // On the line of the runway, and beside it.
    expect(at(32, 40)).toEqual(runway);
    expect(at(32, 5)).toEqual(paper);
    expect(at(30, 57)).toEqual([0xc4, 0x39, 0x1d, 255]);
  });

  it('[X20] fills its square where a system cuts it, and has round corners where none does', () => {
    expect(pixels[0]?.[0]?.[3]).toBe(maskable ? 255 : 0);
    expect(pixels[size - 1]?.[size - 1]?.[3]).toBe(maskable ? 255 : 0);
  });
});
