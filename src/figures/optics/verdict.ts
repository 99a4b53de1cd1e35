import type { Body, Kit, Lens } from '../../survey/schema/kit';
import type { Verdict } from '../types';
import { rangesOf } from './reach';

/** What one lens makes of a needed focal length (mm, on this body, for the kit's fill). */
export function verdictFor(lens: Lens, needed: number, body: Body, fill: Kit['fill']): Verdict {
  const ranges = rangesOf(lens);
  const fits = ranges.find((r) => r.shortest <= needed && needed <= r.longest);
  if (fits) return { lens, verdict: 'fits', extender: fits.extender };
  const longest = Math.max(...ranges.map((r) => r.longest));
  if (needed > longest) {
    const crop = longest / needed;
    return { lens, verdict: 'too-short', crop, pixelsAcross: Math.round(body.pixelsWide * fill * crop) };
  }
  // At the shortest setting the subject takes fill x shortest / needed of the frame; what is over 1 is cut off.
  const above = ranges.filter((r) => r.shortest > needed).map((r) => r.shortest);
  const taken = (fill * Math.min(...above)) / needed;
  return { lens, verdict: 'too-long', cutOff: Math.max(0, 1 - 1 / taken) };
}
