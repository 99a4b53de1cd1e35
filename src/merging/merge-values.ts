import { isObject, type Json, type JsonObject } from '../survey/json';
import { entriesByKey } from './list-keys';
import { pointerTo, type Question, type Take } from './questions';
import { sameJson } from './same-json';

/** Asks, and says which side's value stands: mine as long as nobody has answered. */
export type Ask = (question: Omit<Question, 'id'>) => Take;

/** What three states of one surveys' place hold; `undefined` is absent, and so is a base that nobody knows. */
export interface Three {
  readonly base: Json | undefined;
  readonly mine: Json | undefined;
  readonly theirs: Json | undefined;
}

/** What is never taken apart: half of one line and half of another is a line that nobody drew. */
const whole = (pointer: string) => pointer === '/geometry';
/** Lists of a fixed length in which the place says which entry it is: the two ends of a runway. */
const placed = (pointer: string) => pointer === '/properties/ends';

/**
 * One value out of three, member by member: what one side changed wins, what both changed alike is kept, what both
 * changed differently is asked. Without a base whatever only one side has is kept. Returns undefined for "not there".
 */
export function mergeValues({ base, mine, theirs }: Three, pointer: string, ask: Ask): Json | undefined {
  if (sameJson(mine, theirs)) return mine;
  if (base !== undefined) {
    if (sameJson(mine, base)) return theirs;
    if (sameJson(theirs, base)) return mine;
  } else if (mine === undefined) return theirs;
  else if (theirs === undefined) return mine;
  if (!whole(pointer)) {
    if (isObject(mine) && isObject(theirs))
      return mergeMembers(isObject(base) ? base : undefined, mine, theirs, pointer, ask);
    const lists = mergeLists({ base, mine, theirs }, pointer, ask);
    if (lists !== null) return lists;
  }
  return ask({ pointer, base, mine, theirs }) === 'mine' ? mine : theirs;
}

/** Members in my order, then what only they have. `skip`: members that are none of this merge's business. */
export function mergeMembers(
  base: JsonObject | undefined,
  mine: JsonObject,
  theirs: JsonObject,
  pointer: string,
  ask: Ask,
  skip: readonly string[] = [],
): JsonObject {
  const own = (object: JsonObject | undefined, key: string) =>
    object && Object.hasOwn(object, key) ? object[key] : undefined;
  const keys = new Set([...Object.keys(mine), ...Object.keys(theirs)].filter((key) => !skip.includes(key)));
  const members = [...keys].map((key) => {
    const three = { base: own(base, key), mine: own(mine, key), theirs: own(theirs, key) };
    return [key, mergeValues(three, pointerTo(pointer, key), ask)] as const;
  });
  return Object.fromEntries(members.filter((member): member is [string, Json] => member[1] !== undefined));
}

/** Two lists whose entries have keys, entry by entry; null where they have none. */
function mergeLists(three: Three, pointer: string, ask: Ask): Json | null {
  const { base, mine, theirs } = three;
  if (!Array.isArray(mine) || !Array.isArray(theirs)) return null;
  if (placed(pointer) && mine.length === theirs.length)
    return (mine as readonly Json[]).map((entry, i) => {
      const began = Array.isArray(base) && base.length === mine.length ? (base[i] as Json) : undefined;
      const merged = mergeValues(
        { base: began, mine: entry, theirs: theirs[i] as Json },
        pointerTo(pointer, i),
        ask,
      );
      return merged ?? entry;
    });
  const [b, m, t] = [base, mine, theirs].map((list) => entriesByKey(pointer, list as Json | undefined));
  if (!m || !t) return null;
  const began = b ?? new Map<string, Json>();
  const keys = inOrder(began, m, t, pointer, ask);
  const places = new Map([...m.keys(), ...t.keys()].map((key) => [key, placeOf(key, m, t)]));
  return keys.flatMap((key) => {
    const merged = mergeValues(
      { base: began.get(key), mine: m.get(key), theirs: t.get(key) },
      pointerTo(pointer, places.get(key) ?? 0),
      ask,
    );
    return merged === undefined ? [] : [merged];
  });
}

const placeOf = (key: string, mine: ReadonlyMap<string, Json>, theirs: ReadonlyMap<string, Json>) => {
  const at = [...mine.keys()].indexOf(key);
  return at >= 0 ? at : [...theirs.keys()].indexOf(key);
};

/** The keys of both lists: an order can mean something (preferences), so one that both changed is asked like a value. */
function inOrder(
  base: ReadonlyMap<string, Json>,
  mine: ReadonlyMap<string, Json>,
  theirs: ReadonlyMap<string, Json>,
  pointer: string,
  ask: Ask,
): readonly string[] {
  const common = (list: ReadonlyMap<string, Json>) =>
    [...list.keys()].filter((key) => mine.has(key) && theirs.has(key));
  const known = [...base.keys()].filter((key) => mine.has(key) && theirs.has(key));
  const [m, t] = [common(mine), common(theirs)];
  const began = known.length === m.length ? known : undefined;
  const merged = mergeOrders(began, m, t, (question) => ask({ ...question, pointer }));
  const [first, second] = merged === m ? [mine, theirs] : [theirs, mine];
  return [...first.keys(), ...[...second.keys()].filter((key) => !first.has(key))];
}

function mergeOrders(
  base: readonly string[] | undefined,
  mine: readonly string[],
  theirs: readonly string[],
  ask: (question: { base: Json | undefined; mine: Json; theirs: Json }) => Take,
): readonly string[] {
  if (sameJson(mine, theirs)) return mine;
  if (base && sameJson(mine, base)) return theirs;
  if (base && sameJson(theirs, base)) return mine;
  return ask({ base, mine, theirs }) === 'mine' ? mine : theirs;
}
