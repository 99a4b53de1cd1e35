import { EventEmitter, once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { readGeotiff, type ReadElevations } from '../imports/terrain/read-geotiff';
import { zoneFinder } from '../imports/time-zone';
import { readContents, type Contents } from '../survey/contents';
import { flowFor } from '../figures/traffic/flow/flow-for';
import { skyAtOf } from '../figures/light/sky-at';
import { readArguments, type Read } from './arguments';
import { dayJson } from './day-json';
import { displaysJson } from './displays-json';
import { nightJson } from './night-json';
import { figuresJsonBySpot } from './figures-json';
import { bytesOf, longestTerrain } from './file-bytes';
import { flowJson } from './flow-json';
import { flownJson } from './flown-json';
import { underSky } from './given-sky';
import { givenWind } from './given-wind';
import { jsonPieces } from './json-pieces';
import { photosIn, photosJson } from './photos-json';
import { progressOn, type Told } from './progress';
import { settingsWanted } from './settings-wanted';
import { surveyIn } from './survey-in';
import { sweepWanted } from './sweep-wanted';

/** The contents with another subject or body chosen by key. */
function chosen(contents: Contents, subject: string | null, body: string | null): Read<Contents> {
  const subjectFound = contents.subjects.find((s) => s.key === (subject ?? contents.subject.key));
  if (!subjectFound) return { ok: false, reason: `--subject: the survey has no subject "${subject}"` };
  const bodyFound = contents.kit.bodies.find((b) => b.key === (body ?? contents.body.key));
  if (!bodyFound) return { ok: false, reason: `--body: the kit has no body "${body}"` };
  return { ok: true, value: { ...contents, subject: subjectFound, body: bodyFound } };
}

/** The ground round the airfield out of a GeoTIFF. */
async function terrainFrom(file: string, contents: Contents): Promise<Read<ReadElevations>> {
  const bytes = bytesOf(file, longestTerrain);
  if (!bytes.ok) return { ok: false, reason: `--terrain: ${bytes.reason}` };
  const reading = await readGeotiff(new Uint8Array(bytes.value).buffer, contents.site.reference);
  return reading.ok
    ? { ok: true, value: reading.grid }
    : { ok: false, reason: `--terrain: ${file}: ${reading.reason}` };
}

interface Answer {
  /** JSON, piece by piece. */
  readonly pieces: Iterable<string>;
}

async function run(args: readonly string[], now: number, told: Told): Promise<Read<Answer>> {
  const read = readArguments(args, now);
  if (!read.ok) return read;
  const { file, at, subject, body, day, terrain } = read.value;
  const wind = givenWind(read.value, now);
  if (!wind.ok) return wind;
  const opened = surveyIn(file);
  if (!opened.ok) return opened;
  const { survey, problems } = opened.value;
  const contents = chosen(readContents(survey, await zoneFinder()), subject, body);
  if (!contents.ok) return contents;
  const { sky } = read.value;
  const looked = underSky(contents.value, sky, wind.value?.sky ?? null, at, day);
  const under = sky?.word ?? skyAtOf(looked)(at).direct;
  const wanted = settingsWanted(looked.kit.lenses, read.value.settings, under);
  if (!wanted.ok) return wanted;
  const ground = terrain === null ? null : await terrainFrom(terrain, looked);
  if (ground && !ground.ok) return ground;
  const grid = ground?.value ?? null;
  const wishes = { settings: wanted.value, lenses: read.value.lenses };
  const sweep = sweepWanted(read.value, looked, wind.value?.wind ?? null, grid, told);
  if (!sweep.ok) return sweep;
  const { spots, ...figures } = figuresJsonBySpot(looked, problems, at, grid, wishes);
  const { photos: folder } = read.value;
  const photos = folder === null ? null : photosIn(folder);
  if (photos && !photos.ok) return photos;
  const flow = wind.value && flowFor(looked, wind.value.wind, at);
  const members = {
    ...figures,
    spots: counted(spots, looked.spots.length, told),
    ...(wind.value ? { flow: flowJson(looked, wind.value, at) } : {}),
    ...(day === null
      ? {}
      : {
          day: dayJson(looked, day, grid, told),
          night: nightJson(looked, day),
          displays: displaysJson(looked, day, grid),
        }),
    ...(sweep.value && { sweep: sweep.value }),
    ...(read.value.flown ? flownJson(looked, grid) : {}),
    ...(folder !== null && photos
      ? { photos: await photosJson(folder, photos.value, looked, flow, grid) }
      : {}),
  };
  return { ok: true, value: { pieces: jsonPieces(members) } };
}

function* counted<T>(items: Iterable<T>, of: number, told: Told): Generator<T> {
  let done = 0;
  for (const item of items) {
    yield item;
    told(++done, of, 'spots');
  }
}

/** Where the command writes: the streams of its process, or whatever takes text. */
export interface Streams {
  readonly out: Pick<NodeJS.WritableStream, 'write'>;
  readonly err: Pick<NodeJS.WritableStream, 'write'> & { readonly isTTY?: boolean };
}

/** The command itself: writes its answer, or one plain line about why there is none, and gives its exit status. */
export async function command(args: readonly string[], now: number, { out, err }: Streams): Promise<0 | 2> {
  const { told, wipe } = progressOn(err);
  const refused = (reason: string): 2 => {
    wipe();
    err.write(`${reason.replace(/\s+/g, ' ')}\n`);
    return 2;
  };
  try {
    const answer = await run(args, now, told);
    if (!answer.ok) return refused(answer.reason);
    for (const piece of answer.value.pieces) await written(out, piece);
    await written(out, '\n');
    wipe();
    return 0;
  } catch (error) {
    // Whatever nobody thought of is one line as well.
    return refused(`the figures broke off: ${error instanceof Error ? error.message : String(error)}`);
  }
}

/** Writes, and waits where the reader is slower: the answer may be longer than the memory. */
async function written(out: Streams['out'], text: string): Promise<void> {
  if (!out.write(text) && out instanceof EventEmitter) await once(out, 'drain');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  // Who closes the pipe early ("| head") has read enough.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 2));
  process.exitCode = await command(process.argv.slice(2), Date.now(), {
    out: process.stdout,
    err: process.stderr,
  });
}
