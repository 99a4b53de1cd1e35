/**
 * What stands most often in names, each written as one capital letter, which text in small letters leaves free
 * (`usual-case.ts`). From the first on: where two fit, the first is taken. These were found by trying which shortens the packed
 * file most. Order and number are part of the format.
 */
const phrases = [
  ' international airport;',
  ' seaplane base;',
  ' ranch airport;',
  ' aerodrome;',
  ' ultralight',
  ' airfield;',
  ' airstrip;',
  ' heliport;',
  ' municipal',
  ' air base;',
  ' airport;',
  ' regional',
  ' helipad;',
  ' airpark;',
  ' memorial',
  ' hospital',
  ' landing',
  ' private',
  ' field;',
  ' county',
  ' strip;',
  ' valley',
  ' creek',
  ' farm',
  ' air',
  ' |de',
] as const;

const capitalA = 'A'.charCodeAt(0);

/** Ended lines in small letters, shortened. */
export function toShorthand(text: string): string {
  let short = text;
  for (const [i, phrase] of phrases.entries())
    short = short.replaceAll(phrase, String.fromCharCode(capitalA + i));
  return short;
}

/** The text again. */
export const fromShorthand = (text: string): string =>
  text.replace(/[A-Z]/g, (sign) => phrases[sign.charCodeAt(0) - capitalA] ?? '');
