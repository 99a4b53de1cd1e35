import type { Contents } from '../../survey/contents';
import type { DisplayLine } from '../../survey/schema/flying';
import { BestPlaces, type BestPlace } from '../movements/best-places';
import type { ElevationGrid } from '../sight/terrain';
import { everyPath } from '../traffic/every-path';
import type { Act } from './programme-acts';

/**
 * The best place for each act of a display, as its own type flies by, where one is known, else as the subject at hand.
 * Null without a time, of a type that nobody knows, and where nothing is worth a picture.
 */
export function actPlaces(
  acts: readonly Act[],
  display: Pick<DisplayLine, 'id'>,
  contents: Contents,
  terrain: ElevationGrid | null,
): (BestPlace | null)[] {
  const places = new BestPlaces(contents, terrain);
  return acts.map(({ slot, type }) => {
    if (!slot || type.kind === 'unknown') return null;
    const subject = type.kind === 'known' ? type.subject : contents.subject;
    const passes = everyPath({ ...contents, subject }, (kind) => kind === 'pass', terrain);
    const own = passes.filter(({ ref }) => ref.path.startsWith(`${display.id}/`));
    return places.best(subject, own, slot.from);
  });
}
