/** A file name without extension that every system takes, out of words; `otherwise` where nothing of them is left. */
export function fileStem(words: string, otherwise: string): string {
  const plain = words
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return plain.slice(0, 60).toLowerCase() || otherwise;
}
