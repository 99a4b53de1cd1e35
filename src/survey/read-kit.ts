import { readFields } from './fields';
import { isObject, shown, type Json, type JsonObject } from './json';
import { readEntry, type ListEntries, type ListName } from './kit-lists';
import { kitFields, type Kit } from './schema/kit';
import type { Subject } from './schema/subject';
import { starterKit } from './starter/kit';
import { starterSubjects } from './starter/subjects';

type Say = (reason: string) => void;

/** What stands in where a survey has no list of its own. */
export const starterLists: { readonly [L in ListName]: readonly ListEntries[L][] } = {
  bodies: starterKit.bodies,
  lenses: starterKit.lenses,
  subjects: starterSubjects,
};

/** More entries than anyone chooses from. */
const mostEntries = 500;

/**
 * Reads a list whose entries make sense only as a whole. An entry that does not fit is set aside with its path;
 * where nothing is left, the starter's list stands in.
 */
function readList<L extends ListName>(
  list: L,
  value: unknown,
  path: string,
  doubt: Say,
  aside: Say,
): readonly ListEntries[L][] {
  const starter: readonly ListEntries[L][] = starterLists[list];
  if (value === undefined || value === null) return starter;
  if (!Array.isArray(value)) {
    doubt(`${path}: expected a list, got ${shown(value)}; the starter list is used instead`);
    return starter;
  }
  if (value.length === 0) doubt(`${path}: the list is empty; the starter list is used instead`);
  const seen = new Set<string>();
  const read: ListEntries[L][] = [];
  if (value.length > mostEntries)
    aside(`${path}: ${value.length} entries; the first ${mostEntries} are read`);
  for (const [i, given] of (value as unknown[]).slice(0, mostEntries).entries()) {
    const reading = readEntry(list, given);
    if (!reading.ok) {
      const [misfit] = reading.misfits;
      const at = [path, i, misfit?.member ?? ''].filter((s) => s !== '').join('.');
      aside(`${at}: expected ${misfit?.expected ?? 'something else'}, got ${shown(misfit?.got)}`);
      continue;
    }
    const { key } = reading.entry;
    if (seen.has(key)) aside(`${path}.${i}.key: "${key}" is there already; the first one is used`);
    else {
      read.push(reading.entry);
      for (const { member, expected, got, used, of } of reading.standIns)
        doubt(
          `${path}.${i}.${member}: expected ${expected}, got ${shown(got)}; ${used} is used instead, as of the ${of}, which is nearest in size`,
        );
    }
    seen.add(key);
  }
  return read.length > 0 ? read : starter;
}

export function readKit(value: unknown, doubt: Say, aside: Say): Kit {
  if (value === undefined || value === null) return starterKit;
  const source = isObject(value) ? value : {};
  const { fill } = readFields(kitFields, value, 'sunside.kit', doubt);
  const bodies = readList('bodies', source['bodies'], 'sunside.kit.bodies', doubt, aside);
  const lenses = readList('lenses', source['lenses'], 'sunside.kit.lenses', doubt, aside);
  return { fill, bodies, lenses };
}

export function readSubjects(value: unknown, doubt: Say, aside: Say): readonly Subject[] {
  return readList('subjects', value, 'sunside.subjects', doubt, aside);
}

const silent = () => undefined;

/** A kit of the survey, read for a list of kits. */
export interface NamedKit {
  /** "" for a kit that has no name. */
  readonly name: string;
  readonly kit: Kit;
}

const named = (value: JsonObject): NamedKit => ({
  name: typeof value['name'] === 'string' ? value['name'] : '',
  kit: readKit(value, silent, silent),
});

/** The kit in use with its name. */
export function kitInUse(sunside: JsonObject): NamedKit {
  const kit = sunside['kit'];
  return isObject(kit) ? named(kit) : { name: '', kit: starterKit };
}

/**
 * The kits that stand by, each with its place in `sunside.kits`, whose entries are kits like `sunside.kit`. What
 * is no object there is passed over.
 */
export function otherKits(sunside: JsonObject): readonly (NamedKit & { readonly index: number })[] {
  const given = sunside['kits'];
  const list: readonly Json[] = Array.isArray(given) ? (given as readonly Json[]) : [];
  return list.flatMap((kit, index) => (isObject(kit) ? [{ ...named(kit), index }] : []));
}
