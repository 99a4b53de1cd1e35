import * as v from 'valibot';
import type { KeptText } from '../storage/kept-text';
import { readFields, type Read } from '../survey/fields';

const fields = {
  day: v.nullish(v.string(), null),
  spot: v.nullish(v.string(), null),
  turns: v.nullish(v.pipe(v.number(), v.integer(), v.minValue(0)), 0),
  watching: v.nullish(v.boolean(), false),
};

/**
 * How somebody stands in the view of the day at the field. `spot`: id of the one chosen by hand. `turns`: how often the
 * traffic was turned round by hand. `watching`: it goes by the device, wherever that is; no position is ever kept.
 */
export type FieldVisit = Pick<Read<typeof fields>, 'spot' | 'turns' | 'watching'>;

/**
 * At the fence a phone throws the page away whenever the camera wants its memory: the view that was open there comes
 * back as it was, on that day, until somebody leaves it.
 */
export class FieldVisits {
  readonly #kept: KeptText;

  constructor(kept: KeptText) {
    this.#kept = kept;
  }

  /** The visit under way on a day, named by `visitDay`; null for none. What is damaged counts as none. */
  on(day: string): FieldVisit | null {
    const { day: keptDay, ...visit } = readFields(
      fields,
      parsed(this.#kept.read()),
      'visit',
      () => undefined,
    );
    return keptDay === day ? visit : null;
  }

  keep(day: string, { spot, turns, watching }: FieldVisit): void {
    this.#kept.write(JSON.stringify({ day, spot, turns, watching }));
  }

  leave(): void {
    this.#kept.write('{}');
  }
}

function parsed(kept: string | null): unknown {
  try {
    return kept === null ? undefined : (JSON.parse(kept) as unknown);
  } catch {
    return undefined;
  }
}
