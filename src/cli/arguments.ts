import { parseArgs } from 'node:util';
import { parseDate, parseInstant } from '../time/local-time';
import { readSky, type GivenSky } from './given-sky';
import { readSettings, settingsOptions, settingsUsage, type SettingsArguments } from './settings-arguments';

export interface FiguresArguments {
  readonly file: string;
  /** ms since 1970, UTC. */
  readonly at: number;
  readonly subject: string | null;
  readonly body: string | null;
  /** A METAR's wind group, or a whole METAR; at most one of the two. */
  readonly wind: string | null;
  readonly metar: string | null;
  /** A date at the airfield, "2026-06-21". */
  readonly day: string | null;
  /** What the settings are wanted for; null without --lens. */
  readonly settings: SettingsArguments | null;
  /** A GeoTIFF with the ground's heights. */
  readonly terrain: string | null;
  /** Whether what each lens makes of every sample is wanted. */
  readonly lenses: boolean;
  /** Null where none is given. */
  readonly sky: GivenSky | null;
}

export type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };

export const usage =
  'usage: npm run -s figures -- SURVEY.geojson [--at 2026-06-21T17:00:00Z] [--subject KEY] [--body KEY] [--wind 24015G25KT | --wind 240/15 | --metar REPORT] [--day 2026-06-21] [--terrain FILE.tif] [--lenses] [--sky clear|hazy|overcast|heavy | --sky D[,V]] ' +
  settingsUsage;

/** Reads the command's arguments; a reason says what is wrong with them. */
export function readArguments(args: readonly string[], now: number): Read<FiguresArguments> {
  const options = {
    at: { type: 'string' },
    subject: { type: 'string' },
    body: { type: 'string' },
    wind: { type: 'string' },
    metar: { type: 'string' },
    day: { type: 'string' },
    terrain: { type: 'string' },
    lenses: { type: 'boolean' },
    sky: { type: 'string' },
    ...settingsOptions,
  } as const;
  let parsed;
  try {
    parsed = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    return { ok: false, reason: `${error instanceof Error ? error.message : String(error)} (${usage})` };
  }
  const [file, ...more] = parsed.positionals;
  if (file === undefined) return { ok: false, reason: `a survey file is missing (${usage})` };
  if (more.length > 0)
    return { ok: false, reason: `one survey file at a time, got ${parsed.positionals.length} (${usage})` };
  const { at, subject, body, wind, metar, day, terrain, lenses } = parsed.values;
  if (wind !== undefined && metar !== undefined)
    return { ok: false, reason: `either --wind or --metar, not both (${usage})` };
  const instant = at === undefined ? now : parseInstant(at);
  if (instant === null)
    return { ok: false, reason: `--at: expected ISO 8601 with Z or an offset, got "${at}"` };
  if (day !== undefined && parseDate(day) === null)
    return { ok: false, reason: `--day: expected a date like 2026-06-21, got "${day}"` };
  const settings = readSettings(parsed.values);
  if (!settings.ok) return settings;
  const sky = readSky(parsed.values.sky);
  if (!sky.ok) return sky;
  return {
    ok: true,
    value: {
      file,
      at: instant,
      subject: subject ?? null,
      body: body ?? null,
      wind: wind ?? null,
      metar: metar ?? null,
      day: day ?? null,
      settings: settings.value,
      terrain: terrain ?? null,
      lenses: lenses ?? false,
      sky: sky.value,
    },
  };
}
