import { dayOf, type PlaceLists } from './place-lists';

/** The places as waypoints (GPX 1.1, topografix.com/GPX/1/1), WGS 84. `copyright` has whose data are behind them. */
export function placeWaypoints(lists: PlaceLists): string {
  const { places, site, credits } = lists;
  const copyright = credits.length > 0 ? `<copyright author="${escaped(credits.join(' '))}"/>` : '';
  const points = places.map(
    ({ candidate: { position, ground }, name, sentence }, i) =>
      `  <wpt lat="${position[1]}" lon="${position[0]}">\n    <name>${escaped(`${i + 1} ${name}`)}</name>\n` +
      `    <desc>${escaped(sentence)}</desc>\n    <type>${ground === 'open' ? 'open ground' : 'check first'}</type>\n  </wpt>\n`,
  );
  return (
    '<?xml version="1.0" encoding="UTF-8"?>\n' +
    '<gpx version="1.1" creator="Sunside" xmlns="http://www.topografix.com/GPX/1/1">\n' +
    `  <metadata><name>${escaped(`${site}: where to stand, ${dayOf(lists)}`)}</name>${copyright}</metadata>\n` +
    `${points.join('')}</gpx>\n`
  );
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};
/** What XML 1.0 allows, for the rest is left out. */
const isAllowed = (char: string): boolean => {
  const code = char.codePointAt(0) ?? 0;
  return code >= 0x20 ? code !== 0xfffe && code !== 0xffff : code === 0x9 || code === 0xa || code === 0xd;
};
const escaped = (text: string): string =>
  [...text]
    .filter(isAllowed)
    .map((char) => entities[char] ?? char)
    .join('');
