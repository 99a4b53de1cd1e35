import type { Runway } from '../../survey/schema/runway';
import type { Problem } from '../../survey/problems';
import { designatorNumber, designatorsApart, suggestedDesignator } from '../geometry/designator';
import { oddLength } from '../practice';
import { longestFlown } from '../traffic/runway-geometry';
import type { EndFigures, RunwayFigures } from '../types';

/** What is doubtful about a runway, in plain words; figures are computed all the same. */
export function runwayDoubts(runway: Runway, figures: RunwayFigures): Problem[] {
  const reasons = [...runway.doubts, ...lengthDoubts(runway, figures), ...designatorDoubts(runway, figures)];
  return reasons.map((reason) => ({ id: runway.id, reason, used: true }));
}

function* lengthDoubts(runway: Runway, { length }: RunwayFigures) {
  if (length < oddLength.shortest || length > oddLength.longest)
    yield `The runway is ${Math.round(length)} m long, which is odd. Check both ends on the map.${length > longestFlown ? ' Its paths are left out.' : ''}`;
  for (const end of runway.ends) {
    if (end.displaced >= length)
      yield `The displaced threshold of ${end.designator || 'one end'} (${Math.round(end.displaced)} m) is not on the runway, which is ${Math.round(length)} m long.`;
  }
}

/** Latitude in degrees north of which runways are often numbered from true north (Transport Canada's rule). */
const trueNumbersFrom = 60;

/** How far a designator is from the runway's azimuth, in tens of degrees; null when it has no number. */
function tensOff(end: EndFigures, latitude: number): number | null {
  const magnetic = designatorsApart(end.designator, end.suggestedDesignator);
  const fromTrue = /T$/i.test(end.designator) || latitude > trueNumbersFrom;
  const whenTrue = fromTrue ? designatorsApart(end.designator, suggestedDesignator(end.trueBearing)) : null;
  return magnetic === null ? null : Math.min(magnetic, whenTrue ?? magnetic);
}

function* designatorDoubts({ line }: Runway, { ends }: RunwayFigures) {
  for (const end of ends) {
    const apart = tensOff(end, line[0][1]);
    if (apart !== null && apart > 1)
      yield `Designator ${end.designator} does not fit the magnetic azimuth of ${Math.round(end.magneticBearing)} degrees, which suggests ${end.suggestedDesignator}. Are the ends swapped or drawn wrongly?`;
  }
  const [a, b] = ends;
  const apart = designatorsApart(a.designator, b.designator);
  if (apart !== null && apart !== 18)
    yield `Designators ${a.designator} and ${b.designator} do not belong to one runway: their numbers differ by ${apart} instead of 18.`;
  for (const end of ends) {
    if (end.designator !== '' && designatorNumber(end.designator) === null && /\d/.test(end.designator))
      yield `Designator ${end.designator} has no number from 01 to 36.`;
  }
}
