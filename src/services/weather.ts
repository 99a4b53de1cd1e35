import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import { setWeather } from '../survey/edits/set-weather';
import type { WeatherReader } from '../ports/weather';

export interface WeatherNeeds {
  readonly document: SurveyDocument;
  readonly derived: { readonly airfield: Pick<Derived['airfield'], 'declination'> };
  readonly now: () => number;
}

/** Winds that people type or paste: the part of the composition root that loads the reader of reports. */
export class Weather implements WeatherReader {
  readonly #document: SurveyDocument;
  readonly #derived: WeatherNeeds['derived'];
  readonly #now: () => number;

  constructor({ document, derived, now }: WeatherNeeds) {
    this.#document = document;
    this.#derived = derived;
    this.#now = now;
  }

  async enter(text: string, magnetic: boolean): Promise<string | null> {
    const id = this.#document.id;
    const [{ readWeather }, { weatherMember }] = await Promise.all([
      import('../figures/traffic/wind/read-weather'),
      import('../figures/traffic/wind/weather-member'),
    ]);
    const now = this.#now();
    const read = readWeather(text, now);
    if (!read.ok) return read.reason;
    // Another survey was opened while the reader came over the net.
    if (this.#document.id !== id) return null;
    const declination = magnetic ? this.#derived.airfield.declination : null;
    if (magnetic && declination === null)
      return 'Magnetic north is not known yet: enter the wind once more in a moment, or from true north.';
    const weather = weatherMember(text, read.value, declination, now);
    // Who enters a wind wants to see what it does: the ends follow, and one undo takes back both.
    this.#document.perform('enter the wind', (s) => setWeather(s, { ...weather, follow: true }));
    return null;
  }
}
