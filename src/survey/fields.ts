import * as v from 'valibot';
import { beginning, isObject, shown } from './json';

type Fields = v.ObjectEntries;
export type Read<E extends Fields> = { [K in keyof E]: v.InferOutput<E[K]> };

/**
 * Reads the fields of one object, each by its own schema. A field that does not fit takes the schema's
 * documented default and the doubt is reported with its path ("ends.0.glide: ..."); it never spoils its
 * neighbours. The object itself is left alone, so what stands in the file survives a round trip.
 */
export function readFields<E extends Fields>(
  entries: E,
  value: unknown,
  path: string,
  doubt: (reason: string) => void,
): Read<E> {
  const source = isObject(value) ? value : {};
  if (value !== undefined && !isObject(value))
    doubt(`${path || 'properties'}: expected an object, got ${shown(value)}`);
  const out: Record<string, unknown> = {};
  for (const [key, schema] of Object.entries(entries)) {
    const given = Object.hasOwn(source, key) ? source[key] : undefined;
    // Most members of most features are not stated, and need not be.
    if (given === undefined && isOptional(schema)) {
      out[key] = v.getDefault(schema);
      continue;
    }
    const parsed = v.safeParse(schema, given);
    if (parsed.success) {
      out[key] = parsed.output;
      if (
        typeof given === 'string' &&
        typeof parsed.output === 'string' &&
        parsed.output.length < given.length
      )
        doubt(
          `${[path, key].filter(Boolean).join('.')}: ${given.length} characters; the first ${parsed.output.length} are used`,
        );
      continue;
    }
    const fallback: unknown = v.getDefault(schema);
    out[key] = fallback;
    const issue = parsed.issues[0];
    const at = [path, key, v.getDotPath(issue) ?? ''].filter(Boolean).join('.');
    doubt(`${at}: ${issue.message}, got ${shown(issue.input)}; ${insteadWords(fallback)}`);
  }
  return out as Read<E>;
}

/** Whether a field that is not there is what its schema says it stands for, with nothing done to it. */
const isOptional = (schema: Fields[string]): boolean => schema.type === 'nullish' && !('pipe' in schema);

/** What stands in for a value that does not fit, in words. */
function insteadWords(fallback: unknown): string {
  if (Array.isArray(fallback) && fallback.length === 0) return 'nothing of the list is used';
  return (fallback ?? '') === '' ? 'it is left out' : `${shown(fallback)} is used instead`;
}

const finite = (what: string) => v.pipe(v.number(`expected ${what}`), v.finite(`expected ${what}`));

/** A number within bounds (both included) that nothing stands in for. `unit`: as it is to be read behind the bounds, none if empty. */
export function boundedNumber(min: number, max: number, unit = '') {
  const words = `a number from ${min} to ${max}${unit && ` ${unit}`}`;
  return v.pipe(finite(words), v.minValue(min, `expected ${words}`), v.maxValue(max, `expected ${words}`));
}

/** The same with the default that stands in for it. */
export const numberField = <D extends number | null>(min: number, max: number, fallback: D) =>
  v.nullish(boundedNumber(min, max), fallback);

/** Characters of a name, and of what is told at length: a text of megabytes would stop the page that shows it. */
const longestName = 300;
const longestNotes = 20_000;

/** A text whose beginning is used when it is longer than people write. */
function boundedText<D extends string | null>(most: number, fallback: D) {
  const cut = (text: string) => (text.length > most ? beginning(text, most) : text);
  return v.nullish(v.pipe(v.string('expected text'), v.transform(cut)), fallback);
}

/** A name, or anything else of a line or two. */
export const textField = <D extends string | null>(fallback: D) => boundedText(longestName, fallback);

/** Notes, and what is told at length. */
export const notesField = <D extends string | null>(fallback: D) => boundedText(longestNotes, fallback);

export function choiceField<const O extends readonly string[], const D extends O[number] | null>(
  options: O,
  fallback: D,
) {
  return v.nullish(v.picklist(options, `expected one of ${options.join(', ')}`), fallback);
}

export function flagField<F extends boolean | null>(fallback: F) {
  return v.nullish(v.boolean('expected true or false'), fallback);
}

/** A list of numbers within bounds. */
export function numbersField(min: number, max: number) {
  const what = `expected numbers from ${min} to ${max}`;
  return v.nullish(
    v.array(
      v.pipe(finite(`numbers from ${min} to ${max}`), v.minValue(min, what), v.maxValue(max, what)),
      what,
    ),
    [],
  );
}
