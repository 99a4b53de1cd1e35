/** Tags of a TIFF that hold text (TIFF 6.0, sections 6 and 8). */
export const tags = { ImageDescription: 270, Copyright: 33432 } as const;

/** Too long for their entries: the library then writes where they stand. */
const filler = '.....';

/** What the library is to write for texts that follow. */
export const placeholders = (withCopyright: boolean) => ({
  ImageDescription: filler,
  ...(withCopyright ? { Copyright: filler } : {}),
});

/**
 * A TIFF with its texts put behind its pixels: the library keeps 1,000 bytes for all that is told of a picture, and what is longer
 * spoils them. `texts`: by tag; one that the file has no entry for is left out.
 */
export function withTexts(file: ArrayBuffer, texts: Readonly<Record<number, string>>): ArrayBuffer {
  const given = new DataView(file);
  // As the library writes it: most significant byte first, one directory.
  const directory = given.getUint32(4);
  const entries = Array.from({ length: given.getUint16(directory) }, (_, i) => directory + 2 + 12 * i);
  let bytes = new Uint8Array(file);
  for (const entry of entries) {
    const text = texts[given.getUint16(entry)];
    if (text === undefined) continue;
    const value = new TextEncoder().encode(`${ascii(text)}\0`);
    // Values begin on a word.
    const at = bytes.length + (bytes.length % 2);
    const longer = new Uint8Array(at + value.length);
    longer.set(bytes);
    longer.set(value, at);
    const view = new DataView(longer.buffer);
    view.setUint32(entry + 4, value.length);
    view.setUint32(entry + 8, at);
    bytes = longer;
  }
  return bytes.buffer;
}

/** TIFF 6.0: 7-bit ASCII. Letters without their accents; what is no letter of ASCII then is a question mark. */
const ascii = (text: string): string =>
  text
    .replace(/\u00a9/g, '(c)')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^ -~]/g, '?');
