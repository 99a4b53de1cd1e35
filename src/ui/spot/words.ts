import type { LightClass, RunwayFromSpot, Sample, Verdict } from '../../figures/types';
import { focalExact, pixels, share } from '../../units/format';
import type { Formats } from '../formats';

/** The light on a subject as photographers say it, and what that means for the picture. */
export const lightWords: Record<LightClass, string> = {
  dark: 'dark',
  'civil-twilight': 'twilight',
  'top-lit': 'lit from above',
  'front-lit': 'front-lit',
  'side-lit': 'side-lit',
  'back-lit': 'back-lit',
};

export const lightMeaning: Record<LightClass, string> = {
  dark: 'The sun is more than 6° below the horizon.',
  'civil-twilight': 'The sun is down, but less than 6° below the horizon.',
  'top-lit': 'The sun is 60° up or more: wings and belly in shade, wherever you stand.',
  'front-lit': 'The sun is behind you and on the flank that you see.',
  'side-lit': 'The sun comes from the side: shape and texture, part of the aircraft in shade.',
  'back-lit': 'The sun is beyond the aircraft: you see its shaded side.',
};

/** Which view of the aircraft an aspect in degrees gives (0 nose-on). */
export function aspectWords(aspect: number): string {
  if (aspect <= 20) return 'from ahead';
  if (aspect <= 65) return 'three-quarters from ahead';
  if (aspect < 115) return 'side-on';
  return aspect < 160 ? 'three-quarters from behind' : 'from behind';
}

/** "312 m, south side"; on the line itself there is no side. */
export const sideWords = ({ centrelineDistance, compassSide }: RunwayFromSpot, format: Formats): string =>
  compassSide === null ? 'on the centreline' : `${format.length(centrelineDistance)}, ${compassSide} side`;

/** What a lens makes of the picture, in a few words. `fill`: the share of the frame that is wanted. */
export function verdictWords(verdict: Verdict, fill: number): string {
  switch (verdict.verdict) {
    case 'fits':
      return verdict.extender === null ? 'fits' : `fits with the ${verdict.extender}× extender`;
    case 'too-short':
      // A shortfall that no crop would show.
      if (verdict.crop >= 0.995) return 'fits, just';
      return `too short: crop to ${share(verdict.crop)}, up to ${pixels(verdict.pixelsAcross)} across`;
    case 'too-long':
      return verdict.cutOff > 0
        ? `too long: cuts off ${share(verdict.cutOff)}`
        : `too long: fills more than the wanted ${share(fill)}`;
  }
}

/** What makes the light on a sample worth a second word: the sun in the lens, the flank in shade. */
export function lightNotes({ light, glare, flankLit }: Sample): readonly string[] {
  const notes = [];
  if (glare) notes.push('glare');
  if (flankLit === false && light === 'side-lit') notes.push('flank in shade');
  return notes;
}

/** The exact focal lengths behind the rounded ones, for a title. */
export const exactFocal = ({ focalLength, focalLength35 }: Sample): string =>
  `${focalExact(focalLength)} on this body, ${focalExact(focalLength35)} on 35 mm`;
