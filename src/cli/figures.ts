import { readFileSync } from 'node:fs';
import type { Wind } from '../figures/traffic/wind/wind';
import { readGeotiff, type ReadElevations } from '../imports/terrain/read-geotiff';
import { readContents, type Contents } from '../survey/contents';
import { openSurvey } from '../survey/open';
import { skyAtOf } from '../figures/light/sky-at';
import type { Sky } from '../figures/optics/exposure';
import { nothingPinned } from '../figures/optics/settings';
import { readArguments, type FiguresArguments, type Read } from './arguments';
import { dayJson } from './day-json';
import { figuresJson } from './figures-json';
import { flowJson } from './flow-json';
import { underSky } from './given-sky';
import { givenWind } from './given-wind';
import type { SettingsWanted } from './sample-json';
import { recordFrom, sweepJson } from './sweep-json';
import type { SettingsArguments } from './settings-arguments';

/** The contents with another subject or body chosen by key. */
function chosen(contents: Contents, subject: string | null, body: string | null): Read<Contents> {
  const subjectFound = contents.subjects.find((s) => s.key === (subject ?? contents.subject.key));
  if (!subjectFound) return { ok: false, reason: `--subject: the survey has no subject "${subject}"` };
  const bodyFound = contents.kit.bodies.find((b) => b.key === (body ?? contents.body.key));
  if (!bodyFound) return { ok: false, reason: `--body: the kit has no body "${body}"` };
  return { ok: true, value: { ...contents, subject: subjectFound, body: bodyFound } };
}

/** What settings are wanted for: null without --lens. */
function settingsWanted(
  contents: Contents,
  given: SettingsArguments | null,
  sky: Sky | number,
): Read<SettingsWanted | null> {
  if (given === null) return { ok: true, value: null };
  const { lens: key, ...pins } = given;
  const lens = contents.kit.lenses.find((l) => l.key === key);
  if (!lens) return { ok: false, reason: `--lens: the kit has no lens "${key}"` };
  return { ok: true, value: { lens, pinned: { ...nothingPinned, ...pins, sky } } };
}

/** The bytes of a file, or why there are none. */
function bytesOf(file: string): Read<Buffer> {
  try {
    return { ok: true, value: readFileSync(file) };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, reason: `${file} cannot be read: ${why}` };
  }
}

/** The ground round the airfield out of a GeoTIFF. */
async function terrainFrom(file: string, contents: Contents): Promise<Read<ReadElevations>> {
  const bytes = bytesOf(file);
  if (!bytes.ok) return { ok: false, reason: `--terrain: ${bytes.reason}` };
  const reading = await readGeotiff(new Uint8Array(bytes.value).buffer, contents.site.reference);
  return reading.ok
    ? { ok: true, value: reading.grid }
    : { ok: false, reason: `--terrain: ${file}: ${reading.reason}` };
}

/** Where to stand; null when it is not asked. A record of past winds comes from a file, else from the survey. */
function sweepWanted(
  { sweep, at }: FiguresArguments,
  contents: Contents,
  wind: Wind | null,
  terrain: ReadElevations | null,
): Read<object | null> {
  if (!sweep) return { ok: true, value: null };
  let record = contents.windRecord;
  if (sweep.record !== null) {
    const bytes = bytesOf(sweep.record);
    if (!bytes.ok) return { ok: false, reason: `--record: ${bytes.reason}` };
    const read = recordFrom(bytes.value.toString('utf8'), sweep.record, contents);
    if (!read.ok) return read;
    record = read.value;
  }
  return sweepJson(contents, sweep, at, wind, terrain, record);
}

async function run(args: readonly string[], now: number): Promise<Read<string>> {
  const read = readArguments(args, now);
  if (!read.ok) return read;
  const { file, at, subject, body, day, terrain } = read.value;
  const wind = givenWind(read.value, now);
  if (!wind.ok) return wind;
  const bytes = bytesOf(file);
  if (!bytes.ok) return bytes;
  const opened = openSurvey(bytes.value.toString('utf8'));
  if (!opened.ok) return { ok: false, reason: `${file}: ${opened.reason}` };
  if (opened.newer)
    return {
      ok: false,
      reason: `${file}: the survey was written by a newer version of Sunside; update to read it`,
    };
  const contents = chosen(readContents(opened.survey), subject, body);
  if (!contents.ok) return contents;
  const { sky } = read.value;
  const looked = underSky(contents.value, sky, wind.value?.sky ?? null, at, day);
  const wanted = settingsWanted(looked, read.value.settings, sky?.word ?? skyAtOf(looked)(at).direct);
  if (!wanted.ok) return wanted;
  const ground = terrain === null ? null : await terrainFrom(terrain, looked);
  if (ground && !ground.ok) return ground;
  const grid = ground?.value ?? null;
  const wishes = { settings: wanted.value, lenses: read.value.lenses };
  const sweep = sweepWanted(read.value, looked, wind.value?.wind ?? null, grid);
  if (!sweep.ok) return sweep;
  const figures = {
    ...figuresJson(looked, opened.problems, at, wishes, grid),
    ...(wind.value ? { flow: flowJson(looked, wind.value, at) } : {}),
    ...(day === null ? {} : { day: dayJson(looked, day, grid) }),
    ...(sweep.value && { sweep: sweep.value }),
  };
  return { ok: true, value: JSON.stringify(figures, null, 1) };
}

const answer = await run(process.argv.slice(2), Date.now());
if (answer.ok) process.stdout.write(`${answer.value}\n`);
else {
  process.stderr.write(`${answer.reason.replace(/\s+/g, ' ')}\n`);
  process.exitCode = 2;
}
