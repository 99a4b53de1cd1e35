import type { PreferenceValues } from '../../state/preferences.svelte';
import { readDate } from '../../time/typed-date';
import { monthNames } from '../../time/month-names';

/**
 * A typed date as "2026-06-21", null where it is none; one without a year is of the year of the date `near`. Months are
 * read in the language that dates are shown in, and in English, which the page itself speaks.
 */
export function readTypedDate(text: string, near: string, dates: PreferenceValues['dates']): string | null {
  const [own, english] = [monthNames(dates), monthNames('en-GB')];
  const months = own.map((names, i) => [...names, ...(english[i] ?? [])]);
  return readDate(text, { months, monthFirst: dates === 'en-US', year: Number(near.slice(0, 4)) });
}
