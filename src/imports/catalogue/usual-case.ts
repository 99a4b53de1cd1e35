/** A letter after this sign is large where it would be small, or small where it would be large. */
export const turned = '|';

const letter = /\p{L}/u;
/** What a word is made of; its first letter is large. */
const inWord = /[\p{L}\p{N}']/u;

const large = (c: string) => c.toUpperCase();
const small = (c: string) => c.toLowerCase();

/**
 * Text in small letters only: a word begins with a large one and goes on with small ones, and what does not is marked
 * ("RAF Éire de Sol" -> "r|a|f éire |de sol"). Names pack better so, and are nearly as they are searched.
 */
export function toUsualCase(text: string): string {
  let out = '';
  let begins = true;
  for (const c of text) {
    if (letter.test(c)) {
      // A letter that has no other form is both; one whose small form is not the way back stays large.
      const asSmall = large(small(c)) === c ? small(c) : c;
      const usual = begins ? large(asSmall) : small(asSmall);
      out += usual === c ? asSmall : turned + asSmall;
    } else out += c;
    begins = !inWord.test(c);
  }
  return out;
}

/** The text as it is written. */
export function fromUsualCase(text: string): string {
  let out = '';
  let begins = true;
  let turn = false;
  for (const c of text) {
    if (c === turned) {
      turn = true;
      continue;
    }
    out += !letter.test(c) ? c : begins !== turn ? large(c) : small(c);
    begins = !inWord.test(c);
    turn = false;
  }
  return out;
}
