import type { MergeQuestion, MergeUnderWay } from '../../ports/merging';
import { isObject, type Json } from '../../survey/json';
import { decimal } from '../../units/format';
import { shortened } from '../../units/plain-text';
import type { Formats } from '../formats';
import { featureTitle } from '../words/titles';

/** Members whose name alone says too little, as the sheets call them. */
const memberNames: Readonly<Record<string, string>> = {
  geometry: 'place',
  icao: 'ICAO code',
  timeZone: 'time zone',
  ends: 'end',
  underside: 'open below',
  base: 'foot above sea level',
  ground: 'height of the ground',
  displaced: 'displaced threshold',
  glide: 'glide angle',
  sight: 'what it hides',
  checkedOn: 'checked on',
};
/** Members that are lengths in metres. */
const lengths = new Set(
  ['eyeHeight', 'ground', 'elevation', 'displaced', 'crossingHeight', 'width', 'height', 'base'].concat(
    'underside',
  ),
);
/** Levels of the file that say nothing to a person. */
const silent = new Set(['properties', 'sunside']);

const tokensOf = (pointer: string): readonly string[] =>
  pointer
    .split('/')
    .slice(1)
    .map((token) => token.replaceAll('~1', '/').replaceAll('~0', '~'));

const mostName = 60;
const spaced = (token: string): string =>
  memberNames[token] ??
  shortened(
    token.replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
    mostName,
  );

/** "eye height", "end 2, elevation"; "" for the whole feature. */
export function memberWords(pointer: string): string {
  const words: string[] = [];
  for (const token of tokensOf(pointer)) {
    if (silent.has(token)) continue;
    if (!/^\d+$/.test(token)) words.push(spaced(token));
    else words.push(`${words.pop() ?? 'entry'} ${Number(token) + 1}`);
  }
  return words.join(', ');
}

/** "Mill Lane lay-by", "The survey". */
export const thingWords = ({ mine, theirs }: Pick<MergeUnderWay, 'mine' | 'theirs'>, id: string | null) => {
  if (id === null) return 'The survey';
  return featureTitle(mine.features.some((feature) => feature.id === id) ? mine : theirs, id);
};

const mostText = 240;

/** What one side says, in words. */
export function valueWords(value: Json | undefined, pointer: string, format: Formats): string {
  if (value === undefined) return pointer === '' ? 'deleted' : 'not there';
  if (pointer === '') return 'kept, and changed';
  const member = tokensOf(pointer).at(-1) ?? '';
  if (pointer === '/geometry') return placeWords(value, format);
  if (typeof value === 'number') return lengths.has(member) ? format.fine(value) : decimal(value, 3);
  return shortened(plain(value), mostText);
}

function plain(value: Json): string {
  if (value === null || value === '') return 'not stated';
  if (typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return String(value);
  if (Array.isArray(value))
    return value.length === 0 ? 'none' : (value as readonly Json[]).map(plain).join('; ');
  return Object.entries(value)
    .map(([key, member]) => `${spaced(key)} ${plain(member)}`)
    .join(', ');
}

function placeWords(geometry: Json, format: Formats): string {
  if (!isObject(geometry)) return 'nowhere';
  const { type, coordinates } = geometry;
  if (type === 'Point' && Array.isArray(coordinates)) {
    const [lng, lat] = coordinates as readonly Json[];
    if (typeof lng === 'number' && typeof lat === 'number') return format.coordinates([lng, lat]);
  }
  const corners = Array.isArray(coordinates) ? (coordinates as readonly Json[]).flat(1).length : 0;
  return type === 'Polygon' ? `an area of ${corners} corners` : 'as drawn on the map';
}

/** What stands over a question: "Mill Lane lay-by: eye height". */
export function questionWords(
  under: Pick<MergeUnderWay, 'mine' | 'theirs'>,
  { id, pointer, apart }: Pick<MergeQuestion, 'id' | 'pointer' | 'apart'>,
  format: Formats,
): string {
  const member = memberWords(pointer);
  const away = apart === null ? '' : `, ${format.fine(apart)} apart`;
  return member === '' ? thingWords(under, id) : `${thingWords(under, id)}: ${member}${away}`;
}

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

/** "2 questions, 1 of them open. 3 things are new, ..." */
export function summaryWords(under: MergeUnderWay): string {
  const { questions, open, added, deleted, changed, same, beside, anything } = under;
  const asked = questions.length + beside.size;
  const words = [
    asked === 0
      ? 'Nothing is said differently.'
      : `${count(asked, 'difference', 'differences')}, ${open === 0 ? 'all decided' : `${open} still to decide`}.`,
    added.length > 0 ? `${count(added.length, 'thing is', 'things are')} new.` : '',
    deleted.length > 0 ? `${count(deleted.length, 'thing goes', 'things go')}: they deleted it.` : '',
    changed.length > 0 ? `${count(changed.length, 'thing gains', 'things gain')} what only they say.` : '',
    same > 0
      ? `${count(same, 'thing was', 'things were')} drawn by both and ${same === 1 ? 'is' : 'are'} one.`
      : '',
  ];
  if (!anything && asked === 0) return 'Both say the same: nothing would change.';
  return words.filter(Boolean).join(' ');
}

/** "Mill Lane lay-by: notes, eye height". */
export const changeWords = (
  under: Pick<MergeUnderWay, 'mine' | 'theirs'>,
  { id, pointers }: { readonly id: string | null; readonly pointers: readonly string[] },
): string => `${thingWords(under, id)}: ${[...new Set(pointers.map(memberWords))].join('; ')}`;
