import exifr from 'exifr';
import { unreadPhoto, type PhotoRecord } from '../../survey/photo-record';
import { isDate } from '../../survey/schema/when';
import { readRating, sidecarRating } from './rating';

/** All that is ever asked of a file; whatever else it holds (owner, serial numbers, thumbnail) is not even parsed. */
const asked = {
  ifd0: ['Model', 'ImageWidth', 'ImageHeight', 'Rating'],
  exif: [
    'DateTimeOriginal',
    'OffsetTimeOriginal',
    'SubSecTimeOriginal',
    'FocalLength',
    'FNumber',
    'ExposureTime',
    'ISO',
    'ExifImageWidth',
    'ExifImageHeight',
    'FocalPlaneXResolution',
    'FocalPlaneResolutionUnit',
  ],
  gps: ['GPSLatitude', 'GPSLatitudeRef', 'GPSLongitude', 'GPSLongitudeRef'],
} as const;
/** Bytes of a file's beginning that hold its metadata: a JPEG's marker segments come first. */
export const headOf = 256 * 1024;

const options = {
  ifd0: { pick: [...asked.ifd0] },
  exif: { pick: [...asked.exif] },
  gps: { pick: [...asked.gps] },
  // As text: of all that it may hold only the rating is looked for.
  xmp: { parse: false },
  ifd1: false,
  interop: false,
  makerNote: false,
  iptc: false,
  icc: false,
  jfif: false,
  ihdr: false,
  reviveValues: false,
  translateValues: false,
  silentErrors: true,
};

/** Reads one photograph from the beginning of its file. Never throws: what cannot be read is a doubt beside its name. */
export async function readPhoto(file: string, head: ArrayBuffer): Promise<PhotoRecord> {
  let tags: Readonly<Record<string, unknown>> | undefined;
  try {
    tags = (await exifr.parse(head, options)) as typeof tags;
  } catch {
    return unreadPhoto(file, 'The file is damaged, or no photograph that can be read.');
  }
  if (!tags || Object.keys(tags).every((name) => name === 'errors'))
    return unreadPhoto(file, 'The file says nothing of when and how it was taken.');
  const doubts: string[] = [];
  const doubt = (words: string) => void doubts.push(words);
  if (tags['errors'] !== undefined) doubt('Part of what the file says of itself could not be read.');
  return {
    file,
    clock: clockOf(tags, doubt),
    offset: offsetOf(tags['OffsetTimeOriginal'], doubt),
    position: positionOf(tags, doubt),
    model: textOf(tags['Model']),
    focalLength: within(tags['FocalLength'], 0.1, 10_000),
    fNumber: within(tags['FNumber'], 0.1, 1000),
    exposure: within(tags['ExposureTime'], 1e-7, 86_400),
    iso: within(first(tags['ISO']), 1, 100_000_000),
    width: within(tags['ExifImageWidth'] ?? tags['ImageWidth'], 1, 1_000_000),
    height: within(tags['ExifImageHeight'] ?? tags['ImageHeight'], 1, 1_000_000),
    pixelsPerMm: pixelsPerMm(tags),
    rating: sidecarRating(typeof tags['xmp'] === 'string' ? tags['xmp'] : '') ?? readRating(tags['Rating']),
    doubts,
  };
}

type Tags = Readonly<Record<string, unknown>>;
type Doubt = (words: string) => void;

const first = (value: unknown): unknown => (Array.isArray(value) ? (value as unknown[])[0] : value);

function within(value: unknown, least: number, most: number): number | null {
  return typeof value === 'number' && value >= least && value <= most ? value : null;
}

/** mm of the units in which resolutions are written: inches (the usual one), cm; mm and µm as some cameras have it. */
const unitSizes: ReadonlyMap<unknown, number> = new Map([
  [undefined, 25.4],
  [2, 25.4],
  [3, 10],
  [4, 1],
  [5, 0.001],
]);

function pixelsPerMm(tags: Tags): number | null {
  const unit = unitSizes.get(tags['FocalPlaneResolutionUnit']);
  const resolution = within(tags['FocalPlaneXResolution'], 1e-6, 1e9);
  return unit === undefined || resolution === null ? null : resolution / unit;
}

/** Texts of Exif end in zeros and blanks; longer ones are no model's name. */
function textOf(value: unknown): string | null {
  if (typeof value !== 'string') return null;
  const text = value.replace(/\0[\s\S]*$/, '').trim();
  return text === '' ? null : text.slice(0, 100);
}

/** "2026:06:21 18:00:01" of the camera's own clock; blanks and zeros mean that it was never set. */
function clockOf(tags: Tags, doubt: Doubt): string | null {
  const given = textOf(tags['DateTimeOriginal']);
  if (given === null) {
    doubt('The file does not say when it was taken.');
    return null;
  }
  const [, year, month, day, time] =
    /^(\d{4})[:-](\d{2})[:-](\d{2})[ T]((?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d)/.exec(given) ?? [];
  const date = `${year}-${month}-${day}`;
  if (time === undefined || !isDate(date)) {
    doubt(`“${given}” is no date and time: the camera’s clock was not set.`);
    return null;
  }
  const fraction = /^\d{1,9}$/.exec(textOf(tags['SubSecTimeOriginal']) ?? '')?.[0];
  return `${date}T${time}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** "+02:00", in minutes. Blanks are how a camera says that it does not know. */
function offsetOf(value: unknown, doubt: Doubt): number | null {
  const given = textOf(value);
  if (given === null || /^[\s:]*$/.test(given)) return null;
  if (given === 'Z') return 0;
  const [, sign, hours = '', minutes = ''] = /^([+-])(\d{2}):?(\d{2})$/.exec(given) ?? [];
  const offset = Number(hours) * 60 + Number(minutes);
  if (sign === undefined || offset > 14 * 60 || Number(minutes) > 59) {
    doubt(`“${given}” is no offset from UTC; the airfield’s time zone is taken.`);
    return null;
  }
  return sign === '-' ? -offset : offset;
}

function positionOf(tags: Tags, doubt: Doubt): readonly [number, number] | null {
  if (tags['GPSLatitude'] === undefined && tags['GPSLongitude'] === undefined) return null;
  const lat = degreesOf(tags['GPSLatitude'], tags['GPSLatitudeRef'], 'S');
  const lng = degreesOf(tags['GPSLongitude'], tags['GPSLongitudeRef'], 'W');
  // A receiver without a fix writes zeros.
  if (lat !== null && lng !== null && Math.abs(lat) <= 90 && Math.abs(lng) <= 180 && (lat !== 0 || lng !== 0))
    return [lng, lat];
  doubt('Where it was taken could not be read.');
  return null;
}

function degreesOf(value: unknown, ref: unknown, negative: string): number | null {
  if (!Array.isArray(value)) return null;
  const [degrees = 0, minutes = 0, seconds = 0] = (value as readonly unknown[]).map(Number);
  const size = degrees + minutes / 60 + seconds / 3600;
  if (!Number.isFinite(size)) return null;
  return textOf(ref)?.toUpperCase() === negative ? -size : size;
}
