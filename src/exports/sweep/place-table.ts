import Papa from 'papaparse';
import { clockAt } from '../../time/local-time';
import { dayOf, type PlaceLists } from './place-lists';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const headings = [
  'Number',
  'Name',
  'Longitude',
  'Latitude',
  'Ground',
  'Good minutes over all paths',
  'Good minutes by the clock',
  'Worth',
  'Focal length (mm)',
  'Share in sight',
  'Date',
  'Paths',
  'In words',
  'Data from',
];

/** The places as a table (RFC 4180, UTF-8 with byte order mark); times by the clock of the airfield. */
export function placeTable(lists: PlaceLists): string {
  const { places, zone } = lists;
  const date = dayOf(lists);
  // In every row: a line of its own would be a place without a name to whoever reads the table.
  const credits = escaped(lists.credits.join(' '));
  const withMonths = places.some(({ expectedMinutes }) => expectedMinutes !== null);
  const rows = places.map(({ candidate: c, name, sentence, expectedMinutes }, i) => [
    i + 1,
    escaped(name),
    c.position[0],
    c.position[1],
    c.ground === 'open' ? 'open' : 'unknown: check first',
    c.pathMinutes,
    c.goodMinutes,
    c.worth.toFixed(2),
    c.focalLength === null ? '' : Math.round(c.focalLength),
    c.visibleShare === null ? '' : c.visibleShare.toFixed(2),
    date,
    escaped(
      c.paths
        .map((p) => {
          const spells = p.spells.map(({ from, to }) => `${clockAt(from, zone)}-${clockAt(to, zone)}`);
          return `${p.name} ${spells.join(', ')} (${p.goodMinutes} min)`;
        })
        .join('; '),
    ),
    escaped(sentence),
    credits,
    ...(withMonths ? months.map((_, m) => Math.round(expectedMinutes?.[m] ?? 0)) : []),
  ]);
  const head = [...headings, ...(withMonths ? months.map((m) => `Expected in ${m} (min)`) : [])];
  return `\ufeff${Papa.unparse([head, ...rows], { newline: '\r\n' })}\r\n`;
}

/** A spreadsheet runs what looks like a formula; an apostrophe in front makes it text. */
const escaped = (text: string): string => text.replace(/^(?='*[=+\-@])/, "'");
