import { sexagesimal } from './angle';
import { readAngle, type Axis } from './angle-text';

/** `[longitude, latitude]`, degrees, WGS84. */
type Position = readonly [lng: number, lat: number];

export type CoordinatesReading =
  { readonly ok: true; readonly position: Position } | { readonly ok: false; readonly reason: string };

export type CoordinateStyle = 'decimal' | 'sexagesimal';

const example = `Type for example 51.4775, -0.485 or 51°28'39"N 0°29'06"W.`;

/**
 * Latitude and longitude as people write them: decimal degrees, degrees and minutes, or degrees, minutes and seconds;
 * with hemisphere letters (before or behind the numbers, in either order) or signs; also the run-together form of
 * aeronautical publications, 512839N 0002906W. Without letters the latitude comes first. What cannot be read is
 * answered with the place and the mend.
 */
export function parseCoordinates(text: string): CoordinatesReading {
  const plain = plainText(text);
  if (plain === '') return { ok: false, reason: `Nothing is typed. ${example}` };
  const strange = /[^0-9NSEW°'",;:.+\-\s]/u.exec(plain)?.[0];
  if (strange !== undefined)
    return { ok: false, reason: `"${strange}" has no meaning in coordinates. ${example}` };
  const letters = plain.match(/[NSEW]/g) ?? [];
  return letters.length === 0 ? withoutLetters(plain) : withLetters(plain, letters);
}

/** One spelling for the many signs that stand for degrees, minutes, seconds and minus; upper case. */
function plainText(text: string): string {
  const plain = text
    .replace(/[º˚]|\bdeg(rees?)?\b/giu, '°')
    .replace(/''|[″”“„ʺ]/gu, '"')
    .replace(/[′’‘´`ʹ]/gu, "'")
    .replace(/[\u2212\u2013\u2014]/gu, '-')
    .replace(/\b(north|south|east|west)\b/giu, (word) => word.charAt(0))
    .toUpperCase()
    .trim();
  // "51,4775 -0,485": decimal commas, which only two numbers with one comma inside each can mean.
  return /^[^,.]*\d,\d[^,.]*(?:[,;]\s|;|\s)[^,.]*\d,\d[^,.]*$/.test(plain)
    ? plain.replace(/(\d),(\d)/g, '$1.$2')
    : plain;
}

function withLetters(plain: string, letters: readonly string[]): CoordinatesReading {
  if (letters.length !== 2)
    return {
      ok: false,
      reason: `There ${letters.length === 1 ? 'is one hemisphere letter' : `are ${letters.length} hemisphere letters`}, two are needed: N or S for the latitude, E or W for the longitude.`,
    };
  const [first = '', second = ''] = letters;
  const axisOf = (letter: string): Axis => (/[NS]/.test(letter) ? 'latitude' : 'longitude');
  if (axisOf(first) === axisOf(second))
    return {
      ok: false,
      reason: `${first} and ${second} both belong to a ${axisOf(first)}. Use N or S for one number and E or W for the other.`,
    };
  const cut = /^[NSEW]/.test(plain) ? plain.indexOf(second, 1) : plain.indexOf(first) + 1;
  return together(
    readAngle(tidy(plain.slice(0, cut)), axisOf(first)),
    readAngle(tidy(plain.slice(cut)), axisOf(second)),
  );
}

function withoutLetters(plain: string): CoordinatesReading {
  const halves = splitPlain(plain);
  if (!halves)
    return {
      ok: false,
      reason: `It is not clear where the latitude ends and the longitude begins. Put a comma between them. ${example}`,
    };
  const [first, second] = [readAngle(tidy(halves[0]), 'latitude'), readAngle(tidy(halves[1]), 'longitude')];
  if (!first.ok && first.tooLarge !== undefined && first.tooLarge <= 180 && second.ok)
    return {
      ok: false,
      reason: `${first.reason} Without letters the latitude comes first: type the longitude second, or add letters (N or S, E or W).`,
    };
  return together(first, second);
}

/** Where the latitude ends: at the only comma, at the second degree sign's number, or half way through the numbers. */
function splitPlain(plain: string): readonly [string, string] | null {
  const parts = plain.split(/[,;]/).filter((part) => part.trim() !== '');
  if (parts.length === 2) return parts as [string, string];
  if (parts.length !== 1) return null;
  const numbers = [...plain.matchAll(/[+-]?\s*\d+(?:\.\d*)?/g)];
  const degreeSigns = [...plain.matchAll(/[+-]?\s*\d+(?:\.\d*)?\s*°/g)];
  const start =
    degreeSigns.length === 2
      ? degreeSigns[1]?.index
      : degreeSigns.length === 0 && numbers.length % 2 === 0
        ? numbers[numbers.length / 2]?.index
        : undefined;
  return start ? [plain.slice(0, start), plain.slice(start)] : null;
}

const tidy = (half: string) => half.replace(/^[\s,;]+|[\s,;]+$/g, '');

function together(a: ReturnType<typeof readAngle>, b: ReturnType<typeof readAngle>): CoordinatesReading {
  if (!a.ok) return { ok: false, reason: a.reason };
  if (!b.ok) return { ok: false, reason: b.reason };
  return { ok: true, position: a.axis === 'latitude' ? [b.degrees, a.degrees] : [a.degrees, b.degrees] };
}

/**
 * Decimals of degrees and of seconds. `file`: as the file has them, about 1 cm and 30 cm. `feet`: what somebody on foot
 * or a reader of a letter can use, about 1 m and 3 m.
 */
const decimalsFor = { file: { degrees: 7, seconds: 2 }, feet: { degrees: 5, seconds: 1 } } as const;

/** "51.4775, -0.485" or "51°28′39.00″N 0°29′06.00″W": latitude first; `parseCoordinates` reads both back. */
export function formatCoordinates(
  [lng, lat]: Position,
  style: CoordinateStyle,
  use: keyof typeof decimalsFor = 'file',
): string {
  const digits = decimalsFor[use];
  if (style === 'decimal') return `${decimal(lat, digits.degrees)}, ${decimal(lng, digits.degrees)}`;
  const angle = (value: number) => angleText(value, digits.seconds);
  return `${angle(lat)}${lat < 0 ? 'S' : 'N'} ${angle(lng)}${lng < 0 ? 'W' : 'E'}`;
}

const decimal = (degrees: number, digits: number) => String(Number(degrees.toFixed(digits)) + 0);

function angleText(angle: number, digits: number): string {
  const { degrees, minutes, seconds } = sexagesimal(angle, digits);
  return `${degrees}°${String(minutes).padStart(2, '0')}′${seconds.toFixed(digits).padStart(3 + digits, '0')}″`;
}
