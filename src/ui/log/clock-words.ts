import type { DueMovement } from '../../figures/movements/due-on';

/** Seconds of a typed correction: "+1:30" is a minute and a half to be added, "-45" seconds. Null for anything else. */
export function readCorrection(text: string): number | null {
  const [, sign, first, second, third] =
    /^\s*([+-]?)(\d{1,9})(?::(\d{1,2}))?(?::(\d{1,2}))?\s*$/.exec(text.replace('−', '-')) ?? [];
  if (first === undefined) return text.trim() === '' ? 0 : null;
  const seconds = [first, second, third]
    .filter((part) => part !== undefined)
    .reduce((sum, part) => sum * 60 + Number(part), 0);
  return sign === '-' ? -seconds : seconds;
}

/** "+1:30", "−1:00:45", "as it is": reads back as it is written. */
export function correctionWords(seconds: number): string {
  if (seconds === 0) return 'as it is';
  const size = Math.abs(seconds);
  const two = (value: number) => String(value).padStart(2, '0');
  const [h, m, s] = [Math.floor(size / 3600), Math.floor(size / 60) % 60, size % 60];
  return `${seconds < 0 ? '−' : '+'}${h > 0 ? `${h}:${two(m)}` : m}:${two(s)}`;
}

/** "arrival, A320, AB123": what was due. */
export const dueWords = ({ movement: { use, type, flight } }: DueMovement): string =>
  [use, type, flight].filter((part) => part !== '').join(', ');
