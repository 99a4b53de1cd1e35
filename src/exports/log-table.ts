import Papa from 'papaparse';
import type { LogEntry } from '../survey/schema/log-entry';

const headings = [
  'Time (UTC)',
  'Spot',
  'Path',
  'Subject',
  'Camera',
  'Frames',
  'Focal length (mm)',
  'Needed (mm)',
  'Aperture (f-number)',
  'Exposure (s)',
  'ISO',
  'Light predicted',
  'Light angle (°)',
  'Slant range (m)',
  'Measured slant range (m)',
  'Give or take (m)',
  'Measured height (m)',
  'Kept (0 to 5)',
  'Note',
];

/** The log as a table (RFC 4180, UTF-8 with byte order mark); what is not known is empty. */
export function logTable(entries: readonly LogEntry[]): string {
  const rows = entries
    .toSorted((a, b) => ((a.time ?? '') < (b.time ?? '') ? -1 : 1))
    .map(({ settings, predicted, measured, ...entry }) =>
      [
        entry.time,
        entry.spot,
        entry.path,
        entry.subject,
        entry.camera,
        entry.frames,
        settings.focalLength,
        predicted.focalLength,
        settings.fNumber,
        settings.exposure,
        settings.iso,
        predicted.light,
        predicted.lightAngle,
        predicted.slantRange,
        measured?.slantRange ?? null,
        measured?.slantRangeError ?? null,
        measured?.height ?? null,
        entry.kept,
        entry.note,
      ].map(cell),
    );
  return `\ufeff${Papa.unparse([headings, ...rows], { newline: '\r\n' })}\r\n`;
}

/** A spreadsheet runs what looks like a formula; an apostrophe in front makes it text. */
const cell = (value: string | number | null): string =>
  value === null ? '' : String(value).replace(/^(?='*[=+\-@])/, "'");
