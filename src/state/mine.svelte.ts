import type { KeptText } from '../storage/kept-text';
import type { Survey } from '../survey/document';
import { setCurrent } from '../survey/edits/set-members';
import { isObject, type Json, type JsonObject } from '../survey/json';
import { kitInUse, readSubjects } from '../survey/read-kit';

/** What belongs to the user and not to one field. */
interface Own {
  readonly kit: JsonObject | null;
  readonly subjects: readonly Json[] | null;
  /** Keys of the subject and body that were chosen last. */
  readonly current: JsonObject;
}

const nothing: Own = { kit: null, subjects: null, current: {} };
/** A drag changes neither: the same object needs no look inside. */
const same = (a: unknown, b: unknown) => a === b || JSON.stringify(a) === JSON.stringify(b);
const silent = () => undefined;

/**
 * The user's kit, subjects and last choice, kept on the device: every new survey starts with them. They follow what is
 * edited in a survey that has them already, and the first that is edited anywhere; a survey that brings its own keeps it,
 * and what is edited there stays there until the user takes it as theirs.
 */
export class Mine {
  #own = $state.raw<Own>(nothing);
  #last: { readonly id: string; readonly survey: Survey } | null = null;
  readonly #store: KeptText;

  constructor(store: KeptText) {
    this.#store = store;
    this.#own = parsed(store.read());
  }

  /** Null until a kit was edited on this device. */
  get kit(): JsonObject | null {
    return this.#own.kit;
  }

  /** Whether a survey has another kit than the user's; false while there is none. */
  differsFrom({ sunside }: Survey): boolean {
    return this.#own.kit !== null && !same(sunside['kit'], this.#own.kit);
  }

  /** A new survey with what is the user's; what it says itself stays. */
  startWith(survey: Survey): Survey {
    const { kit, subjects, current } = this.#own;
    const given = survey.sunside;
    const added = {
      ...(kit && given['kit'] === undefined ? { kit } : {}),
      ...(subjects && given['subjects'] === undefined ? { subjects } : {}),
    };
    const equipped =
      Object.keys(added).length === 0 ? survey : { ...survey, sunside: { ...given, ...added } };
    const chosen = namedIn(equipped, current);
    return given['current'] !== undefined || Object.keys(chosen).length === 0
      ? equipped
      : setCurrent(equipped, chosen);
  }

  /** The open survey as it is now, told after every change and opening. */
  follow(id: string, survey: Survey): void {
    const before = this.#last?.id === id ? this.#last.survey : null;
    this.#last = { id, survey };
    if (!before || before === survey) return;
    const [was, is] = [before.sunside, survey.sunside];
    const own = this.#own;
    const kit = followed(was['kit'], is['kit'], own.kit);
    const subjects = followed(was['subjects'], is['subjects'], own.subjects);
    const current = same(was['current'], is['current']) ? own.current : choiceIn(is['current']);
    this.#keep({
      kit: isObject(kit) ? kit : null,
      subjects: Array.isArray(subjects) ? (subjects as readonly Json[]) : null,
      current,
    });
  }

  /** Makes the kit of a survey the user's. */
  take({ sunside }: Survey): void {
    const kit = sunside['kit'];
    this.#keep({ ...this.#own, kit: isObject(kit) ? kit : null });
  }

  #keep(own: Own): void {
    if (same(own, this.#own)) return;
    this.#own = own;
    this.#store.write(JSON.stringify(own));
  }
}

/** What was the user's before an edit is so after it; so is what nobody had yet. */
function followed(was: Json | undefined, is: Json | undefined, own: Json | null): Json | null {
  if (same(was, is)) return own;
  return own === null || same(was, own) ? (is ?? null) : own;
}

function choiceIn(current: Json | undefined): JsonObject {
  if (!isObject(current)) return {};
  const members = ['subject', 'body'] as const;
  return Object.fromEntries(
    members.flatMap((name) => (typeof current[name] === 'string' ? [[name, current[name]] as const] : [])),
  );
}

/** The keys of a choice that name something in a survey. */
function namedIn({ sunside }: Survey, current: JsonObject): { subject?: string; body?: string } {
  const { subject, body } = current;
  const subjects = readSubjects(sunside['subjects'], silent, silent);
  const { bodies } = kitInUse(sunside).kit;
  const has = (list: readonly { readonly key: string }[], key: Json | undefined): key is string =>
    list.some((entry) => entry.key === key);
  return { ...(has(subjects, subject) ? { subject } : {}), ...(has(bodies, body) ? { body } : {}) };
}

/** What was kept; what is damaged, or of another program, counts as nothing. */
function parsed(text: string | null): Own {
  try {
    const kept = JSON.parse(text ?? 'null') as Json;
    if (!isObject(kept)) return nothing;
    const { kit, subjects, current } = kept;
    return {
      kit: isObject(kit) ? kit : null,
      subjects: Array.isArray(subjects) ? (subjects as readonly Json[]) : null,
      current: choiceIn(current),
    };
  } catch {
    return nothing;
  }
}
