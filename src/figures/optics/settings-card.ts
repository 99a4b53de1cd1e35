import { closedTo, cameraRange, noisyFrom, softFrom, steadyStops } from '../practice';
import type { Sample } from '../types';
import { equivalent35, framingOf } from './framing';
import { isoFor } from './exposure';
import { settingsFor, type Pinned, type SettingsWithReasons, type Setup } from './settings';
import { apertures, isos, nearest, notAbove, notBelow, shutters } from './third-stops';

/** What speaks against the settings of a card. Values as the card shows them. */
export type Warning =
  | { readonly kind: 'too-dark'; readonly wideOpen: number; readonly isoWideOpen: number }
  | { readonly kind: 'too-bright' }
  | { readonly kind: 'off'; readonly darkBy: number }
  | { readonly kind: 'beyond-lens'; readonly widest: number }
  | { readonly kind: 'soft' }
  | { readonly kind: 'shallow'; readonly needed: number | null }
  | { readonly kind: 'blurred'; readonly pixels: number; readonly slowest: number }
  | { readonly kind: 'frozen'; readonly arc: number; readonly slowest: number }
  | { readonly kind: 'tripod'; readonly steady: number };

/** Settings as a camera can have them. */
export interface SettingsCard {
  readonly exact: SettingsWithReasons;
  /** The exact settings of the rounded values: their depth, blur and arc. */
  readonly shown: SettingsWithReasons;
  /** In thirds of a stop, within what cameras can do. */
  readonly aperture: number;
  readonly shutter: number;
  readonly iso: number;
  /** The camera's lowest ISO was too high: another value follows. */
  readonly lowestIso: boolean;
  readonly warnings: readonly Warning[];
}

/** Settings for a sample, rounded to thirds of a stop and kept within a camera's ranges. `sunAltitude`: geometric, degrees. */
export function settingsCard(
  sample: Sample,
  sunAltitude: number,
  setup: Setup,
  pinned: Pinned,
): SettingsCard {
  const exact = settingsFor(sample, sunAltitude, setup, pinned);
  const lowestIso = pinned.iso === null && exact.iso < cameraRange.iso[0] / 2 ** (1 / 6);
  const base = lowestIso ? atLowestIso() : exact;
  const aperture = pinned.aperture ?? roundedAperture(base);
  const shutter = pinned.shutter ?? roundedShutter(base);
  const follows = isoFor(aperture, shutter, exact.ev100);
  const iso =
    pinned.iso ?? nearest(isos, Math.max(cameraRange.iso[0], Math.min(cameraRange.iso[1], follows)));
  const shown = settingsFor(sample, sunAltitude, setup, { ...pinned, aperture, shutter, iso });
  return {
    exact,
    shown,
    aperture,
    shutter,
    iso,
    lowestIso,
    warnings: warningsFor(shown, sample, setup, pinned),
  };

  /**
   * Where blades decide on the shutter, the f-number takes the light away, but closes no further than it has to be or
   * than `closedTo`; the rest, and all without blades, the shutter does.
   */
  function atLowestIso(): SettingsWithReasons {
    const iso = cameraRange.iso[0];
    const settle = (pins: Partial<Pinned>) =>
      settingsFor(sample, sunAltitude, setup, { ...pinned, iso, ...pins });
    if (!exact.blades || pinned.aperture !== null) return settle({});
    const closed = settle({ shutter: exact.shutter });
    const most = Math.max(closedTo, exact.aperture);
    return pinned.shutter !== null || closed.aperture <= most * slack ? closed : settle({ aperture: most });
  }
}

/** Depth of field is not rounded away; what the exposure asks for goes to the nearest. */
function roundedAperture({ aperture, apertureFrom }: SettingsWithReasons): number {
  return apertureFrom === 'exposure' ? nearest(apertures, aperture) : notBelow(apertures, aperture);
}

/** No faster than the blades allow, no slower than the blur does. */
function roundedShutter({ shutter, shutterFrom }: SettingsWithReasons): number {
  if (shutterFrom === 'blades') return notBelow(shutters, shutter);
  return shutterFrom === 'blur' ? notAbove(shutters, shutter) : nearest(shutters, shutter);
}

/** Stops within which a value counts as reached: half a third. */
const slack = 2 ** (1 / 6);

function warningsFor(s: SettingsWithReasons, sample: Sample, setup: Setup, pinned: Pinned): Warning[] {
  const warnings: Warning[] = [];
  const { aperture, shutter, iso, darkBy, ev100, widestAperture, apertureForDepth, blades, slowest } = s;
  if (iso > noisyFrom && aperture > widestAperture * slack)
    warnings.push({
      kind: 'too-dark',
      wideOpen: widestAperture,
      isoWideOpen: nearest(isos, isoFor(widestAperture, shutter, ev100)),
    });
  else if (iso > noisyFrom) warnings.push({ kind: 'too-dark', wideOpen: widestAperture, isoWideOpen: iso });
  const allPinned = pinned.aperture !== null && pinned.shutter !== null && pinned.iso !== null;
  if (allPinned ? Math.abs(darkBy) >= 1 / 3 : darkBy > 0.5) warnings.push({ kind: 'off', darkBy });
  else if (!allPinned && darkBy < -0.5) warnings.push({ kind: 'too-bright' });
  if (aperture < widestAperture / slack) warnings.push({ kind: 'beyond-lens', widest: widestAperture });
  if (aperture > softFrom * slack) warnings.push({ kind: 'soft' });
  if (apertureForDepth === null || aperture * slack < apertureForDepth)
    warnings.push({ kind: 'shallow', needed: apertureForDepth && notBelow(apertures, apertureForDepth) });
  const panned = slowest?.panned ?? null;
  if (panned !== null && s.blurPanned !== null && shutter > panned * slack)
    warnings.push({ kind: 'blurred', pixels: s.blurPanned, slowest: notAbove(shutters, panned) });
  if (blades && shutter * slack < blades.shutter)
    warnings.push({ kind: 'frozen', arc: s.propellerArc ?? 0, slowest: notBelow(shutters, blades.shutter) });
  const { subject, body } = setup;
  const steady = steadyStops / equivalent35(s.focalLength, framingOf(subject, body, 1));
  // Who follows the aircraft blurs by the pan long before the hand shakes.
  if (shutter > steady * (sample.speed === 0 ? slack : slack * 2))
    warnings.push({ kind: 'tripod', steady: notAbove(shutters, steady) });
  return warnings;
}
