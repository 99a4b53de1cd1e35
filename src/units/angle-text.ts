export type Axis = 'latitude' | 'longitude';

export type AngleReading =
  | { readonly ok: true; readonly axis: Axis; readonly degrees: number }
  | {
      readonly ok: false;
      readonly reason: string;
      /** Degrees, when the only fault is that they lie out of range. */
      readonly tooLarge?: number;
    };

const limit = { latitude: 90, longitude: 180 } as const;
/** Digits of the whole degrees where degrees, minutes and seconds run together (ICAO Annex 15: DDMMSS, DDDMMSS). */
const degreeDigits = { latitude: 2, longitude: 3 } as const;

/** One angle: optional sign or hemisphere letter and one to three numbers; signs as `parseCoordinates` spells them. */
export function readAngle(text: string, axis: Axis): AngleReading {
  const fail = (what: string): AngleReading => ({ ok: false, reason: `${capital(axis)}: ${what}` });
  const letter = /[NSEW]/.exec(text)?.[0];
  const body = text.replace(/[NSEW]/, '').trim();
  const sign = /^[+-]/.exec(body)?.[0];
  if (letter && sign)
    return fail(
      `"${text}" has both a sign and a letter. Leave out the ${sign === '-' ? 'minus' : 'plus'} sign or the letter.`,
    );
  const unsigned = body.replace(/^[+-]\s*/, '');
  if (unsigned === '')
    return fail('there is no number. Type degrees, with minutes and seconds if you have them.');

  const numbers = letter ? (runTogether(unsigned, axis) ?? separate(unsigned)) : separate(unsigned);
  if (!numbers)
    return fail(
      `"${text}" cannot be read. Type degrees, minutes and seconds in this order, such as 51°28'39".`,
    );
  const [degrees = 0, minutes = 0, seconds = 0] = numbers.map(Number);
  if (numbers.slice(0, -1).some((n) => n.includes('.')))
    return fail(`only the last number of "${text}" can have decimals.`);
  if (minutes >= 60) return fail(`${minutes} minutes are too many; they go up to 59.`);
  if (seconds >= 60) return fail(`${seconds} seconds are too many; they go up to 59.`);

  const size = degrees + minutes / 60 + seconds / 3600;
  if (size > limit[axis])
    return {
      ok: false,
      reason: `${capital(axis)}: ${Number(size.toFixed(4))} is outside ${limit[axis]} degrees.`,
      tooLarge: size,
    };
  const negative = sign === '-' || letter === 'S' || letter === 'W';
  return { ok: true, axis, degrees: negative && size !== 0 ? -size : size };
}

/** "512839.5" for a latitude: degrees, minutes and perhaps seconds without anything between them. */
function runTogether(text: string, axis: Axis): readonly string[] | null {
  const [, whole = '', decimals = ''] = /^(\d+)(\.\d+)?$/.exec(text) ?? [];
  const d = degreeDigits[axis];
  if (whole.length === d + 2) return [whole.slice(0, d), whole.slice(d) + decimals];
  if (whole.length === d + 4)
    return [whole.slice(0, d), whole.slice(d, d + 2), whole.slice(d + 2) + decimals];
  return null;
}

/** Up to three numbers with their signs or with spaces or colons between them. */
function separate(text: string): readonly string[] | null {
  const number = String.raw`(\d+(?:\.\d*)?|\.\d+)`;
  const pattern = new RegExp(
    `^${number}(?:\\s*[°:\\s]\\s*(?:${number}(?:\\s*[':\\s]\\s*(?:${number}\\s*"?)?)?)?)?$`,
  );
  const found = pattern.exec(text);
  return found ? found.slice(1).filter((n): n is string => n !== undefined) : null;
}

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
