import type { LightClass, RunwayFromSpot, Sample, TakenSetting, Verdict } from '../../figures/types';
import { lensName } from '../../survey/lens-name';
import { decimal, focalExact, pixels, share } from '../../units/format';
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

/** Whether a class of light is one of the day. */
export const isSunUp = (light: LightClass): boolean => light !== 'dark' && light !== 'civil-twilight';

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

const settingOf = ({ focalLength, widestAperture }: TakenSetting): string =>
  `${decimal(focalLength, 0)} mm, f/${stop(widestAperture)}`;

/** f-number to a tenth below 10: 5.6, 11. */
const stop = (aperture: number): string => String(Number(aperture.toFixed(aperture < 9.95 ? 1 : 0)));

/** The setting that a lens is judged by: "500 mm f/4 with 1.4×: 700 mm, f/5.6". */
const settingWords = (taken: TakenSetting): string =>
  `${lensName(taken.lens)}${taken.extender === null ? '' : ` with ${taken.extender}×`}: ${settingOf(taken)}`;

const fits: Readonly<Record<Verdict['verdict'], string>> = {
  fits: 'fits',
  tight: 'tight, hardly a margin',
  'too-short': 'too short',
  'too-long': 'too long',
};

/** What is lost by cropping or cutting off; "" where nothing is. */
function lossWords(verdict: Verdict): string {
  switch (verdict.verdict) {
    case 'fits':
    case 'tight':
      return '';
    case 'too-short':
      return `: crop to ${share(verdict.crop)}, up to ${pixels(verdict.pixelsAcross)} across`;
    case 'too-long':
      return `: cuts off ${share(verdict.cutOff)}`;
  }
}

/** What a lens makes of the picture, beside its name: "fits with 1.4×, 700 mm, f/5.6". */
export function verdictWords(verdict: Verdict): string {
  const how = verdict.extender === null ? 'at' : `with ${verdict.extender}×,`;
  return `${fits[verdict.verdict]} ${how} ${settingOf(verdict)}${lossWords(verdict)}`;
}

/** The same with the lens: "500 mm f/4 with 1.4×: 700 mm, f/5.6, fits". */
export const takeWords = (verdict: Verdict): string =>
  `${settingWords(verdict)}, ${fits[verdict.verdict]}${lossWords(verdict)}`;

/** What makes the light on a sample worth a second word: the sun in the lens, the flank in shade. */
export function lightNotes({ light, glare, flankLit }: Sample): readonly string[] {
  const notes = [];
  if (glare) notes.push('glare');
  if (flankLit === false && light === 'side-lit') notes.push('flank in shade');
  return notes;
}

/** A class of light as it is called under a sky; `flat`: without direct sun, where no side is the better one. */
export const lightName = (light: LightClass, flat: boolean): string =>
  flat && isSunUp(light) ? 'flat light: either side' : lightWords[light];

/** The light on a sample in one go. */
export const lightOn = (sample: Sample, flat: boolean): string =>
  [lightName(sample.light, flat), ...(flat ? [] : lightNotes(sample))].join(', ');

/** The exact focal lengths behind the rounded ones, for a title. */
export const exactFocal = ({ focalLength, focalLength35 }: Sample): string =>
  `${focalExact(focalLength)} on this body, ${focalExact(focalLength35)} on 35 mm`;
