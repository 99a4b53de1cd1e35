import * as v from 'valibot';
import { goings, reachOf, ridingMinutes, usualSpeed, type Going } from '../figures/plan/way-from';
import { detour } from '../figures/practice';
import type { KeptText } from '../storage/kept-text';
import type { Position } from '../survey/document';
import { readFields, type Read } from '../survey/fields';

const speed = v.nullish(v.pipe(v.number(), v.minValue(0.2), v.maxValue(100)), null);
const fields = {
  by: v.nullish(v.picklist(goings), 'bicycle'),
  foot: speed,
  bicycle: speed,
  car: speed,
  /** Movements an hour by id of a kept survey, as typed. */
  traffic: v.nullish(v.record(v.string(), v.pipe(v.number(), v.minValue(0), v.maxValue(1000))), {}),
  /** What it is called, longitude and latitude. */
  from: v.nullish(
    v.object({
      name: v.string(),
      at: v.tuple([
        v.pipe(v.number(), v.minValue(-180), v.maxValue(180)),
        v.pipe(v.number(), v.minValue(-90), v.maxValue(90)),
      ]),
    }),
    null,
  ),
};
type Kept = Read<typeof fields>;

/** Where one starts from and how one goes: on this device only, never in a survey. */
export class Ways {
  #kept = $state.raw<Kept>() as Kept;
  readonly #store: KeptText;

  constructor(store: KeptText) {
    this.#store = store;
    this.#kept = readFields(fields, parsed(store.read()), 'ways', () => undefined);
  }

  get by(): Going {
    return this.#kept.by;
  }
  set by(by: Going) {
    this.#keep({ by });
  }
  /** m/s. */
  get speed(): number {
    return this.#kept[this.by] ?? usualSpeed(this.by);
  }
  set speed(metresPerSecond: number | null) {
    this.#keep({ [this.by]: metresPerSecond });
  }
  get from(): { readonly name: string; readonly position: Position } | null {
    const { from } = this.#kept;
    return from && { name: from.name, position: from.at };
  }
  set from(from: { readonly name: string; readonly position: Position } | null) {
    this.#keep({ from: from && { name: from.name, at: [from.position[0], from.position[1]] } });
  }

  /** Movements an hour at a kept survey's field, null where none are typed. */
  trafficOf(survey: string): number | null {
    const { traffic } = this.#kept;
    return traffic && Object.hasOwn(traffic, survey) ? (traffic[survey] ?? null) : null;
  }
  setTraffic(survey: string, perHour: number | null): void {
    const others = Object.entries(this.#kept.traffic ?? {}).filter(([id]) => id !== survey);
    const all = perHour === null ? others : [...others, [survey, perHour] as const];
    this.#keep({ traffic: Object.fromEntries(all) });
  }

  /** Minutes for so many m of straight line; times by which the way is taken to be longer. */
  minutesFor(distance: number): number {
    return ridingMinutes(distance, this.speed);
  }
  readonly detour = detour;
  /** m of straight line that can be done in so many minutes. */
  reach(minutes: number): number {
    return reachOf(minutes, this.speed);
  }

  #keep(patch: Partial<Kept>): void {
    this.#kept = { ...this.#kept, ...patch };
    this.#store.write(JSON.stringify(this.#kept));
  }
}

/** What is damaged counts as nothing. */
function parsed(kept: string | null): unknown {
  try {
    return kept === null ? undefined : (JSON.parse(kept) as unknown);
  } catch {
    return undefined;
  }
}
