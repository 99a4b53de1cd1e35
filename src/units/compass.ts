import { wrap360 } from './angle';

const points = [
  'north',
  'north-north-east',
  'north-east',
  'east-north-east',
  'east',
  'east-south-east',
  'south-east',
  'south-south-east',
  'south',
  'south-south-west',
  'south-west',
  'west-south-west',
  'west',
  'west-north-west',
  'north-west',
  'north-north-west',
] as const;

/** The nearest of the sixteen points of the compass to a bearing in degrees, in words. */
export function compassWords(bearing: number): string {
  const turned = wrap360(bearing);
  return points[Math.round(turned / 22.5) % 16] as string;
}
