import type { Contents } from '../../survey/contents';

/** A runway as people call it, by its id: the designators of its ends, "09/27", else its name. */
export function runwayName({ runways }: Pick<Contents, 'runways'>, id: string | null): string {
  const runway = runways.find((r) => r.id === id);
  if (!runway) return 'Runway';
  const [a, b] = [runway.ends[0].designator, runway.ends[1].designator];
  return a || b ? `${a || '?'}/${b || '?'}` : runway.name || 'Runway';
}
