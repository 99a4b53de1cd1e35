import type { Survey } from '../document';
import { configurationsInFile, withFlow } from './flow-in-file';

/** Names the flow configuration for calm or variable wind, null for none. */
export const setCalm = (survey: Survey, name: string | null): Survey =>
  withFlow(survey, configurationsInFile(survey), name);
