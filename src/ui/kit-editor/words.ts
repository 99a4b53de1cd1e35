import type { ListEntries, ListName } from '../../survey/kit-lists';
import { lensName } from '../../survey/lens-name';
import type { Body, Lens } from '../../survey/schema/kit';
import type { Subject } from '../../survey/schema/subject';
import { decimal } from '../../units/format';
import { typedNumber } from '../../units/number';
import type { Formats } from '../formats';

/** How a list and one of its entries are called. */
export const listWords: Readonly<Record<ListName, { readonly one: string; readonly many: string }>> = {
  bodies: { one: 'body', many: 'bodies' },
  lenses: { one: 'lens', many: 'lenses' },
  subjects: { one: 'subject', many: 'subjects' },
};

/** "1 lens", "3 lenses". */
export const countWords = (count: number, list: ListName): string =>
  `${decimal(count, 0)} ${count === 1 ? listWords[list].one : listWords[list].many}`;

/** What an entry is called: without a name a lens by its figures, anything else by its key. */
export const entryTitle = (entry: ListEntries[ListName]): string =>
  'shortest' in entry ? lensName(entry) : entry.name?.trim() || entry.key;

/** One line about an entry, under its name. */
export function entrySummary<L extends ListName>(list: L, entry: ListEntries[L], format: Formats): string {
  return summaries[list](entry as never, format);
}

const exact = (value: number) => typedNumber(value, 2);

const summaries = {
  bodies: ({ sensorWidth, sensorHeight, pixelsWide, pixelsHigh }: Body) =>
    `${exact(sensorWidth)} × ${exact(sensorHeight)} mm, ${decimal(pixelsWide, 0)} × ${decimal(pixelsHigh, 0)} px`,
  lenses: ({ shortest, longest, widestAperture, widestApertureLong, extenders }: Lens) => {
    const range = shortest === longest ? exact(longest) : `${exact(shortest)}–${exact(longest)}`;
    const more = extenders?.length ? `, extenders ${extenders.map((x) => `${exact(x)}×`).join(' and ')}` : '';
    const closing =
      widestApertureLong && widestApertureLong !== widestAperture ? `–${exact(widestApertureLong)}` : '';
    return `${range} mm, f/${exact(widestAperture)}${closing}${more}`;
  },
  subjects: ({ length, span, height, approachSpeed }: Subject, format: Formats) =>
    `${format.fine(length)} long, ${format.fine(span)} span, ${format.fine(height)} high; approach ${format.speed(approachSpeed)}`,
};
