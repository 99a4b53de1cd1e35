import { basicInstant } from '../time/local-time';

/** One entry of a calendar. Instants in ms since 1970, UTC. */
export interface CalendarEntry {
  /** The same for the same entry in every file, unlike that of any other. */
  readonly uid: string;
  readonly from: number;
  readonly to: number;
  readonly title: string;
  readonly place: string;
  /** Degrees, WGS84. */
  readonly position: readonly [lng: number, lat: number] | null;
  readonly notes: string;
  /** When and with what words it is called out; null for never. */
  readonly alarm: { readonly minutesBefore: number; readonly text: string } | null;
}

const crlf = '\r\n';
/** Octets of a line without its break (RFC 5545 3.1). */
const longestLine = 75;

/**
 * A calendar file (RFC 5545): times in UTC, so that no time zone has to be described. `made`: the instant at which the
 * file is made.
 */
export function calendarText(entries: readonly CalendarEntry[], made: number): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Sunside//Plan//EN',
    'CALSCALE:GREGORIAN',
    ...entries.flatMap((entry) => eventLines(entry, made)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => folded(line) + crlf).join('');
}

function eventLines(
  { uid, from, to, title, place, position, notes, alarm }: CalendarEntry,
  made: number,
): string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(uid)}`,
    `DTSTAMP:${basicInstant(made)}`,
    `DTSTART:${basicInstant(from)}`,
    `DTEND:${basicInstant(to)}`,
    `SUMMARY:${escaped(title)}`,
    ...(place === '' ? [] : [`LOCATION:${escaped(place)}`]),
    // Latitude first (3.8.1.6).
    ...(position ? [`GEO:${position[1].toFixed(6)};${position[0].toFixed(6)}`] : []),
    ...(notes === '' ? [] : [`DESCRIPTION:${escaped(notes)}`]),
    ...(alarm ? alarmLines(alarm) : []),
    'END:VEVENT',
  ];
}

/** An alarm with words (3.6.6), so many minutes before the start (3.8.6.3). */
const alarmLines = ({ minutesBefore, text }: NonNullable<CalendarEntry['alarm']>): string[] => [
  'BEGIN:VALARM',
  'ACTION:DISPLAY',
  `TRIGGER:-PT${Math.max(0, Math.round(minutesBefore))}M`,
  `DESCRIPTION:${escaped(text)}`,
  'END:VALARM',
];

/** Text as a value (3.3.11): backslash, semicolon, comma and line break are escaped; other control characters go. */
const escaped = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replace(/\n/g, '\\n')
    // eslint-disable-next-line no-control-regex -- CONTROL of the RFC's grammar, tab excepted
    .replace(/[\u0000-\u0008\u000a-\u001f\u007f]/g, '');

/** Cuts a line into pieces of at most 75 octets of UTF-8, each after the first led by a space, never within a character. */
function folded(line: string): string {
  const pieces = [''];
  let room = longestLine;
  for (const character of line) {
    const octets = utf8Length(character.codePointAt(0) ?? 0);
    if (octets > room) {
      pieces.push('');
      room = longestLine - 1;
    }
    pieces[pieces.length - 1] += character;
    room -= octets;
  }
  return pieces.join(`${crlf} `);
}

const utf8Length = (codePoint: number): number =>
  codePoint < 0x80 ? 1 : codePoint < 0x800 ? 2 : codePoint < 0x10000 ? 3 : 4;
