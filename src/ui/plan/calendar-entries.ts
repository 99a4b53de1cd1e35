import type { CalendarEntry } from '../../exports/calendar';
import type { Stay } from '../../figures/plan/stays-of';
import type { TakenAlong } from '../../figures/plan/taken-along';
import { basicInstant } from '../../time/local-time';
import type { Formats } from '../formats';
import { apertureWords, isoWords, shutterWords } from '../viewfinder/words';
import { readingWords } from '../words/row-words';
import { takeWords } from '../words/sample-words';
import { moveWords, spotName } from './plan-words';

/** Stands in every entry: what is taken along must carry it too. */
const caution =
  'Stay on public or permitted ground; the airfield’s and the police’s word goes before this plan. Never look at or near the sun through a lens. Not for navigation.';

/** Minutes before an entry at which it is called out: before the first of a day, and before one has to leave for another. CP. */
const firstAlarm = 60;
const leavingAlarm = 5;

/** What the entries need to know besides the windows. */
export interface CalendarNeeds {
  /** The airfield's name. */
  readonly site: string;
  readonly timeZone: string;
  readonly format: Formats;
  /** What to do during a stay at a spot if the wind turns, a sentence each; none where nothing is known. */
  readonly instead: (stay: Stay) => readonly string[];
}

/** Time spent at spots as entries of a calendar. */
export const calendarEntries = (stays: readonly Stay[], needs: CalendarNeeds): CalendarEntry[] =>
  stays.map((stay) => entryOf(stay, needs));

function entryOf(stay: Stay, { site, timeZone, format, instead }: CalendarNeeds): CalendarEntry {
  const { spot, from, to, windows, way } = stay;
  const access = spot?.access;
  const clock = (instant: number) => format.clockAt(instant, timeZone);
  const leave = way && `Leave ${spotName(way.from)} by ${clock(way.leave)} (${moveWords(way)}).`;
  const lines = [
    leave ?? `Be there by ${clock(from)}.`,
    ...windows.flatMap((window) => windowLines(window, clock, format)),
    spot === null && 'The spot is not in the survey any more.',
    ...(spot ? [`Position: ${format.whereabouts(spot.position)}`] : []),
    ...instead(stay),
    (access?.status === 'ask' || access?.status === 'unknown') && 'Check first whether one may stand there.',
    access?.contact && `Contact: ${access.contact}`,
    access?.hours && `Hours: ${access.hours}`,
    access?.parking && `Parking: ${access.parking}`,
    caution,
  ];
  const [first] = windows;
  return {
    // The window's own place in the survey: the same in every file, so that a calendar replaces what it has.
    uid: `${first?.chosen.spot}.${first?.chosen.path}.${basicInstant(from)}@sunside`,
    from,
    to,
    title: `${spot ? spotName(spot) : 'A spot'}: ${windows.map(({ pathName }) => pathName).join(', ')}`,
    place: [spot ? spotName(spot) : '', site].filter(Boolean).join(', '),
    position: spot?.position ?? null,
    notes: lines.filter((line) => typeof line === 'string' && line !== '').join('\n'),
    alarm: {
      minutesBefore: way ? Math.ceil((from - way.leave) / 60_000) + leavingAlarm : firstAlarm,
      text: leave ?? `${spot ? spotName(spot) : 'A spot'} from ${clock(from)}`,
    },
  };
}

/** One window: path and time, the picture in its middle, lens and settings. */
function windowLines(
  { pathName, from, to, reading, lens, settings }: TakenAlong,
  clock: (instant: number) => string,
  format: Formats,
): string[] {
  const lines = [`${pathName}, ${clock(from)}–${clock(to)}`];
  if (reading) lines.push(`In the middle: ${readingWords(reading, format)}.`);
  if (lens) lines.push(`Lens: ${takeWords(lens)}.`);
  if (settings) {
    const { aperture, shutter, iso } = settings;
    lines.push(
      `Start with ${apertureWords(aperture)}, ${shutterWords(shutter)}, ${isoWords(iso)}; look at the first pictures and correct.`,
    );
  }
  return lines;
}
