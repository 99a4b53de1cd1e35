import { scoreFrom } from './practice';

/** What a total score is worth in one word; below "poor" nothing is worth waiting for. */
export type ScoreWord = 'good' | 'fair' | 'poor' | 'not worth waiting for';

/** To the thousandth: nobody tells 0.3998 from 0.4, and totals of a year are held with seven figures. */
const rounding = 0.0005;

export function scoreWord(total: number): ScoreWord {
  const reaches = (from: number) => total >= from - rounding;
  if (reaches(scoreFrom.good)) return 'good';
  if (reaches(scoreFrom.fair)) return 'fair';
  return reaches(scoreFrom.poor) ? 'poor' : 'not worth waiting for';
}

/** Whether a picture is worth being called the best: below "poor" none is. */
export const isWorthIt = (total: number): boolean => scoreWord(total) !== 'not worth waiting for';
