import { dateAt, datePlus } from '../../time/local-time';
import { decimal } from '../../units/format';
import type { KeptList, KeptSurvey } from '../../ports/kept-surveys';
import type { Formats } from '../formats';

export const titleOf = ({ name }: Pick<KeptSurvey, 'name'>): string => name || 'Unnamed survey';

/** "today 18:30", "yesterday 07:05", "21 Jun 2026"; instants in ms since 1970. */
export function changedWords(changed: number, now: number, zone: string, format: Formats): string {
  const day = dateAt(changed, zone);
  const today = dateAt(now, zone);
  if (day === today) return `today ${format.clockAt(changed, zone)}`;
  if (day === datePlus(today, -1)) return `yesterday ${format.clockAt(changed, zone)}`;
  return format.date(day);
}

/** "ZZ01 · planned for 21 Jun 2026 · 5 standing spots". */
export function factsWords(facts: KeptSurvey['facts'], format: Formats): string {
  if (!facts) return '';
  const { place, date, spots } = facts;
  const count = spots === 1 ? '1 standing spot' : `${spots === 0 ? 'no' : spots} standing spots`;
  return [place, date === null ? '' : `planned for ${format.date(date)}`, count].filter(Boolean).join(' · ');
}

/** Bytes in kB, MB or GB of a thousand each, as systems show them to people: "340 kB", "1.2 GB". */
export function bytesWords(bytes: number): string {
  if (bytes < 999.5e3) return `${decimal(bytes / 1e3, 0)} kB`;
  if (bytes < 999.5e6) return `${decimal(bytes / 1e6, bytes < 9.95e6 ? 1 : 0)} MB`;
  return `${decimal(bytes / 1e9, bytes < 9.95e9 ? 1 : 0)} GB`;
}

const keepingWords: Readonly<Record<KeptList['keeping'], string>> = {
  kept: 'The browser has promised not to clear these surveys by itself. A file is still the safest copy.',
  'may-be-cleared': 'The browser may clear these surveys when space runs short: save files too.',
  unknown: 'This browser does not say whether it may clear these surveys: save files too.',
};

/** What the user should know of how safe the list is. */
export function safetyWords({ keeping, room }: Pick<KeptList, 'keeping' | 'room'>): string {
  const used = room ? ` ${bytesWords(room.used)} of about ${bytesWords(room.quota)} are in use.` : '';
  return `${keepingWords[keeping]}${used}`;
}
