import { MediaQuery } from 'svelte/reactivity';

/**
 * One sheet at a time beside or under the map: the same sizes as in the styles, in em, so that a page with text of
 * twice the size becomes narrow where it has to. A phone that lies on its side is low, not narrow, and gets the same.
 */
export const narrowPage = () => new MediaQuery('(max-width: 47.5em) or (max-height: 27em)');

/** Whether the page is pointed at with a finger. */
export const byFinger = () => new MediaQuery('pointer: coarse');
