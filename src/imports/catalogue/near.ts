import { groundLine } from '../../figures/geometry/earth';
import type { Position } from '../../survey/document';
import { perDegree } from './columns';
import type { Catalogue } from './types';
import { RAD } from '../../survey/angles';

/** m of a degree of latitude, at the least (WGS84, at the equator). */
const leastDegree = 110_570;

/**
 * The airfields within `reach` m of a straight line, nearest first: all of them, whatever their size. The columns are
 * looked through for the band of latitudes first, which leaves few to measure.
 */
export function airfieldsNear(
  { fields: { lat, lng } }: Pick<Catalogue, 'fields'>,
  from: Position,
  reach: number,
): readonly { readonly index: number; readonly distance: number }[] {
  const band = (reach / leastDegree) * perDegree;
  const [west, south] = [from[0] * perDegree, from[1] * perDegree];
  const near: { index: number; distance: number }[] = [];
  // Meridians run together: the band is widest where it is farthest from the equator.
  const farthest = Math.min(89.9, Math.abs(from[1]) + reach / leastDegree);
  const wide = band / Math.cos(farthest * RAD);
  for (let index = 0; index < lat.length; index++) {
    if (Math.abs((lat[index] as number) - south) > band) continue;
    const east = Math.abs((lng[index] as number) - west);
    if (Math.min(east, 360 * perDegree - east) > wide) continue;
    const position: Position = [(lng[index] as number) / perDegree, (lat[index] as number) / perDegree];
    const { distance } = groundLine(from, position);
    if (distance <= reach) near.push({ index, distance });
  }
  return near.sort((a, b) => a.distance - b.distance);
}
