import type { Read } from './arguments';

/** What settings are wanted for: a lens by its key; mm, f-number and s, null where the starting points go. */
export interface SettingsArguments {
  readonly lens: string;
  readonly focalLength: number | null;
  readonly aperture: number | null;
  readonly shutter: number | null;
}

export const settingsUsage = '[--lens KEY [--at-focal MM] [--aperture 7.1] [--shutter 1/500]]';

const text = { type: 'string' } as const;
export const settingsOptions = {
  lens: text,
  'at-focal': text,
  aperture: text,
  shutter: text,
} as const;

type Given = { readonly [O in keyof typeof settingsOptions]?: string | undefined };

/** Reads the options of the settings; null without any of them. */
export function readSettings(given: Given): Read<SettingsArguments | null> {
  const focalLength = readPositive(given['at-focal'], /^(\d+(?:\.\d+)?)(?: ?mm)?$/);
  if (focalLength === undefined)
    return refused('--at-focal', 'a focal length above 0 mm, such as 400', given['at-focal']);
  const aperture = readPositive(given.aperture, /^(?:f\/)?(\d+(?:\.\d+)?)$/);
  if (aperture === undefined)
    return refused('--aperture', 'an f-number above 0, such as 7.1', given.aperture);
  const shutter = readPositive(given.shutter, /^(\d+(?:\.\d+)?)(?:\/(\d+(?:\.\d+)?))?(?: ?s)?$/);
  if (shutter === undefined)
    return refused('--shutter', 'seconds above 0, such as 1/500 or 0.002', given.shutter);
  if (given.lens === undefined) {
    const stray = (['at-focal', 'aperture', 'shutter'] as const).find((name) => given[name] !== undefined);
    return stray === undefined
      ? { ok: true, value: null }
      : { ok: false, reason: `--${stray} goes with --lens only, which says the lens that it is for` };
  }
  return { ok: true, value: { lens: given.lens, focalLength, aperture, shutter } };
}

export const refused = (option: string, expected: string, got: string | undefined): Read<never> => ({
  ok: false,
  reason: `${option}: expected ${expected}, got "${got ?? ''}"`,
});

/** A number above 0, or two with a slash between them; null when nothing is given, undefined when it is no such number. */
function readPositive(given: string | undefined, pattern: RegExp): number | null | undefined {
  if (given === undefined) return null;
  const [, number, divisor = '1'] = pattern.exec(given.trim()) ?? [];
  const value = Number(number) / Number(divisor);
  return Number.isFinite(value) && value > 0 ? value : undefined;
}
