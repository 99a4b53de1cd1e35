import type { PreferenceValues } from '../../state/preferences.svelte';

export type Choices<K extends keyof PreferenceValues> = readonly (readonly [
  value: PreferenceValues[K],
  words: string,
])[];

export const lengths: Choices<'lengths'> = [
  ['m', 'metres'],
  ['ft', 'feet'],
];
export const speeds: Choices<'speeds'> = [
  ['kt', 'knots'],
  ['m/s', 'm/s'],
  ['km/h', 'km/h'],
];
export const bearings: Choices<'bearings'> = [
  ['three-digits', '089°'],
  ['plain', '89°'],
];
export const coordinates: Choices<'coordinates'> = [
  ['decimal', 'decimal degrees'],
  ['sexagesimal', 'degrees, minutes, seconds'],
];
export const clocks: Choices<'clock'> = [
  ['24h', '18:30'],
  ['12h', '6:30 pm'],
];
export const looks: Choices<'look'> = [
  ['system', 'as the device'],
  ['day', 'day'],
  ['night', 'night'],
  ['contrast', 'high contrast'],
];
export const rings: Choices<'rings'> = [
  ['headline', 'the path to wait at'],
  ['every', 'every path'],
];
export const keys: Choices<'keys'> = [
  ['on', 'on'],
  ['off', 'off: only with Ctrl, and on the map'],
];
/** Each language in its own words. */
export const languages: Choices<'dates'> = [
  ['en-GB', 'English'],
  ['en-US', 'English (US)'],
  ['de', 'Deutsch'],
  ['es', 'Español'],
  ['fr', 'Français'],
  ['it', 'Italiano'],
  ['ja', '日本語'],
  ['nl', 'Nederlands'],
  ['pl', 'Polski'],
  ['pt', 'Português'],
  ['sv', 'Svenska'],
];
