import * as v from 'valibot';
import { readFields, type Read } from './fields';
import { isObject, shown } from './json';
import { bodyFields, kitFields, lensFields, type Kit } from './schema/kit';
import { subjectFields, type Subject } from './schema/subject';
import { starterKit } from './starter/kit';
import { starterSubjects } from './starter/subjects';

type Say = (reason: string) => void;

/**
 * Reads a list whose entries make sense only as a whole: a camera without a sensor is no camera. An entry that
 * does not fit is set aside with its path; where nothing is left, the starter's list stands in.
 */
function readEntries<E extends v.ObjectEntries>(
  entries: E,
  value: unknown,
  path: string,
  starter: readonly Read<E>[],
  doubt: Say,
  aside: Say,
): readonly Read<E>[] {
  if (value === undefined || value === null) return starter;
  if (!Array.isArray(value)) {
    doubt(`${path}: expected a list, got ${shown(value)}; the starter list is used instead`);
    return starter;
  }
  const schema = v.object(entries);
  const seen = new Set<string>();
  const read: Read<E>[] = [];
  for (const [i, entry] of (value as unknown[]).entries()) {
    const parsed = v.safeParse(schema, entry);
    if (!parsed.success) {
      const issue = parsed.issues[0];
      aside(
        [path, i, v.getDotPath(issue) ?? ''].filter((s) => s !== '').join('.') +
          `: ${issue.message}, got ${shown(issue.input)}`,
      );
      continue;
    }
    const item = parsed.output as Read<E>;
    const key = String((item as { key: unknown }).key);
    if (seen.has(key)) aside(`${path}.${i}.key: "${key}" is there already; the first one is used`);
    else read.push(item);
    seen.add(key);
  }
  return read.length > 0 ? read : starter;
}

export function readKit(value: unknown, doubt: Say, aside: Say): Kit {
  if (value === undefined || value === null) return starterKit;
  const source = isObject(value) ? value : {};
  const { fill } = readFields(kitFields, value, 'sunside.kit', doubt);
  const bodies = readEntries(
    bodyFields,
    source['bodies'],
    'sunside.kit.bodies',
    starterKit.bodies,
    doubt,
    aside,
  );
  const lenses = readEntries(
    lensFields,
    source['lenses'],
    'sunside.kit.lenses',
    starterKit.lenses,
    doubt,
    aside,
  );
  const usable = lenses.filter((lens, i) => rangeInOrder(lens, i, aside));
  return { fill, bodies, lenses: usable.length > 0 ? usable : starterKit.lenses };
}

function rangeInOrder(lens: Kit['lenses'][number], i: number, aside: Say): boolean {
  if (lens.shortest <= lens.longest) return true;
  aside(`sunside.kit.lenses.${i}: shortest ${lens.shortest} mm is more than longest ${lens.longest} mm`);
  return false;
}

export function readSubjects(value: unknown, doubt: Say, aside: Say): readonly Subject[] {
  return readEntries(subjectFields, value, 'sunside.subjects', starterSubjects, doubt, aside);
}
