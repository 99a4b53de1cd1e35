/**
 * The text of a table's bytes. Spreadsheets write UTF-8, with or without a byte order mark, UTF-16 with one, or the
 * old Western code page, which is what is left when the bytes are no UTF-8.
 */
export function decodeTable(bytes: Uint8Array): string {
  const [a, b] = bytes;
  if (a === 0xff && b === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (a === 0xfe && b === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
