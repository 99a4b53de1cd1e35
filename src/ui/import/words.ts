import type { AltitudeMeaning, ImportGroup, ImportPreview } from '../../ports/imports';
import type { Formats } from '../formats';

const count = (n: number) => n.toLocaleString('en');

/** How many features would be added or changed. */
export const comingIn = (groups: readonly ImportGroup[], ticked: readonly string[]): number =>
  groups
    .filter(({ name }) => ticked.includes(name))
    .reduce((sum, { fresh, changed }) => sum + fresh + changed, 0);

export const readingWords = (share: number): string =>
  share >= 1 ? 'Looking through what was read …' : `Reading … ${Math.floor(share * 100)} %`;

export const takeWords = (coming: number): string =>
  coming === 1 ? 'Bring one thing in' : `Bring ${count(coming)} things in`;

/** What the files hold, in a sentence. */
export function summaryWords({ groups, elsewhere }: ImportPreview, refused: readonly string[]): string {
  const sum = (of: (group: ImportGroup) => number) => groups.reduce((n, group) => n + of(group), 0);
  const [fresh, changed, same] = [sum((g) => g.fresh), sum((g) => g.changed), sum((g) => g.same)];
  const parts = [
    fresh > 0 ? `${count(fresh)} new` : '',
    changed > 0 ? `${count(changed)} that the source says otherwise now` : '',
    same > 0 ? `${count(same)} already here, unchanged` : '',
  ].filter((part) => part !== '');
  if (parts.length === 0)
    return elsewhere || refused.length > 0 ? '' : 'There is nothing here that a survey could use.';
  const kept = changed > 0 ? ' What you have edited stays as you have it.' : '';
  return `Nothing is changed yet. In reach of this survey: ${parts.join(', ')}.${kept}`;
}

export const groupTitle = ({ name }: ImportGroup): string =>
  `${name.slice(0, 1).toUpperCase()}${name.slice(1)}`;

/** "24 new, 3 updated, 12 already here; 20 of assumed height; Hangar 1, Terminal". */
export function groupWords({ fresh, changed, same, assumed, names }: ImportGroup): string {
  const counts = [
    fresh > 0 ? `${count(fresh)} new` : '',
    changed > 0 ? `${count(changed)} updated` : '',
    same > 0 ? `${count(same)} already here` : '',
  ];
  return [
    counts.filter((part) => part !== '').join(', '),
    assumed > 0 ? `${count(assumed)} of assumed height` : '',
    names.join(', '),
  ]
    .filter((part) => part !== '')
    .join('; ');
}

export const altitudeMeanings: readonly (readonly [AltitudeMeaning, string])[] = [
  ['sea-level', 'Mean sea level'],
  ['pressure', 'Pressure altitude, 1013.25 hPa'],
  ['ellipsoid', 'The ellipsoid, as raw GPS has it'],
];

/** Far: kilometres are enough. */
export const distanceWords = (m: number): string => `${count(Math.max(1, Math.round(m / 1000)))} km`;

export const airfieldWords = (
  { ident, name, away }: ImportPreview['asks']['airfields'][number],
  format: Formats,
): string =>
  [ident, away === null || name.endsWith(' away') ? name : `${name}, ${format.length(away)} away`]
    .filter((part) => part.trim() !== '')
    .join(', ');
