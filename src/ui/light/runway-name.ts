import type { Contents } from '../../survey/contents';

/** A runway as people call it: by its name, else by the designators of its ends. */
export function runwayName({ runways }: Pick<Contents, 'runways'>, id: string | null): string {
  const runway = runways.find((r) => r.id === id);
  if (!runway) return 'runway';
  const [a, b] = [runway.ends[0].designator, runway.ends[1].designator];
  return runway.name || (a && b ? `${a}/${b}` : a || b || 'runway');
}
