import { metresPerFoot } from '../../units/length';
import { practice } from '../practice';

const metresPerInch = 0.0254;

/**
 * A height or width tag in m: "12", "12 m", "12,5", "40 ft", "40'", "40'6\"". Of several ("3;4", "8-10") the largest,
 * since what may stand in the way should not be taken for too low. Null for anything else, and for none (0).
 */
export const heightIn = (text: string | undefined): number | null => lengthOf(text, Math.max);

/** The same of several the least: from there on it hides. */
export const leastHeightIn = (text: string | undefined): number | null => lengthOf(text, Math.min);

function lengthOf(text: string | undefined, pick: Pick): number | null {
  return picked(text, pick, (part) => {
    const feet = /^(\d+(?:\.\d+)?)\s*(?:'|′|ft\b|feet|foot)\s*(?:(\d+(?:\.\d+)?)\s*(?:"|″|in\b))?$/i.exec(
      part,
    );
    if (feet) return Number(feet[1]) * metresPerFoot + Number(feet[2] ?? 0) * metresPerInch;
    const metres = /^(\d+(?:\.\d+)?)\s*(m|metres?|meters?)?$/i.exec(part);
    return metres ? Number(metres[1]) : null;
  });
}

/** Storeys ("3", "2.5", "3;4") as a height in m; null for anything else. */
export function heightOfLevels(text: string | undefined, pick: Pick = Math.max): number | null {
  const levels = picked(text, pick, (part) => (/^\d+(?:\.\d+)?$/.test(part) ? Number(part) : null));
  return levels === null ? null : levels * practice.levelHeight;
}

type Pick = (...values: readonly number[]) => number;

function picked(text: string | undefined, pick: Pick, read: (part: string) => number | null): number | null {
  if (text === undefined || text.length > 60) return null;
  const parts = text
    .replace(/(\d),(\d)/g, '$1.$2')
    .split(/[;|/]|(?<=\d\s*)[-–](?=\s*\d)/)
    .map((part) => part.trim().replace(/^[~≈]\s*/, ''));
  const values = parts.map(read).filter((value) => value !== null && value > 0 && value <= 1000);
  return values.length === 0 ? null : Math.round(pick(...values.map(Number)) * 100) / 100;
}
