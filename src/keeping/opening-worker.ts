import type { OpeningAnswer, OpeningRequest } from './opening-messages';
import type { Survey } from '../survey/document';
import { messagePieces } from '../survey/message-pieces';
import { openSurvey } from '../survey/open';

const answer = (message: OpeningAnswer) => self.postMessage(message);

self.onmessage = async ({ data }: MessageEvent<OpeningRequest>) => {
  try {
    const opened = openSurvey(typeof data === 'string' ? data : await data.text());
    if (!opened.ok) return answer({ part: 'refused', reason: opened.reason });
    const { survey, problems, newer } = opened;
    const head: Survey = { ...survey, features: [] };
    answer({ part: 'head', survey: head, problems, newer, count: survey.features.length });
    for (const features of messagePieces(survey.features, ({ geometry }) => geometry?.['coordinates']))
      answer({ part: 'features', features });
  } catch (error) {
    answer({ part: 'refused', reason: `It could not be read: ${String(error)}.` });
  }
};
