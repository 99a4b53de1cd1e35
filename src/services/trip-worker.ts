import { fieldDay } from '../figures/trip/field-day';
import { zoneFinder } from '../imports/time-zone';
import { readContents } from '../survey/contents';
import { openSurvey } from '../survey/open';
import { sourceTexts } from '../survey/sources';
import type { TripAnswer, TripRequest } from './trip-messages';

const answer = (message: TripAnswer) => self.postMessage(message);

self.onmessage = async ({ data: { text, asked } }: MessageEvent<TripRequest>) => {
  try {
    const opened = openSurvey(text);
    if (!opened.ok) return answer({ part: 'refused', reason: opened.reason });
    const contents = readContents(opened.survey, await zoneFinder());
    const credits = sourceTexts(opened.survey);
    for (const one of asked) answer({ part: 'day', day: fieldDay(contents, one), credits });
    answer({ part: 'end' });
  } catch (error) {
    answer({ part: 'refused', reason: `It could not be computed: ${String(error)}.` });
  }
};
