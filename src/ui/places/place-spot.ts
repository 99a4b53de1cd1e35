import { drawingOf } from '../../survey/drawings';
import type { JsonObject } from '../../survey/json';
import type { Candidate } from '../../sweep/candidates';
import type { Contents } from '../../survey/contents';
import { placeName } from '../words/place-words';

/** A name that no spot has yet: the way's, with a number behind it where needed. */
function freshName(name: string, { spots }: Pick<Contents, 'spots'>): string {
  const taken = new Set(spots.map((spot) => spot.name));
  if (!taken.has(name)) return name;
  for (let n = 2; ; n++) if (!taken.has(`${name} ${n}`)) return `${name} ${n}`;
}

/** What is said of a standing spot that was proposed. Whether one may stand there nobody has said yet. */
export const spotOf = (
  candidate: Candidate,
  contents: Pick<Contents, 'spots'>,
  notes: string,
): JsonObject => ({
  name: freshName(placeName(candidate), contents),
  ...drawingOf('standing-spot').properties,
  ...(candidate.deck === null ? {} : { ground: Math.round(candidate.deck * 10) / 10 }),
  notes,
});

/** The spot that stands exactly there already. */
export const spotAt = ({ position }: Pick<Candidate, 'position'>, { spots }: Pick<Contents, 'spots'>) =>
  spots.find((spot) => spot.position[0] === position[0] && spot.position[1] === position[1]) ?? null;
