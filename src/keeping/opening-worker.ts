import type { OpeningAnswer, OpeningRequest } from './opening-messages';
import type { Survey, SurveyFeature } from '../survey/document';
import { openSurvey } from '../survey/open';

const answer = (message: OpeningAnswer) => self.postMessage(message);

/** Of one message, so that the page takes it within a few milliseconds. */
const mostPositions = 20_000;
/** What a feature costs besides its positions, in positions. */
const perFeature = 20;

self.onmessage = async ({ data }: MessageEvent<OpeningRequest>) => {
  try {
    const opened = openSurvey(typeof data === 'string' ? data : await data.text());
    if (!opened.ok) return answer({ part: 'refused', reason: opened.reason });
    const { survey, problems, newer } = opened;
    const head: Survey = { ...survey, features: [] };
    answer({ part: 'head', survey: head, problems, newer, count: survey.features.length });
    for (const features of pieces(survey.features)) answer({ part: 'features', features });
  } catch (error) {
    answer({ part: 'refused', reason: `It could not be read: ${String(error)}.` });
  }
};

function* pieces(features: readonly SurveyFeature[]): Generator<readonly SurveyFeature[]> {
  let piece: SurveyFeature[] = [];
  let size = 0;
  for (const feature of features) {
    piece.push(feature);
    size += perFeature + positionsOf(feature.geometry?.['coordinates']);
    if (size < mostPositions) continue;
    yield piece;
    piece = [];
    size = 0;
  }
  if (piece.length > 0) yield piece;
}

function positionsOf(coordinates: unknown): number {
  if (!Array.isArray(coordinates)) return 0;
  const [first] = coordinates as unknown[];
  if (!Array.isArray(first)) return 1;
  return Array.isArray(first[0])
    ? (coordinates as unknown[]).reduce((sum: number, ring) => sum + positionsOf(ring), 0)
    : coordinates.length;
}
