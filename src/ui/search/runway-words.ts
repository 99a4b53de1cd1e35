import type { AirfieldMatch } from '../../ports/airfields';

/** How much of an airfield is drawn at once, and what is left to draw. */
export function runwayWords({
  locatedRunways: located,
  runways,
}: Pick<AirfieldMatch, 'locatedRunways' | 'runways'>): string {
  if (runways === 0) return 'no runway in the data: draw it';
  if (located === 0) return runways === 1 ? 'runway not located: draw it' : 'runways not located: draw them';
  const words = located === 1 ? '1 runway' : `${located} runways`;
  return located === runways ? words : `${words}, ${runways - located} more not located`;
}
