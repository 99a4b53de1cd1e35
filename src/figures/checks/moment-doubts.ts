import type { Contents } from '../../survey/contents';
import type { Problem } from '../../survey/problems';
import { momentsOf } from '../light/moments';

const events = { sunrise: 'sunrise', sunset: 'sunset', noon: 'solar noon' } as const;

/** Moments that follow an event of the sun which their day does not have. `now` stands in for a date that is not named. */
export function momentDoubts(contents: Pick<Contents, 'site' | 'moments'>, now: number): Problem[] {
  const { date, unmet } = momentsOf(contents, now);
  return unmet.flatMap((moment) => {
    const rule = contents.moments[`${moment}Rule`];
    if (!rule) return [];
    const letter = moment.toUpperCase();
    const reason = `Moment ${letter} follows ${events[rule.event]}, which ${date} does not have here; ${contents.moments[moment]} stands in. Type a time, or choose another date.`;
    return [{ id: null, reason, used: true }];
  });
}
