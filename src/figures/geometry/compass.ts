import { wrap360 } from './angles';

const points = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;
export type CompassPoint = (typeof points)[number];

/** The nearest of eight points of the compass to a true bearing in degrees. */
export function compassPoint(bearing: number): CompassPoint {
  return points[Math.round(wrap360(bearing) / 45) % 8] as CompassPoint;
}
