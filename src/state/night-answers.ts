import { moonAt, type Moon } from '../figures/light/moon';
import { nightOf, type Night } from '../figures/light/night';
import type { Derived } from './derived.svelte';

type Figures = Pick<Derived, 'contents' | 'day'>;

/** How dark the day shown is, and when the moon is up. */
export const nightOfDay = ({ contents, day }: Figures): Night =>
  nightOf(contents.site.reference, day.span.from, day.span.to);

/** The moon over the airfield at an instant (ms since 1970). */
export const moonOver = ({ contents }: Pick<Figures, 'contents'>, instant: number): Moon =>
  moonAt(contents.site.reference, instant);

export { moonsAmong } from '../figures/light/moons-among';
export { evOfLux } from '../figures/optics/exposure';
