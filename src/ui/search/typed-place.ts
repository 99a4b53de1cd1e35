import { parseCoordinates, type CoordinatesReading } from '../../units/coordinates';

/**
 * What is typed into the airfield search as coordinates: a position, or what to mend about it; null for words and
 * codes. Only digits, signs and hemisphere letters, with more in it than a code has.
 */
export function typedPlace(text: string): CoordinatesReading | null {
  const plain = text.trim();
  const digits = plain.match(/\d/g)?.length ?? 0;
  const other = plain.replace(/\b(north|south|east|west|deg(rees?)?)\b/giu, '').match(/\p{L}/gu) ?? [];
  const isPlace =
    digits >= 2 &&
    other.length <= 2 &&
    other.every((letter) => /[nsew]/i.test(letter)) &&
    /[\s,;°.'′]/.test(plain);
  return isPlace ? parseCoordinates(plain) : null;
}
