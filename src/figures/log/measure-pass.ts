import type { Contents } from '../../survey/contents';
import { outlookOf } from '../outlook';
import { groundUnder } from '../sight/ground';
import type { ElevationGrid } from '../sight/terrain';
import { eyeAt } from '../spot/eye-at';
import { everyPath } from '../traffic/every-path';
import type { PathKind } from '../types';
import type { Pass } from './find-passes';
import { measure, type Marks, type Measured, type NoMeasure } from './measure';

/** What two marks say, and of which kind of path they count the station. */
export interface MeasuredPass {
  readonly kind: PathKind;
  readonly told: Measured | NoMeasure;
}

/** Measures a frame of a pass; null where spot, path or aircraft is not known. */
export function measurePass(
  { spot: id, path: name, subject: key }: Pick<Pass, 'spot' | 'path' | 'subject'>,
  marks: Marks,
  contents: Contents,
  terrain: ElevationGrid | null,
): MeasuredPass | null {
  const spot = contents.spots.find((s) => s.id === id);
  const subject = contents.subjects.find((s) => s.key === key);
  if (!spot || name === null || !subject) return null;
  const looked = { ...contents, subject };
  const path = everyPath(looked, () => true, terrain).find(({ ref }) => ref.path === name);
  if (!path) return null;
  const { runways, fieldElevation, around } = outlookOf(looked, terrain);
  const eye = eyeAt(spot, groundUnder(spot, runways, fieldElevation, around?.terrain).elevation);
  return { kind: path.ref.kind, told: measure(marks, eye, path.samples, subject) };
}
