import type { Contents } from '../../survey/contents';
import { outlookOf } from '../outlook';
import type { ElevationGrid } from '../sight/terrain';
import { spotFigures } from '../spot-figures';
import { everyPath } from '../traffic/every-path';
import type { Sample } from '../types';
import type { Pass } from './find-passes';

/** What the figures say of a pass at instants (ms since 1970): the best sample of its path at each, null where spot or path is not known. */
export function predictPass(
  { spot: id, path: name, subject: key }: Pick<Pass, 'spot' | 'path' | 'subject'>,
  instants: readonly number[],
  contents: Contents,
  terrain: ElevationGrid | null,
): readonly (Sample | null)[] {
  const spot = contents.spots.find((s) => s.id === id);
  if (!spot || name === null) return instants.map(() => null);
  const subject = contents.subjects.find((s) => s.key === key) ?? contents.subject;
  const looked = { ...contents, subject };
  const paths = everyPath(looked, () => true, terrain).filter(({ ref }) => ref.path === name);
  return spotFigures(spot, paths, outlookOf(looked, terrain), instants).map(
    ({ paths: [path] }) => path?.best ?? null,
  );
}
