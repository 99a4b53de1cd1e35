const sides: Readonly<Record<string, string>> = { L: 'R', R: 'L' };

/** The other end of "09L" is "27R", of "36" is "18"; null where the rule says nothing. */
export function impliedDesignator(designator: string): string | null {
  const parts = /^(\d{2})([A-Z]?)$/.exec(designator);
  if (!parts) return null;
  const [, digits = '', letter = ''] = parts;
  const number = Number(digits);
  if (number < 1 || number > 36) return null;
  return String(number > 18 ? number - 18 : number + 18).padStart(2, '0') + (sides[letter] ?? letter);
}
