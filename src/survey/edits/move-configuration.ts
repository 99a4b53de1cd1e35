import type { Survey } from '../document';
import { calmInFile, configurationsInFile, withFlow } from './flow-in-file';

/** Makes a flow configuration more preferred (-1) or less (1) than its neighbour. */
export function moveConfiguration(survey: Survey, index: number, by: -1 | 1): Survey {
  const list = configurationsInFile(survey);
  const moving = list[index];
  if (moving === undefined || list[index + by] === undefined) return survey;
  return withFlow(survey, list.toSpliced(index, 1).toSpliced(index + by, 0, moving), calmInFile(survey));
}
