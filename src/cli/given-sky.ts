import { clearSky, type SkyThere } from '../figures/light/sky';
import { skyAtOf } from '../figures/light/sky-at';
import { directOf, skies, type Sky } from '../figures/optics/exposure';
import type { ReportedSky } from '../figures/traffic/wind/sky-groups';
import type { Contents } from '../survey/contents';
import { dateAt } from '../time/local-time';
import type { Read } from './arguments';
import { refused } from './settings-arguments';

/** The sky that the command was given: a word, or the share of direct sun; null for what was not said. */
export interface GivenSky {
  readonly word: Sky | null;
  readonly direct: number | null;
  /** m. */
  readonly visibility: number | null;
}

const expected = `one of ${skies.join(', ')}, or the share of direct sun from 0 to 1 and the visibility in m, such as 0.35 or 0,3000`;

/** Reads "overcast", "0.35" or "0,3000"; null for nothing. */
export function readSky(text: string | undefined): Read<GivenSky | null> {
  if (text === undefined) return { ok: true, value: null };
  const word = skies.find((s) => s === text.trim());
  if (word) return { ok: true, value: { word, direct: directOf[word], visibility: null } };
  const [whole, direct, visibility] = /^(\d(?:\.\d+)?|\.\d+)(?:,(\d+(?:\.\d+)?))?$/.exec(text.trim()) ?? [];
  const read = { direct: Number(direct), visibility: visibility === undefined ? null : Number(visibility) };
  if (whole === undefined || read.direct > 1 || (read.visibility !== null && read.visibility <= 0))
    return refused('--sky', expected, text);
  return { ok: true, value: { word: null, ...read } };
}

/**
 * The survey under the sky that the command names for an instant and for a whole day besides (a date at the airfield):
 * its own word goes before the METAR's, and that before all that the survey knows.
 */
export function underSky(
  contents: Contents,
  given: GivenSky | null,
  reported: ReportedSky | null,
  at: number,
  day: string | null,
): Contents {
  if (!given && !reported) return contents;
  const known: SkyThere = skyAtOf(contents)(at);
  const direct = given?.direct ?? reported?.direct ?? (reported ? clearSky.direct : known.direct);
  const visibility =
    given?.visibility ?? reported?.visibility ?? (reported ? clearSky.visibility : known.visibility);
  const zone = contents.site.timeZone;
  const dates = new Set([dateAt(at, zone), ...(day === null ? [] : [day])]);
  const named = [...dates].map((date) => ({ date, direct, visibility }));
  return { ...contents, sky: [...named, ...contents.sky.filter(({ date }) => !dates.has(date))] };
}
