import { readMetar } from '../figures/traffic/wind/metar';
import type { ReportedSky } from '../figures/traffic/wind/sky-groups';
import type { Wind } from '../figures/traffic/wind/wind';
import { readTypedWind } from '../figures/traffic/wind/typed-wind';
import type { FiguresArguments, Read } from './arguments';

export interface GivenWind {
  readonly wind: Wind;
  /** How it was read, where that must be said. */
  readonly remarks: readonly string[];
  /** What a METAR says of the sky. */
  readonly sky?: ReportedSky;
}

/** The wind that the command was given, null for none. `now`: ms since 1970. */
export function givenWind(
  { wind, metar }: Pick<FiguresArguments, 'wind' | 'metar'>,
  now: number,
): Read<GivenWind | null> {
  if (wind !== null) {
    const read = readTypedWind(wind);
    return read.ok
      ? { ok: true, value: { wind: read.value, remarks: [] } }
      : { ok: false, reason: `--wind: ${read.reason}` };
  }
  if (metar === null) return { ok: true, value: null };
  const read = readMetar(metar, now);
  return read.ok ? read : { ok: false, reason: `--metar: ${read.reason}` };
}
