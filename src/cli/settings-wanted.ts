import { lensAt, nothingPinned, reachesTo, type Pinned } from '../figures/optics/settings';
import type { Sky } from '../figures/optics/exposure';
import { rangesOf } from '../figures/optics/reach';
import type { Lens } from '../survey/schema/kit';
import type { Read } from './arguments';
import type { SettingsArguments } from './settings-arguments';

/** The lens that settings are wanted for, and what is pinned. */
export interface SettingsWanted {
  readonly lens: Lens;
  readonly pinned: Pinned;
}

/** What rounding does to an f-number: 5.6 with 1.4x is engraved f/7.8 or f/8, and is 7.84. */
const engraved = 1.03;

/** What settings are wanted for under a sky, by its word or its share of direct sun: null without --lens; refused where no such lens can be set to it. */
export function settingsWanted(
  lenses: readonly Lens[],
  given: SettingsArguments | null,
  sky: Sky | number,
): Read<SettingsWanted | null> {
  if (given === null) return { ok: true, value: null };
  const { lens: key, ...pins } = given;
  const lens = lenses.find((l) => l.key === key);
  if (!lens)
    return {
      ok: false,
      reason: `--lens: the kit has no lens "${key}"; it has ${lenses.map((l) => `"${l.key}"`).join(', ') || 'none'}`,
    };
  const { focalLength, aperture } = pins;
  if (focalLength !== null && !reachesTo(lens, focalLength))
    return {
      ok: false,
      reason: `--at-focal: lens "${key}" can be set to ${rangesWords(lens)}, not to ${focalLength} mm`,
    };
  // Without a focal length of one's own it is set anywhere in its range.
  const { extender, widestAperture } =
    focalLength === null
      ? { extender: null, widestAperture: lens.widestAperture }
      : lensAt(lens, focalLength);
  if (aperture !== null && aperture * engraved < widestAperture)
    return {
      ok: false,
      reason: `--aperture: lens "${key}"${extender === null ? '' : ` with its ${extender}x`} opens to f/${Number(widestAperture.toFixed(2))}; f/${aperture} is wider than that`,
    };
  return { ok: true, value: { lens, pinned: { ...nothingPinned, ...pins, sky } } };
}

/** "150 to 400 mm, or 210 to 560 mm with its 1.4x". */
const rangesWords = (lens: Lens): string =>
  rangesOf(lens)
    .map(({ shortest, longest, extender }) => {
      const range = shortest === longest ? `${mm(longest)} mm` : `${mm(shortest)} to ${mm(longest)} mm`;
      return extender === null ? range : `${range} with its ${extender}x`;
    })
    .join(', or ');
const mm = (focal: number): string => String(Number(focal.toFixed(1)));
