import type { Contents } from '../../survey/contents';
import type { Problem } from '../../survey/problems';

type Field = Pick<Contents, 'site' | 'runways' | 'spots' | 'obstacles' | 'flightPaths'>;

/** Whether heights above sea level stand beside a field of which nobody knows how high it lies. Of a `grounded` survey. */
export function heightDoubts({ site, runways, spots, obstacles, flightPaths }: Field): Problem[] {
  if (site.elevation !== null) return [];
  if (runways.some(({ ends }) => ends.some(({ elevation }) => elevation !== null))) return [];
  const stated = [
    ...(spots.some(({ ground }) => ground !== null) ? ['the ground under a spot'] : []),
    ...(obstacles.some(({ base }) => base !== null) ? ['the base of an obstacle'] : []),
    ...(flightPaths.length > 0 ? ['a flight path'] : []),
  ];
  if (stated.length === 0) return [];
  return [
    {
      id: null,
      reason: `The survey says how high above the sea some of it lies (${stated.join(', ')}), but not the airfield, which counts as 0 m. Type the elevation of the airfield or of a runway's end.`,
      used: true,
    },
  ];
}
