import { scoreFrom } from './practice';

/** What a total score is worth in one word; below "poor" nothing is worth waiting for. */
export type ScoreWord = 'good' | 'fair' | 'poor' | 'not worth waiting for';

/** Totals are held with seven figures where a year of them is kept: a threshold that is met holds. */
const rounding = 1e-6;

export function scoreWord(total: number): ScoreWord {
  const reaches = (from: number) => total >= from - rounding;
  if (reaches(scoreFrom.good)) return 'good';
  if (reaches(scoreFrom.fair)) return 'fair';
  return reaches(scoreFrom.poor) ? 'poor' : 'not worth waiting for';
}

/** Whether a picture is worth being called the best: below "poor" none is. */
export const isWorthIt = (total: number): boolean => scoreWord(total) !== 'not worth waiting for';
