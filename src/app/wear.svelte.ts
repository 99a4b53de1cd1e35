import { sheets } from '../../styles/sheets';
import type { Look } from '../state/look.svelte';

/** Puts the look on the page and on the browser's own bars, now and whenever it changes. */
export function wear(look: Look): void {
  const root = document.documentElement;
  const bars = document.querySelector<HTMLMetaElement>('meta[name="theme-color"]');
  $effect.root(() => {
    $effect(() => {
      root.dataset['look'] = look.name;
      if (bars) bars.content = sheets[look.name];
    });
  });
}
