import type { ListName } from '../../survey/kit-lists';
import { kitMembers } from '../../survey/kit-members';
import { parseApertures, parseFocalLengths } from '../../units/lens-figures';
import { typedNumber } from '../../units/number';
import type { Formats } from '../formats';
import { fieldText, readField, type FormMeasure } from './fields';

/** A field of a form: one member of an entry, or two that are engraved as one ("100-400", "4.5-5.6"). */
export interface FormField {
  readonly member: string;
  readonly name: string;
  readonly measure: FormMeasure;
  readonly needed: boolean;
}

/** The members that the other end of a pair stands in. */
const otherEnd = { 'focal-lengths': 'longest', apertures: 'widestApertureLong' } as const;
const isPair = (measure: FormField['measure']): measure is keyof typeof otherEnd => measure in otherEnd;

const pairs: Readonly<Record<string, FormField>> = {
  shortest: { member: 'shortest', name: 'Focal length', measure: 'focal-lengths', needed: true },
  widestAperture: { member: 'widestAperture', name: 'Widest aperture', measure: 'apertures', needed: true },
};
const seconds: readonly string[] = Object.values(otherEnd);

/** The fields of each list's form, in order. */
export const formFields = (list: ListName): readonly FormField[] =>
  list === 'lenses'
    ? kitMembers.lenses.filter(({ member }) => !seconds.includes(member)).map((m) => pairs[m.member] ?? m)
    : kitMembers[list];

/** The field in which a member is typed. */
export const fieldOf = (list: ListName, member: string): FormField | undefined =>
  formFields(list).find((field) => membersOf(field).includes(member));

/** The members that a field says. */
export const membersOf = ({ member, measure }: FormField): readonly string[] =>
  isPair(measure) ? [member, otherEnd[measure]] : [member];

type Values = Readonly<Record<string, unknown>>;

/** What stands in a field for an entry. */
export function textIn(field: FormField, values: Values, format: Formats): string {
  const { member, measure } = field;
  if (!isPair(measure)) return fieldText(measure, values[member], format);
  const numbers = membersOf(field).map((name) => values[name]);
  const [one, other] = numbers.map((n) => (typeof n === 'number' ? typedNumber(n, 4) : ''));
  return !other || other === one ? (one ?? '') : `${one}-${other}`;
}

export type FieldValues =
  { readonly ok: true; readonly values: Values } | { readonly ok: false; readonly reason: string };

/** What was typed into a field, by member. */
export function readIn(field: FormField, text: string, format: Formats): FieldValues {
  const { member, measure } = field;
  if (!isPair(measure)) {
    const reading = readField(measure, text, format);
    return reading.ok ? { ok: true, values: { [member]: reading.value } } : reading;
  }
  if (text === '') return { ok: true, values: { [member]: null } };
  if (measure === 'focal-lengths') {
    const read = parseFocalLengths(text);
    if (read) return { ok: true, values: { shortest: read.shortest, longest: read.longest } };
    return { ok: false, reason: `"${text}" cannot be read. Type one number or two, such as 500 or 100-400.` };
  }
  const read = parseApertures(text);
  if (read) return { ok: true, values: { widestAperture: read.widest, widestApertureLong: read.long } };
  return { ok: false, reason: `"${text}" cannot be read. Type one number or two, such as 4 or 4.5-5.6.` };
}
