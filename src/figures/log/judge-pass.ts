import type { Contents } from '../../survey/contents';
import { sunAt } from '../light/sun';
import { skyAtOf } from '../light/sky-at';
import { nothingPinned } from '../optics/settings';
import type { Sample } from '../types';
import type { Pass } from './find-passes';
import { judgeSettings, type SettingsJudged } from './judge-settings';
import { leadFrame } from './log-entry-of';

/** What the figures say of the settings of a pass's best frame; nothing where spot or aircraft is not known. */
export function judgePass(
  pass: Pick<Pass, 'frames' | 'from' | 'to' | 'spot' | 'subject'>,
  predicted: Sample | null,
  contents: Contents,
): readonly SettingsJudged[] {
  const spot = contents.spots.find(({ id }) => id === pass.spot);
  const subject = contents.subjects.find(({ key }) => key === pass.subject);
  if (!predicted || !spot || !subject) return [];
  const { record, instant } = leadFrame(pass);
  const at = instant ?? pass.from;
  const { body, kit } = contents;
  const sky = skyAtOf(contents)(at).direct;
  return judgeSettings(
    record,
    predicted,
    sunAt(spot.position, at).geometricAltitude,
    { subject, body, lenses: kit.lenses },
    { ...nothingPinned, sky },
  );
}
