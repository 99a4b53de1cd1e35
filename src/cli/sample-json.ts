import { settingsFor, type Settings } from '../figures/optics/settings';
import { verdictFor } from '../figures/optics/verdict';
import type { Sample, Sun } from '../figures/types';
import type { Contents } from '../survey/contents';
import type { SettingsWanted } from './settings-wanted';

/** What is told of every sample besides its figures. */
export interface SampleWishes {
  readonly settings: SettingsWanted | null;
  /** Whether what each lens of the kit makes of it is wanted. */
  readonly lenses: boolean;
}

/** A sample as the `figures` command prints it, from a spot under a sun. */
export const sampleJson =
  (contents: Contents, { settings, lenses }: SampleWishes) =>
  (s: Sample, sun: Sun) => ({
    station: s.station,
    height: s.height,
    groundRange: s.groundRange,
    slantRange: s.slantRange,
    bearing: s.bearing,
    elevation: s.elevation,
    aspect: s.aspect,
    focalLength: s.focalLength,
    focalLength35: s.focalLength35,
    lightAngle: s.lightAngle,
    phaseAngle: s.phaseAngle,
    flankLit: s.flankLit,
    light: s.light,
    glare: s.glare,
    score: s.score,
    ...(settings && {
      settings: settingsJson(
        settingsFor(s, sun.geometricAltitude, { ...contents, lens: settings.lens }, settings.pinned),
      ),
    }),
    ...(lenses && { lenses: lensesJson(s.focalLength, contents) }),
  });

export type SampleJson = ReturnType<typeof sampleJson>;

/** What each lens makes of a needed focal length, in the kit's order; inside the aircraft each is too long. */
const lensesJson = (needed: number | null, { kit, body }: Pick<Contents, 'kit' | 'body'>) =>
  kit.lenses.map((lens) => {
    const { key } = lens;
    if (needed === null)
      return {
        key,
        extender: null,
        focalLength: lens.shortest,
        widestAperture: lens.widestAperture,
        fillAt: null,
        verdict: 'too-long',
      };
    const { extender, focalLength, widestAperture, fillAt, verdict } = verdictFor(
      lens,
      needed,
      body,
      kit.fill,
    );
    return { key, extender, focalLength, widestAperture, fillAt, verdict };
  });

const settingsJson = (s: Settings) => ({
  focalLength: s.focalLength,
  aperture: s.aperture,
  shutter: s.shutter,
  iso: s.iso,
  ev100: s.ev100,
  near: s.near,
  far: s.far,
  panRate: s.panRate,
  blurStill: s.blurStill,
  propellerArc: s.propellerArc,
});
