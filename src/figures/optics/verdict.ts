import type { Body, Kit, Lens } from '../../survey/schema/kit';
import type { Verdict } from '../types';
import { fillAt, fitOf, settingFor, takenAt } from './lens-fit';
import { rangesOf } from './reach';
import { widestApertureAt } from './widest-aperture';

/** What one lens makes of a needed focal length (mm, on this body, for the kit's fill). */
export function verdictFor(lens: Lens, needed: number, body: Body, fill: Kit['fill']): Verdict {
  const setting = settingFor(rangesOf(lens), needed, fill);
  const focalLength = takenAt(setting, needed);
  const filled = fillAt(setting, needed, fill);
  const { extender } = setting;
  const common = {
    lens,
    extender,
    focalLength,
    widestAperture: widestApertureAt(lens, focalLength, extender),
    fillAt: filled,
  };
  const verdict = fitOf(filled, fill);
  switch (verdict) {
    case 'fits':
    case 'tight':
      return { ...common, verdict };
    case 'too-short': {
      const crop = filled / fill;
      return { ...common, verdict, crop, pixelsAcross: Math.round(body.pixelsWide * filled) };
    }
    case 'too-long':
      return { ...common, verdict, cutOff: 1 - 1 / filled };
  }
}
