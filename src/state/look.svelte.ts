import type { Look as LookName } from '../../styles/map-style';
import type { Preferences } from './preferences.svelte';

/** What of the device decides on the look: `window.matchMedia`. */
type Media = (query: string) => Pick<MediaQueryList, 'matches' | 'addEventListener'>;

/** The look of the page and its map: what is preferred, else what the device asks for. */
export class Look {
  readonly #preferences: Pick<Preferences, 'values'>;
  #asked = $state.raw<LookName>('day');

  constructor(preferences: Pick<Preferences, 'values'>, media: Media) {
    this.#preferences = preferences;
    const dark = media('(prefers-color-scheme: dark)');
    const strong = media('(prefers-contrast: more)');
    const ask = () => (this.#asked = strong.matches ? 'contrast' : dark.matches ? 'night' : 'day');
    for (const query of [dark, strong]) query.addEventListener('change', ask);
    ask();
  }

  get name(): LookName {
    const { look } = this.#preferences.values;
    return look === 'system' ? this.#asked : look;
  }
}
