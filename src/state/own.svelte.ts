import * as v from 'valibot';
import type { KeptText } from '../storage/kept-text';
import { readFields, type Read } from '../survey/fields';

const text = v.nullish(v.string(), '');
const list = v.nullish(v.array(v.string()), []);

/** Who photographs: for letters and papers of the day. `items`: what is always taken along. `known`: key of an aircraft whose size they know. `minutes`: from home to the field. */
const detailFields = {
  name: text,
  phone: text,
  vehicle: text,
  home: text,
  minutes: v.nullish(v.pipe(v.number(), v.minValue(0), v.maxValue(1440)), null),
  items: list,
  known: text,
};
export type OwnDetails = Readonly<Read<typeof detailFields>>;

const tickFields = {
  visits: v.nullish(v.array(v.object({ visit: v.string(), ticked: v.array(v.string()) })), []),
};
type Visits = Read<typeof tickFields>['visits'];

/** Visits whose ticks are kept, and whose letters are. */
const visitsKept = 20;

/** A letter that the user changed, and the ids of the spots that it asks for. */
export interface Draft {
  readonly body: string;
  readonly spots: ReadonlySet<string>;
}

/** The user's own details and ticks: on this device only, never in a survey. */
export class Own {
  #details = $state.raw<OwnDetails>() as OwnDetails;
  #visits = $state.raw<Visits>() as Visits;
  /** While the page is open: they name the user, and where they will be. */
  #drafts: readonly (readonly [visit: string, draft: Draft])[] = [];
  readonly #stores: { readonly details: KeptText; readonly ticks: KeptText };

  constructor(stores: { readonly details: KeptText; readonly ticks: KeptText }) {
    this.#stores = stores;
    this.#details = readFields(detailFields, parsed(stores.details.read()), 'own', silent);
    this.#visits = readFields(tickFields, parsed(stores.ticks.read()), 'ticks', silent).visits;
  }

  get details(): OwnDetails {
    return this.#details;
  }

  set(patch: Partial<OwnDetails>): void {
    this.#details = { ...this.#details, ...patch };
    this.#stores.details.write(JSON.stringify(this.#details));
  }

  /** The letter that was last changed for a visit, named as for its ticks; null for none. */
  draft(visit: string): Draft | null {
    return this.#drafts.find(([of]) => of === visit)?.[1] ?? null;
  }

  /** Null forgets it. */
  keepDraft(visit: string, draft: Draft | null): void {
    const others = this.#drafts.filter(([of]) => of !== visit);
    this.#drafts = (draft ? [...others, [visit, draft] as const] : others).slice(-visitsKept);
  }

  /** What is ticked for a visit. `visit`: a survey and a date, in words of the caller's. */
  ticked(visit: string): readonly string[] {
    return this.#visits?.find((v) => v.visit === visit)?.ticked ?? [];
  }

  tick(visit: string, item: string, on: boolean): void {
    const others = this.ticked(visit).filter((other) => other !== item);
    const ticked = on ? [...others, item] : others;
    const rest = (this.#visits ?? []).filter((v) => v.visit !== visit);
    this.#visits = [{ visit, ticked }, ...rest].slice(0, visitsKept);
    this.#stores.ticks.write(JSON.stringify({ visits: this.#visits }));
  }
}

const silent = () => undefined;

/** What was kept; what is damaged counts as nothing. */
function parsed(kept: string | null): unknown {
  try {
    return kept === null ? undefined : (JSON.parse(kept) as unknown);
  } catch {
    return undefined;
  }
}
