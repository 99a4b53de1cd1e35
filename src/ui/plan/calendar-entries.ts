import type { CalendarEntry } from '../../exports/calendar';
import type { TakenAlong } from '../../figures/plan/taken-along';
import { basicInstant } from '../../time/local-time';
import type { Formats } from '../formats';
import { readingWords } from '../words/row-words';
import { spotName } from './plan-words';

/** Stands in every entry: what is taken along must carry it too. */
const caution =
  'Stay on public or permitted ground; the airfield’s and the police’s word goes before this plan. Never look at or near the sun through a lens. Not for navigation.';

/** The chosen windows as entries of a calendar. `site`: the airfield's name. */
export function calendarEntries(
  taken: readonly TakenAlong[],
  site: string,
  format: Formats,
): CalendarEntry[] {
  return taken.map(({ chosen, from, to, spot, pathName, reading }) => {
    const access = spot?.access;
    const lines = [
      reading && `In the middle: ${readingWords(reading, format)}.`,
      spot === null && 'The spot is not in the survey any more.',
      (access?.status === 'ask' || access?.status === 'unknown') &&
        'Check first whether one may stand there.',
      access?.contact && `Contact: ${access.contact}`,
      access?.hours && `Hours: ${access.hours}`,
      access?.parking && `Parking: ${access.parking}`,
      caution,
    ];
    return {
      // The window's own place in the survey: the same in every file, so that a calendar replaces what it has.
      uid: `${chosen.spot}.${chosen.path}.${basicInstant(from)}@sunside`,
      from,
      to,
      title: `${spot ? spotName(spot) : 'A spot'}: ${pathName}`,
      place: [spot ? spotName(spot) : '', site].filter(Boolean).join(', '),
      position: spot?.position ?? null,
      notes: lines.filter((line) => typeof line === 'string' && line !== '').join('\n'),
    };
  });
}
