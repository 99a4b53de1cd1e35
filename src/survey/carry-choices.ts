import type { Survey } from './document';
import { isObject, type Json, type JsonObject } from './json';
import { kitInUse, readSubjects } from './read-kit';

/**
 * The survey `to`, with what is chosen in `now`: subject, body and lenses are chosen, not edited, so neither undo nor
 * redo changes the aircraft. What the step itself did to a choice goes with the step (a chosen subject was renamed,
 * say), unless it was chosen anew since. `left` is `current` as the step left it. A choice that names nothing in `to`
 * gives way to what was chosen there.
 */
export function carryChoices(to: Survey, now: Survey, left: Json | undefined): Survey {
  const then = membersOf(to.sunside['current']);
  const asLeft = membersOf(left);
  const carried = Object.entries(membersOf(now.sunside['current'])).filter(
    ([name, key]) => !same(key, asLeft[name]) && !same(key, then[name]) && names(to, name, key),
  );
  const current = { ...then, ...Object.fromEntries(carried) };
  return carried.length === 0 ? to : { ...to, sunside: { ...to.sunside, current } };
}

const membersOf = (current: Json | undefined): JsonObject => (isObject(current) ? current : {});

const same = (a: Json | undefined, b: Json | undefined) => JSON.stringify(a) === JSON.stringify(b);

/** Whether every key that is chosen there stands in its list; of other members nothing is known. */
function names({ sunside }: Survey, name: string, chosen: Json): boolean {
  const keys = [chosen].flat();
  const all = (list: readonly { readonly key: string }[]) =>
    keys.every((k) => list.some(({ key }) => key === k));
  const { kit } = kitInUse(sunside);
  switch (name) {
    case 'subject':
      return all(readSubjects(sunside['subjects'], unsaid, unsaid));
    case 'body':
      return all(kit.bodies);
    case 'lenses':
      return all(kit.lenses);
    default:
      return true;
  }
}

/** Doubts about the lists are said where they are read for figures. */
const unsaid = () => undefined;
