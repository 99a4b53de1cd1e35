import type { Contents } from '../../survey/contents';
import type { Problem } from '../../survey/problems';
import { dateAt } from '../../time/local-time';
import { ruleDoubts, spotAccessDoubts } from '../access/access-doubts';
import { hasMagneticModel } from '../geometry/magnetic';
import { readHours } from '../traffic/flow/hours';
import type { RunwayFigures } from '../types';
import { blastDoubts } from './blast-check';
import { heightDoubts } from './height-checks';
import { militaryDoubts } from './military-check';
import { momentDoubts } from './moment-doubts';
import { placeProblems } from './place-checks';
import { runwayDoubts } from './runway-checks';
import { spotDoubts } from './spot-checks';

/** Everything about a survey that is doubtful or has no meaning, the reading of it included. */
export function problemsOf(
  contents: Contents,
  runways: readonly (RunwayFigures | null)[],
  instant: number,
): Problem[] {
  const problems = [...contents.problems];
  if (!hasMagneticModel(instant))
    problems.push({
      id: null,
      reason:
        'The World Magnetic Models at hand cover 2015 to 2029; magnetic bearings are those of the nearest day that they cover.',
      used: true,
    });
  problems.push(...momentDoubts(contents, instant), ...heightDoubts(contents), ...militaryDoubts(contents));
  contents.runways.forEach((runway, i) => {
    const figures = runways[i];
    if (figures) problems.push(...runwayDoubts(runway, figures));
    else
      problems.push({
        id: runway.id,
        reason:
          'Both ends of the runway are in one place (under 1 m apart). Drag one end away, or delete the runway.',
        used: false,
      });
  });
  contents.configurations.forEach(({ hours }, i) => {
    if (readHours(hours) === null)
      problems.push({
        id: null,
        reason: `sunside.flow.configurations.${i}.hours: expected hours like 06:00-22:00, got "${hours}"; they do not count`,
        used: true,
      });
  });
  problems.push(...placeProblems(contents));
  const date = dateAt(instant, contents.site.timeZone);
  for (const reason of ruleDoubts(contents.rules, date)) problems.push({ id: null, reason, used: true });
  for (const spot of contents.spots) {
    problems.push(...spotDoubts(spot, contents), ...blastDoubts(spot, contents));
    for (const reason of spotAccessDoubts(spot, contents.rules, date))
      problems.push({ id: spot.id, reason, used: true });
  }
  return problems;
}
