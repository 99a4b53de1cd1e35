import { alongOf, inFileOrder } from './order';
import { toCodes } from './codes';
import type { CatalogueFile } from './columns';
import { toDigits } from './digits';
import { isLocated } from './doubts';
import { byFrequency, dictionary, differences, endedLines, feet } from './encode-parts';
import { toShorthand } from './shorthand';
import { airfieldKinds, type Airfield, type CatalogueRunway } from './types';
import { toUsualCase, turned } from './usual-case';

type Row = Omit<Airfield, 'index' | 'country' | 'runwayCount' | 'locatedCount'> & {
  readonly runways: readonly CatalogueRunway[];
};

/** Local codes in one line; a code that is the ICAO code without its first letter (GDK of KGDK) is a star, the region's letters (TX of US-TX) an at sign. */
const localLine = ({ icao, localCodes, region }: Row) => {
  const letters = region.slice(3);
  return localCodes
    .map((code) => {
      if (icao !== null && code === icao.slice(1)) return '*';
      return letters.length > 1 ? code.replace(letters, '@') : code;
    })
    .join(' ');
};

/** A star stands for the ICAO code without its first letter. */
const iataLine = ({ icao, iata }: Row) => (iata !== null && icao?.slice(1) === iata ? '*' : (iata ?? ''));

const plain = (text: string) => toUsualCase(text.replaceAll(turned, ' '));

export function airfieldColumns(airfields: readonly Row[]): CatalogueFile['airfields'] {
  const filed = inFileOrder(airfields);
  const regions = dictionary(filed.map((a) => a.region));
  const towns = filed.map((a) => plain(a.town));
  const names = filed.map((a, i) => {
    const [name, town] = [plain(a.name), towns[i] ?? ''];
    return town !== '' && name.startsWith(town) ? `=${name.slice(town.length)}` : name;
  });
  const along = filed.map(alongOf);
  const begins = filed.map((a, i) => a.region !== filed[i - 1]?.region);
  const regionCounts = regions.words.map(() => 0);
  for (const place of regions.places) regionCounts[place] = (regionCounts[place] ?? 0) + 1;
  const counts = byFrequency(
    filed.map(({ runways }) => runways.length * most + runways.filter(isLocated).length),
  );
  return {
    kinds: toDigits(filed.map((a) => airfieldKinds.indexOf(a.kind))),
    regions: toCodes(regions.words),
    regionCounts,
    names: toShorthand(endedLines(names)),
    towns: endedLines(towns.map((town, i) => (town !== '' && town === towns[i - 1] ? '=' : town))),
    icao: toCodes(filed.map((a) => a.icao ?? '')),
    iata: toCodes(filed.map(iataLine)),
    local: toCodes(filed.map(localLine)),
    begins: toDigits(differences(along.filter((_, i) => begins[i]))),
    steps: toDigits(along.map((at, i) => at - (along[i - 1] ?? 0)).filter((_, i) => !begins[i])),
    elevation: toDigits(differences(filed.map((a) => feet(a.elevation)))),
    runwayCounts: counts.words.flatMap((both) => [Math.floor(both / most), both % most]),
    runways: toDigits(counts.places),
  };
}

/** More runways than an airfield has. */
const most = 1000;
