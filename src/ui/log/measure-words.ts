import type { Marks, NoMeasure } from '../../figures/log/measure';
import type { MeasuredPass } from '../../figures/log/measure-pass';
import type { NoPitch } from '../../figures/log/pixels-per-mm';
import type { Formats } from '../formats';
import { datumWords, stationWords } from '../words/station-words';

export const parts: readonly (readonly [Marks['part'], string])[] = [
  ['fuselage', 'Nose and tail'],
  ['wings', 'Both wing tips'],
];
export const ways: readonly (readonly [Marks['way'], string])[] = [
  ['coming', 'Coming towards me'],
  ['side-on', 'Side-on'],
  ['going', 'Going away'],
];
/** What the two marks stand on. */
export const ends: Record<Marks['part'], readonly [string, string]> = {
  fuselage: ['Nose', 'Tail'],
  wings: ['Left wing tip', 'Right wing tip'],
};

/** Why there is no measure, and what would mend it. */
const noMeasureWords: Record<NoMeasure, string> = {
  'no-heading': 'The path does not say which way the aircraft faces: nothing can be measured on it.',
  'no-wings': 'A rotor has no wing tips: mark nose and tail.',
  'too-close': 'The marks lie too close together to say anything.',
  nowhere:
    'From nowhere on the path would it look that large. Was it another path, aircraft or focal length?',
  'never-abeam': 'On this path it is never side-on from here. Was it coming, or going away?',
  several: 'It would look that large from two places on the path. Mark the other pair of points instead.',
  'edge-on': 'Seen this much from its end, that length says little. Mark the other pair of points instead.',
};
export const noPitchWords: Record<NoPitch, string> = {
  resized: 'This picture was made smaller since it was taken. Open the camera’s own file to measure on it.',
  smaller:
    'This picture has the whole frame in fewer pixels than the sensor. Open the camera’s own file to measure on it.',
  cropped:
    'This picture is not as wide as the sensor of the chosen body, so nobody knows how large its pixels were. Open the camera’s own file, or choose the body it was taken with.',
};

/** What was found, sentence by sentence. */
export function measuredWords(
  { kind, told }: MeasuredPass,
  way: Marks['way'],
  format: Formats,
): readonly string[] {
  if (typeof told === 'string') return [noMeasureWords[told]];
  const { slantRange, slantRangeError, station, pathRange, pathHeight, height, heightError } = told;
  const range = `${format.length(slantRange)} away, give or take ${format.length(slantRangeError)}`;
  if (way !== 'side-on')
    return [
      `It was ${range}: ${stationWords(kind, station, format)}, where the path is ${format.height(pathHeight)} ${datumWords[kind]}.`,
    ];
  const than = (value: number, path: number, error: number, more: string, less: string) =>
    Math.abs(value - path) <= error
      ? 'as near as can be told, as the path has it'
      : `${format.length(Math.abs(value - path))} ${value > path ? more : less} than the path has it`;
  return [
    `It passed ${range}: ${than(slantRange, pathRange, slantRangeError, 'farther', 'nearer')} (${format.length(pathRange)}).`,
    height === null || heightError === null
      ? 'From this low down the picture says nothing of its height.'
      : `It was ${format.height(height)} ${datumWords[kind]}, give or take ${format.length(heightError)}: ${than(height, pathHeight, heightError, 'higher', 'lower')}.`,
  ];
}
