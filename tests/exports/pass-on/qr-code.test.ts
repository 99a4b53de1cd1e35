import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { qrCode } from '../../../src/exports/pass-on/qr-code';

/** Draws the path as an SVG viewer would, four pixels a module, and reads it with an independent reader. */
function readBack(text: string): string | null {
  const code = qrCode(text);
  if (!code) return null;
  const scale = 4;
  const side = code.size * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, length] of code.path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let py = Number(y) * scale; py < (Number(y) + 1) * scale; py++)
      for (let px = Number(x) * scale; px < (Number(x) + Number(length)) * scale; px++)
        pixels.fill(0, (py * side + px) * 4, (py * side + px) * 4 + 3);
  return jsQR(pixels, side, side)?.data ?? null;
}

describe('the QR code of a link', () => {
  it.each([40, 300, 700, 1200])('[E55] %i bytes are read back by another program', (length) => {
    const link = `https://example.org/#survey-1=${'aB3-_xY9'.repeat(200)}`.slice(0, length);
    expect(readBack(link)).toBe(link);
  });

  it('[E56] beyond 1,200 bytes, not characters, there is none', () => {
    expect(qrCode('x'.repeat(1201))).toBeNull();
    expect(qrCode('é'.repeat(601))).toBeNull();
  });
});
