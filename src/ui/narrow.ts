import { MediaQuery } from 'svelte/reactivity';

/**
 * One sheet at a time under the map: the same width as in the styles, in em, so that a page with text of twice the size
 * becomes narrow where it has to.
 */
export const narrowPage = () => new MediaQuery('max-width: 47.5em');
