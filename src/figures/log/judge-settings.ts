import type { Body, Lens } from '../../survey/schema/kit';
import type { Subject } from '../../survey/schema/subject';
import { rangesOf } from '../optics/reach';
import type { Pinned } from '../optics/settings';
import { settingsCard } from '../optics/settings-card';
import type { Sample } from '../types';
import { beyondEveryLens } from './beyond-every-lens';

/** What a frame was taken with: mm, f-number, s; null where the camera did not write it. */
export interface UsedSettings {
  readonly focalLength: number | null;
  readonly fNumber: number | null;
  readonly exposure: number | null;
}

/** What the figures say of settings that were used. f-numbers, s, px. */
export type SettingsJudged =
  /** Closed further than the starting point: `enough` covers nose to tail as well. */
  | { readonly kind: 'closed'; readonly used: number; readonly enough: number }
  /** Nose to tail was not sharp; `needed` null where no f-number would do. */
  | { readonly kind: 'shallow'; readonly used: number; readonly needed: number | null }
  | { readonly kind: 'blurred'; readonly used: number; readonly pixels: number; readonly slowest: number }
  | { readonly kind: 'frozen'; readonly used: number; readonly slowest: number };

/** Stops, as a factor of f-numbers, from which two settings count as different: two thirds. CP. */
const different = 2 ** (1 / 3);

export interface JudgedWith {
  readonly subject: Subject;
  readonly body: Body;
  readonly lenses: readonly Lens[];
}

/**
 * Settings that were used against those that the figures propose at the same focal length. `sunAltitude`: geometric,
 * degrees. Nothing is said without a lens of the kit that has the focal length, or of what the camera did not write.
 */
export function judgeSettings(
  { focalLength, fNumber, exposure }: UsedSettings,
  sample: Sample,
  sunAltitude: number,
  { subject, body, lenses }: JudgedWith,
  pinned: Pinned,
): readonly SettingsJudged[] {
  if (focalLength === null) return [];
  const lens = lenses.find((l) => !beyondEveryLens(focalLength, rangesOf(l)));
  if (!lens) return [];
  const setup = { subject, body, lens };
  const proposed = settingsCard(sample, sunAltitude, setup, { ...pinned, focalLength });
  const used = settingsCard(sample, sunAltitude, setup, {
    ...pinned,
    focalLength,
    aperture: fNumber,
    shutter: exposure,
  });
  const judged: SettingsJudged[] = [];
  // Where much light or the blades ask for it, the card has closed down as well.
  if (fNumber !== null && fNumber >= proposed.aperture * different)
    judged.push({ kind: 'closed', used: fNumber, enough: proposed.aperture });
  for (const warning of used.warnings) {
    if (warning.kind === 'shallow' && fNumber !== null)
      judged.push({ kind: 'shallow', used: fNumber, needed: warning.needed });
    if (warning.kind === 'blurred' && exposure !== null)
      judged.push({ kind: 'blurred', used: exposure, pixels: warning.pixels, slowest: warning.slowest });
    if (warning.kind === 'frozen' && exposure !== null)
      judged.push({ kind: 'frozen', used: exposure, slowest: warning.slowest });
  }
  return judged;
}
