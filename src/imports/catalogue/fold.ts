/** Letters that Unicode does not take apart into a base letter and an accent. */
const letters: Readonly<Record<string, string>> = {
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  ħ: 'h',
  ı: 'i',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  þ: 'th',
};

const bare = (run: string) =>
  run
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .replace(/[øłđðħıßæœþ]/g, (letter) => letters[letter] ?? '')
    // Apostrophes of every kind; what else is not ASCII parts two words.
    .replace(/[‘’ʻʼʽˈ′]/g, '')
    .replace(/[^a-z]+/g, ' ');

/**
 * Text as it is searched: lower case, accents gone, apostrophes gone (O'Hare -> ohare), everything else that is
 * no letter or digit one space. Line feeds stay, so that a whole column is folded at once.
 */
export function foldForSearch(text: string): string {
  return (
    text
      .toLowerCase()
      .replace(/[^\0-\x7f]+/g, bare)
      .replace(/['`]/g, '')
      // A single space is left where it is: most runs are one, and a match for each takes longer than all else.
      .replace(/(?: [^a-z0-9\n]|[^a-z0-9\n ])[^a-z0-9\n]*/g, ' ')
  );
}
