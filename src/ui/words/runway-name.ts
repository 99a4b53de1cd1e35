import type { Contents } from '../../survey/contents';

/** A runway as people call it, by its id: the designators of its ends, the lower first, "09/27", else its name. */
export function runwayName({ runways }: Pick<Contents, 'runways'>, id: string | null): string {
  const runway = runways.find((r) => r.id === id);
  if (!runway) return 'Runway';
  const designators = runway.ends.map((end) => end.designator);
  if (!designators.some((d) => d !== '')) return runway.name || 'Runway';
  return designators
    .map((d) => d || '?')
    .sort(byNumber)
    .join('/');
}

/** "05" before "23L"; what has no number goes last. */
const byNumber = (one: string, other: string) => numberOf(one) - numberOf(other);
const numberOf = (designator: string) => Number(/^\d+/.exec(designator)?.[0] ?? Infinity);
