/** A heading without case, spaces, signs and its unit: "Altitude (ft)" is "altitude" in "ft". */
export interface Heading {
  readonly index: number;
  readonly name: string;
  readonly unit: string | null;
}

export const headingsOf = (cells: readonly string[]): readonly Heading[] =>
  cells.map((cell, index) => {
    const [, inBrackets, unit = null] = /^(.*?)\s*[([]\s*([^()[\]]*?)\s*[)\]]\s*$/.exec(cell) ?? [];
    const name = (inBrackets ?? cell)
      .replace(/([\p{Ll}\d])(?=\p{Lu})/gu, '$1 ')
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim();
    const [, shorter, last] = /^(.+) (m|metres|meters|ft|feet)$/.exec(name) ?? [];
    return { index, name: shorter ?? name, unit: unit?.toLowerCase() ?? last ?? null };
  });

/** The first heading that is one of the names, in the order of the names. */
export function headingOf(headings: readonly Heading[], ...names: readonly string[]): Heading | null {
  for (const name of names) {
    const found = headings.find((h) => h.name === name);
    if (found) return found;
  }
  return null;
}
