import type { ViewfinderFrame } from '../../figures/frame/frame-for';
import type { SettingsCard, Warning } from '../../figures/optics/settings-card';
import type { Sample } from '../../figures/types';
import { decimal, focal, pixels, share } from '../../units/format';
import type { Formats } from '../formats';
import { hiderWords } from '../words/sight-words';
import { phaseWords } from '../words/moon-words';
import { aspectWords, lightNotes, lightWords } from '../words/sample-words';

export const skyChoices = [
  ['', 'As the weather is'],
  ['clear', 'Clear, distinct shadows'],
  ['hazy', 'Hazy sun, soft shadows'],
  ['overcast', 'Overcast, bright, no shadows'],
  ['heavy', 'Heavy overcast'],
] as const;

/** "1/500 s", "0.4 s", "2 s". */
export function shutterWords(seconds: number): string {
  if (seconds >= 0.3) return `${Number(seconds.toPrecision(2))} s`;
  // As engraved: no thousands set apart, no more figures than a dial has.
  return `1/${Number((1 / seconds).toPrecision(3))} s`;
}
/** "f/7.1", "f/8", "f/11". */
export const apertureWords = (aperture: number): string => `f/${Number(aperture.toPrecision(2))}`;
export const isoWords = (iso: number): string => `ISO ${decimal(iso, 0)}`;

/** Why each of the three values is what it is. */
export function reasons({ exact, shown, lowestIso, iso }: SettingsCard, format: Formats) {
  const { near, far } = shown;
  const depth =
    far === null
      ? `sharp from ${format.length(near)} to infinity`
      : `sharp from ${format.length(near)} to ${format.length(far)}`;
  const aperture = {
    pinned: `pinned for A and B; ${depth}`,
    exposure: `follows from shutter and ISO; ${depth}`,
    depth: `covers nose to tail: ${depth}`,
    widest: `as wide as this lens opens here; ${depth}`,
    practice: `a common start, and more than nose to tail: ${depth}`,
    dark: `opened for the poor light, before the ISO rises; ${depth}`,
  }[exact.apertureFrom];
  const blades = exact.blades;
  const arc = decimal(shown.propellerArc ?? 0, 0);
  const shutter = {
    pinned: 'pinned for A and B',
    exposure: 'follows from f-number and ISO',
    blades: blades ? `no faster, or the blades freeze: ${arc}° of arc at ${decimal(blades.rpm, 0)} rpm` : '',
    blur: `keeps a panned aircraft within ${pixels(Math.max(1, Math.round(shown.blurPanned ?? 0)))}`,
    practice: 'a common start that freezes what you follow',
  }[exact.shutterFrom];
  const following = lowestIso
    ? `the lowest of most cameras; ${exact.shutterFrom === 'blades' ? 'the f-number' : 'the shutter'} takes the light that is too much`
    : `follows from exposure value ${decimal(exact.ev100, 1)}`;
  return {
    aperture,
    shutter:
      lowestIso && exact.shutterFrom === 'practice'
        ? `faster than the common start: there is light enough at ${isoWords(iso)}`
        : shutter,
    iso: exact.isoFrom === 'pinned' ? 'pinned for A and B' : following,
  };
}

/** How the exposure value comes about. */
export function exposureWords({ exact: { scene, ev100 } }: SettingsCard): string {
  if (scene.typed) return `Exposure value ${decimal(ev100, 1)} at ISO 100, as you have typed it.`;
  const parts = [`${decimal(scene.bySun, 1)} for the sun's height`];
  if (scene.bySky > 0) parts.push(`${decimal(scene.bySky, scene.bySky % 1 === 0 ? 0 : 1)} less for the sky`);
  if (scene.byLight > 0)
    parts.push(`${scene.byLight} less for light from ${scene.byLight === 1 ? 'the side' : 'beyond'}`);
  return `Exposure value ${decimal(ev100, 1)} at ISO 100: ${parts.join(', ')}.`;
}

/** What speaks against the settings, and what to do about it. */
export function warningWords(warning: Warning): string {
  switch (warning.kind) {
    case 'too-dark':
      return warning.isoWideOpen <= 6400
        ? `Too dark for this f-number: ${apertureWords(warning.wideOpen)} brings it down to ${isoWords(warning.isoWideOpen)}, less deep.`
        : 'The light no longer allows this with this lens: take a wider lens that opens further, rest the camera on a tripod and wait for what stands still, or stop.';
    case 'too-bright':
      return 'Too bright for these values: close the lens, or shorten the shutter.';
    case 'off':
      return `The pinned values come out ${decimal(Math.abs(warning.darkBy), 1)} stops too ${warning.darkBy > 0 ? 'dark' : 'bright'}.`;
    case 'beyond-lens':
      return `The lens opens to ${apertureWords(warning.widest)} at this focal length.`;
    case 'soft':
      return 'Beyond f/16 the whole picture softens: step back, take a shorter focal length, or give up a part of the depth.';
    case 'shallow':
      return warning.needed === null
        ? 'It is too close: no f-number makes nose and tail sharp.'
        : `Nose or tail is out of focus: it takes ${apertureWords(warning.needed)}.`;
    case 'blurred':
      return `Even followed it blurs by about ${pixels(Math.round(warning.pixels))}: ${shutterWords(warning.slowest)} keeps it sharp.`;
    case 'frozen':
      return `The blades look frozen (${decimal(warning.arc, 0)}° of arc): ${shutterWords(warning.slowest)} or slower shows them turning.`;
    case 'tripod':
      return `Slower than a hand holds still (about ${shutterWords(warning.steady)} here): use a tripod or a rest.`;
  }
}

/** s: what takes longer across the frame is far away, and its seconds help nobody. */
const longAcross = 60;

/** Pan rate in words: "13.8°/s, 0.4 s across the frame". */
export function panWords({ shown }: SettingsCard): string {
  if (shown.panRate === null)
    return 'Speed unknown: this recorded path has no times to take it from, so neither pan rate nor blur can be told.';
  if (shown.panRate < 0.005 || shown.secondsAcross === null) return 'It hardly moves across the frame.';
  const pan = `Pan at ${decimal(shown.panRate, 1)}° a second`;
  if (shown.secondsAcross > longAcross)
    return shown.panRate < 0.05 ? 'It hardly moves across the frame.' : `${pan}.`;
  return `${pan}; held still, it is across the frame in ${decimal(shown.secondsAcross, 1)} s.`;
}
export function blurWords({ shown: { blurStill, blurPanned, slowest } }: SettingsCard): string {
  if (slowest === null || blurStill === null || blurPanned === null) return '';
  if (slowest.still === null || slowest.panned === null) return 'Nothing moves: any shutter will do.';
  return `Held still it blurs by ${pixels(Math.round(blurStill))}, followed by about ${pixels(Math.round(blurPanned))}. Slowest for your limit: ${shutterWords(slowest.still)} held still, ${shutterWords(slowest.panned)} followed.`;
}

/** " Its nose is hidden behind Building 1." */
function endWords(
  { nose, tail }: ViewfinderFrame['ends'],
  obstacles: Parameters<typeof hiderWords>[1],
): string {
  const behind = (end: string, by: string | null) =>
    by === null ? [] : [`${end} is hidden behind ${hiderWords(by, obstacles)}`];
  const said = [...behind('nose', nose), ...behind('tail', tail)].join(', its ');
  return said && ` Its ${said}.`;
}

/** "4 together, 20 m apart: 210 mm for all of them, 620 mm for one." */
export function formationWords(
  { aircraft, spacing, all, one }: NonNullable<ViewfinderFrame['formation']>,
  format: Formats,
): string {
  const single = one === null ? 'one of them is too close to frame' : `${focal(one)} for one`;
  if (spacing === null)
    return `${aircraft} together, nobody has said how far apart: ${single}, for all of them not known.`;
  const whole = all === null ? 'all of them are too close to frame' : `${focal(all)} for all of them`;
  return `${aircraft} together, ${format.length(spacing)} apart: ${whole}, ${single}.`;
}

/** " The moon (waxing crescent, 12 % lit) stands in the frame." */
function moonWords(moon: ViewfinderFrame['moon'], obstacles: Parameters<typeof hiderWords>[1]): string {
  if (!moon) return '';
  const what = `The moon (${phaseWords[moon.phase]}, ${share(moon.lit)} lit)`;
  if (moon.hiddenBy !== null)
    return ` ${what} would stand in the frame, behind ${hiderWords(moon.hiddenBy, obstacles)}.`;
  return ` ${what} stands in the frame${moon.atAircraft ? ', where the aircraft is: it may be covered' : ''}.`;
}

/** What a picture shows, for those who do not see it, and under it for those who do. */
export function pictureWords(
  name: string,
  sample: Sample,
  card: SettingsCard,
  { crop, ends, moon }: Pick<ViewfinderFrame, 'crop' | 'ends' | 'moon'>,
  obstacles: Parameters<typeof hiderWords>[1],
  format: Formats,
): string {
  const { focalLength } = card.exact;
  const view = sample.aspect === null ? 'side-on, its heading is not known' : aspectWords(sample.aspect);
  const size =
    sample.focalLength === null
      ? 'closer than any lens can frame'
      : crop < 0.995
        ? `smaller than wanted: crop to ${share(crop)} of the width`
        : focalLength > sample.focalLength * 1.02
          ? 'larger than wanted'
          : 'as large as wanted';
  const light = [lightWords[sample.light], ...lightNotes(sample)].join(', ');
  const { sight } = sample.score;
  const hidden =
    sight === 0
      ? ' Something hides it.'
      : endWords(ends, obstacles) || (sight < 1 ? ' Part of it is hidden.' : '');
  return `${name} ${view}, ${format.length(sample.slantRange)} away, at ${focal(focalLength)} ${size}; ${light}.${hidden}${moonWords(moon, obstacles)}`;
}

/** Of which moment the point of a path is the best that the pictures show; empty elsewhere. Indices of samples. */
export function bestPointWords(
  at: number,
  best: { readonly a: number; readonly b: number },
  pictures: number,
): string {
  const here = pictures > 1 ? 'Both at' : 'At';
  if (best.a === best.b) return at === best.a ? `${here} the best point, the same for A and B.` : '';
  if (at !== best.a && at !== best.b) return '';
  const of = at === best.a ? 'A' : 'B';
  return `${here} the best point of ${of}; that of ${of === 'A' ? 'B' : 'A'} is another.`;
}
