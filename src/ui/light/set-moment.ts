import { setMoments } from '../../survey/edits/set-members';
import type { Moment } from '../../state/view.svelte';
import { clockAt } from '../../time/local-time';
import type { App } from '../app-context';

/** Moves a moment to an instant of the day, in a step of its own or as part of the last one; false when it is there already. */
export function setMoment(app: App, moment: Moment, instant: number, newStep: boolean): boolean {
  const { contents, timeZone } = app.derived;
  const clock = clockAt(instant, timeZone);
  if (clock === contents.moments[moment]) return false;
  const edit = (s: typeof app.document.survey) => setMoments(s, { [moment]: clock });
  if (newStep) app.document.perform(`change moment ${moment.toUpperCase()}`, edit);
  else app.document.replace(edit);
  return true;
}
