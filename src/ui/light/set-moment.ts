import { setMoments } from '../../survey/edits/set-members';
import { Step } from '../../state/step';
import type { Moment } from '../../state/view.svelte';
import { clockAt } from '../../time/local-time';
import type { Editing, Figures } from '../contexts';

export const momentStep = (editing: Editing, moment: Moment): Step =>
  new Step(editing, `change moment ${moment.toUpperCase()}`);

/** Moves a moment to an instant of the day, as a part of a step; does nothing when it is there already. */
export function setMoment(
  step: Step,
  { contents, day }: Pick<Figures, 'contents' | 'day'>,
  moment: Moment,
  instant: number,
): void {
  const clock = clockAt(instant, day.timeZone);
  if (clock !== contents.moments[moment]) step.change((survey) => setMoments(survey, { [moment]: clock }));
}
