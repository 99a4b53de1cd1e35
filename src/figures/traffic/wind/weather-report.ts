import { parseMetar, parseTAFAsForecast } from 'metar-taf-parser';
import type { WindUnit } from './wind';

/** The only file that imports metar-taf-parser: what it reads, in our words, and none of its winds unchecked. */

/** A wind as the library read it: to be compared with the group itself, never to be used alone. */
export interface LibraryWind {
  readonly from: number | null;
  readonly speed: number;
  readonly gust: number | null;
  readonly unit: WindUnit;
}

interface GivenWind {
  readonly degrees?: number;
  readonly speed: number;
  readonly gust?: number;
  readonly unit: string;
}

const libraryWind = (wind: GivenWind | undefined): LibraryWind | null =>
  wind
    ? {
        from: wind.degrees ?? null,
        speed: wind.speed,
        gust: wind.gust ?? null,
        unit: wind.unit === 'MPS' ? 'MPS' : wind.unit === 'KM/H' ? 'KMH' : 'KT',
      }
    : null;

/** What the library makes of a METAR; null where it gives up. */
export function libraryMetar(text: string): { readonly wind: LibraryWind | null } | null {
  try {
    return { wind: libraryWind(parseMetar(text).wind) };
  } catch {
    return null;
  }
}

/** A stretch of a TAF as the library cut it. Instants in ms since 1970, UTC. */
export interface LibraryPeriod {
  readonly from: number;
  readonly to: number;
  /** Null for the forecast's own first line. */
  readonly change: string | null;
  /** Percent, null where none is said. */
  readonly probability: number | null;
  /** When a gradual change ("BECMG") is done; null for any other. */
  readonly doneBy: number | null;
  readonly raw: string;
  readonly wind: LibraryWind | null;
}

/** What the library makes of a TAF that was issued at an instant; null where it gives up. */
export function libraryTaf(text: string, issued: number): readonly LibraryPeriod[] | null {
  try {
    return parseTAFAsForecast(text, { issued: new Date(issued) }).forecast.map((f) => ({
      from: f.start.getTime(),
      to: f.end.getTime(),
      change: f.type ?? null,
      probability: f.probability ?? null,
      doneBy: 'by' in f ? f.by.getTime() : null,
      raw: f.raw,
      wind: libraryWind(f.wind),
    }));
  } catch {
    return null;
  }
}
