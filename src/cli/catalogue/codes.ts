/** Keys such as "US-6091" that the data invent where an airfield has no code. */
const invented = /^[A-Z]{2}-\w+$/;
const fourLetters = /^[A-Z]{4}$/;

/**
 * Which code is which. The data have a key (often the ICAO code at the time of entry, never changed since), the
 * code that navigation sets use now, the national code and the IATA code. Four letters of the second, or of the
 * key where that is missing, are taken for the ICAO code.
 */
export function codesOf(key: string, iata: string, navigation: string, national: string) {
  const now = navigation === '' ? key : navigation;
  const icao = fourLetters.test(now) ? now : null;
  const others = [navigation, invented.test(key) ? '' : key, national].filter(
    (code) => code !== '' && code !== icao && code !== iata,
  );
  return {
    icao,
    iata: iata === '' ? null : iata,
    // A code with a space would be read as two.
    localCodes: [...new Set(others.map((code) => code.toUpperCase().replace(/\s+/g, '')))],
  };
}
