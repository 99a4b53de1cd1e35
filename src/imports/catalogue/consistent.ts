import type { Columns } from './airfield-columns';
import { perDegree } from './columns';
import type { Numbers } from './types';

/**
 * What is wrong with the columns, or null. Airfields are made from them only when a person asks for one, so
 * everything that could fail then is found here, at once.
 */
export function fault(columns: Columns): string | null {
  const { runways, located, regionWords } = columns;
  return (
    outside('airfields.runways', runways, mostRunways) ??
    outside('airfields.located', located, mostRunways) ??
    (anyAbove(located, runways) ? 'located and runways do not add up' : null) ??
    outside('regions', columns.regions, regionWords.length - 1) ??
    tooFar('lat', columns.lat, 90) ??
    tooFar('lng', columns.lng, 180)
  );
}

/** Of one airfield: a damaged count must not fill the memory. */
const mostRunways = 1000;

export function unequal(
  what: string,
  count: number,
  columns: readonly (readonly [string, { readonly length: number }])[],
): string | null {
  const odd = columns.find(([, column]) => column.length !== count);
  return odd ? `${what}.${odd[0]} has ${odd[1].length} entries, ${count} were expected` : null;
}

/** Whole numbers from 0 to `last`. */
export function outside(what: string, column: Numbers, last: number): string | null {
  for (let i = 0; i < column.length; i++) {
    const n = column[i] as number;
    if (n < 0 || n > last) return `${what} holds ${n}`;
  }
  return null;
}

export function tooFar(what: string, column: Numbers, degrees: number): string | null {
  for (let i = 0; i < column.length; i++) {
    const n = column[i] as number;
    if (Math.abs(n) > degrees * perDegree) return `${what} holds ${n / perDegree} degrees`;
  }
  return null;
}

function anyAbove(column: Numbers, limits: Numbers): boolean {
  for (let i = 0; i < column.length; i++) if ((column[i] as number) > (limits[i] ?? 0)) return true;
  return false;
}
