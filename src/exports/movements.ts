import Papa from 'papaparse';
import type { MovementFigures } from '../figures/movements/movement-figures';
import { lensName } from '../survey/lens-name';
import { clockAt, dateAt } from '../time/local-time';

const headings = [
  'Date',
  'Time',
  'Arrival or departure',
  'Type',
  'Flight',
  'From or to',
  'Runway',
  'Ends expected',
  'Wanted',
  'Spot',
  'Check first',
  'Distance (m)',
  'Focal length (mm)',
  'Lens',
  'Verdict',
  'Light',
  'Glare',
  'Score',
];

/**
 * Movements with their figures as a table (RFC 4180, UTF-8 with byte order mark): dates and times by the clock of the
 * airfield's `zone`, in the order given.
 */
export function movementsText(figures: readonly MovementFigures[], zone: string): string {
  const rows = figures.map(({ movement, instant, ends, best }) => [
    dateAt(instant, zone),
    clockAt(instant, zone),
    movement.use,
    movement.type,
    movement.flight,
    movement.place,
    movement.runway,
    ends.join(' '),
    movement.starred ? 'yes' : '',
    ...(best
      ? [
          best.spot.name || best.spot.id,
          best.checkFirst ? 'yes' : '',
          Math.round(best.reading.slantRange),
          best.reading.focalLength === null ? '' : Math.round(best.reading.focalLength),
          best.lens ? lensName(best.lens.lens) : '',
          best.lens?.verdict ?? '',
          best.reading.light,
          best.reading.glare ? 'yes' : '',
          best.reading.score.total.toFixed(2),
        ]
      : Array<string>(9).fill('')),
  ]);
  return `\ufeff${Papa.unparse([headings, ...rows.map((row) => row.map(escaped))], { newline: '\r\n' })}\r\n`;
}

/** A spreadsheet runs what looks like a formula; an apostrophe in front makes it text. */
const escaped = (cell: string | number): string | number =>
  typeof cell === 'string' ? cell.replace(/^(?='*[=+\-@])/, "'") : cell;
