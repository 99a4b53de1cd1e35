/**
 * Data colours. They belong to data alone; nothing else on the page uses them, and each has its legend.
 * Both ramps are sequential in lightness, so that they read in greyscale and with any colour vision.
 */

/** Cividis (Nunez, Anderton and Renslow, 2018, PLoS ONE 13(7)), seven steps from yellow to blue. */
const cividis = ['#fdea45', '#dfcb5d', '#bcaf6f', '#9a9377', '#7a7b78', '#4f5f6e', '#12356b'] as const;

/** Light angles in degrees at which the colour changes: the classes of the design, split where the score bends. */
export const lightSteps = [
  { to: 30, colour: cividis[0] },
  { to: 60, colour: cividis[1] },
  { to: 85, colour: cividis[2] },
  { to: 110, colour: cividis[3] },
  { to: 135, colour: cividis[4] },
  { to: 160, colour: cividis[5] },
  { to: 180, colour: cividis[6] },
] as const;

/** Colour of the light on a subject by light angle in degrees, 0 (sun behind the photographer) to 180. */
export const lightColour = (lightAngle: number): string =>
  (lightSteps.find((step) => lightAngle <= step.to) ?? lightSteps[lightSteps.length - 1] ?? lightSteps[0])
    .colour;

/** No light to speak of: the sun is down. */
export const darkColour = '#3b3a45';
export const twilightColour = '#77708c';

/** Light by its class, where one colour stands for a stretch of time. Light from above carries lines as well. */
export const classColours = {
  'front-lit': cividis[0],
  'side-lit': cividis[2],
  'back-lit': cividis[6],
  'top-lit': cividis[1],
  'civil-twilight': twilightColour,
  dark: darkColour,
} as const;
/** By day without direct sun: alike from either side, so on no step of the ramp. */
export const flatColour = '#a9b8c6';

/**
 * What a picture is worth, by the words of the score: how far its colour goes over into the pale one, and how much of the
 * ground shows through.
 */
export const fading = {
  good: { pale: 0, opaque: 1 },
  fair: { pale: 0.36, opaque: 0.85 },
  poor: { pale: 0.62, opaque: 0.6 },
  'not worth waiting for': { pale: 0.84, opaque: 0.3 },
} as const;
/**
 * Pale in every look: what only grew darker at night would take on the colour of another angle. What shows of the ground
 * keeps it from being the brightest thing there.
 */
const pale = '#f4f1e6';

const channels = (hex: string): number[] => [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));

function mixed(colour: string, share: number, opaque: number): string {
  const [from, to] = [channels(colour), channels(pale)];
  const mix = from.map((c, i) => Math.round(c + ((to[i] as number) - c) * share));
  const all = opaque === 1 ? mix : [...mix, Math.round(255 * opaque)];
  return `#${all.map((c) => c.toString(16).padStart(2, '0')).join('')}`;
}

/** By colour and worth, for good: a dozen data colours, four words each. */
const known = new Map<string, string>();

/** A data colour as pale as the picture is poor, "#rrggbb" or "#rrggbbaa": what is not worth waiting for all but goes. */
export function faded(colour: string, worth: keyof typeof fading): string {
  const key = colour + worth;
  const before = known.get(key);
  if (before !== undefined) return before;
  const { pale: share, opaque } = fading[worth];
  const now = mixed(colour, share, opaque);
  known.set(key, now);
  return now;
}

/** What an obstacle or the terrain hides. */
export const blockedColour = '#a8a294';

/** Needed focal lengths in mm on the chosen body, dark to pale plum: the longer, the paler. */
export const focalSteps = [
  { to: 100, colour: '#54103f' },
  { to: 200, colour: '#8a1f63' },
  { to: 300, colour: '#b6478a' },
  { to: 400, colour: '#d37fae' },
  { to: 600, colour: '#e6b3cf' },
] as const;
/** Beyond what the kit can use. */
export const outOfReachColour = '#a8a294';

export const focalColour = (focalLength: number, usableTo: number): string =>
  focalLength > usableTo
    ? outOfReachColour
    : (
        focalSteps.find((step) => focalLength <= step.to) ??
        focalSteps[focalSteps.length - 1] ??
        focalSteps[0]
      ).colour;

/** Share of time from 0 to 1, pale to dark: one hue, so that it is told from the light. */
export const shareSteps = [
  { to: 0.05, colour: '#f2efe4' },
  { to: 0.2, colour: '#cfdcd6' },
  { to: 0.4, colour: '#9fbdb5' },
  { to: 0.6, colour: '#6b9a91' },
  { to: 0.8, colour: '#3c746c' },
  { to: 1, colour: '#174c46' },
] as const;

export const shareColour = (share: number): string =>
  (shareSteps.find((step) => share <= step.to) ?? shareSteps[shareSteps.length - 1] ?? shareSteps[0]).colour;

/** Good minutes of a day from a place, pale to dark: the hue of shares, since both count time. */
export const minuteSteps = [
  { to: 30, colour: shareSteps[1].colour },
  { to: 90, colour: shareSteps[2].colour },
  { to: 180, colour: shareSteps[3].colour },
  { to: 360, colour: shareSteps[4].colour },
  { to: Infinity, colour: shareSteps[5].colour },
] as const;

/** The factor of light of a place's best picture, 0 to 1: the ramp of light angles turned round. */
const lightFactorSteps = [
  { to: 0.1, colour: cividis[6] },
  { to: 0.3, colour: cividis[5] },
  { to: 0.5, colour: cividis[4] },
  { to: 0.7, colour: cividis[3] },
  { to: 0.85, colour: cividis[2] },
  { to: 0.95, colour: cividis[1] },
  { to: 1, colour: cividis[0] },
] as const;

/** What cells are coloured by, layer by layer: in minutes, mm, factor of light and share in sight. */
export const placeSteps = {
  minutes: minuteSteps,
  focal: focalSteps,
  'light-a': lightFactorSteps,
  'light-b': lightFactorSteps,
  'in-sight': shareSteps,
} as const;

/**
 * The same as they are drawn: on a dark map more time is paler, so that on either what there is most of stands out from where there is
 * nothing.
 */
export function placeStepsOn(
  layer: keyof typeof placeSteps,
  isDark: boolean,
): readonly { readonly to: number; readonly colour: string }[] {
  const steps: readonly { readonly to: number; readonly colour: string }[] = placeSteps[layer];
  if (!isDark || (layer !== 'minutes' && layer !== 'in-sight')) return steps;
  return steps.map(({ to }, i) => ({ to, colour: steps[steps.length - 1 - i]?.colour ?? '' }));
}

/** The lines over ground where nobody may stand, and the ground between them. */
export const closedGround = { line: '#6b5a48', between: '#8f8476' } as const;
