import { parseNumber, typedNumber } from '../../units/number';

const hectopascalsPerInch = 33.8639;
const [least, most] = [870, 1090];

/** Takes an altimeter setting in hPa, or in inches of mercury (29.92), which no setting in hPa can be mistaken for. */
export const takeHectopascals =
  (set: (hPa: number) => void) =>
  (text: string): string | null => {
    const value = parseNumber(text.replace(/\s*(hpa|mbar|mb|inhg|in)$/i, ''));
    if (value === null) return `"${text.trim()}" is no altimeter setting. Type hPa, such as 1013.`;
    const hPa = value > 20 && value < 40 ? value * hectopascalsPerInch : value;
    if (hPa < least || hPa > most)
      return `${typedNumber(value, 2)} hPa is out of range. Type a number from ${least} to ${most} hPa.`;
    set(Number(hPa.toFixed(2)));
    return null;
  };
