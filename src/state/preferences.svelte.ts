import * as v from 'valibot';
import type { KeptText } from '../storage/kept-text';
import { readFields, type Read } from '../survey/fields';

const choice = <const O extends readonly [string, ...string[]]>(...options: O) =>
  v.nullish(v.picklist(options), options[0]);

/** Each with its choices; the first is the default. */
const fields = {
  lengths: choice('m', 'ft'),
  speeds: choice('kt', 'm/s', 'km/h'),
  bearings: choice('three-digits', 'plain'),
  coordinates: choice('decimal', 'sexagesimal'),
  clock: choice('24h', '12h'),
  /** A language (BCP 47). The page's own, unless another is asked for: half a date in each would be read wrongly. */
  dates: choice('en-GB', 'en-US', 'de', 'es', 'fr', 'it', 'ja', 'nl', 'pl', 'pt', 'sv'),
  look: choice('system', 'day', 'night', 'contrast'),
  /** Whose light rings the map draws: of each spot's path to wait at, or of every path. */
  rings: choice('headline', 'every'),
  /** Whether keys without Control are short cuts on the whole page. */
  keys: choice('on', 'off'),
};
export type PreferenceValues = Readonly<Read<typeof fields>>;

/** How the user likes to read figures. Kept on the device, never in a survey. */
export class Preferences {
  #values = $state.raw<PreferenceValues>() as PreferenceValues;
  #kept = $state.raw(true);
  readonly #store: KeptText;

  constructor(store: KeptText) {
    this.#store = store;
    this.#values = readPreferences(store.read());
  }

  get values(): PreferenceValues {
    return this.#values;
  }
  /** False once the device has refused to keep them: they last until the page is left. */
  get kept(): boolean {
    return this.#kept;
  }

  set(patch: Partial<PreferenceValues>): void {
    this.#values = { ...this.#values, ...patch };
    this.#kept = this.#store.write(JSON.stringify(this.#values));
  }
}

/** What was kept; a value that is none of the choices (of another version, or damaged) takes its default. */
export function readPreferences(text: string | null): PreferenceValues {
  return readFields(fields, parsed(text), 'preferences', () => undefined);
}

function parsed(text: string | null): unknown {
  try {
    return text === null ? undefined : (JSON.parse(text) as unknown);
  } catch {
    return undefined;
  }
}
