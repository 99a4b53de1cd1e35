import { describe, expect, test } from 'vitest';
import { decodeTable } from '../../../src/imports/tables/decode';

const text = 'Länge;5 °';
const utf16 = (littleEndian: boolean) => {
  const bytes = new DataView(new ArrayBuffer(2 * text.length + 2));
  [...`\ufeff${text}`].forEach((c, i) => bytes.setUint16(2 * i, c.charCodeAt(0), littleEndian));
  return new Uint8Array(bytes.buffer);
};

describe('the bytes of a table', () => {
  test.each([
    ['UTF-8', new TextEncoder().encode(text)],
    ['UTF-8 with a byte order mark', new TextEncoder().encode(`\ufeff${text}`)],
    ['UTF-16, little end first', utf16(true)],
    ['UTF-16, big end first', utf16(false)],
    ['the Western code page', Uint8Array.from(text, (c) => c.charCodeAt(0))],
  ])('are read as %s', (_how, bytes) => {
    expect(decodeTable(bytes)).toBe(text);
  });
});
