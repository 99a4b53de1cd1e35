import type { Component } from 'svelte';

/**
 * One view of the foot. A new one is a line here; what it takes is loaded when somebody first looks at it, so that
 * the page does not wait for it. `key` is how the view state remembers it.
 */
export interface FootView {
  readonly key: string;
  readonly name: string;
  readonly load: () => Promise<{ readonly default: Component }>;
}

/** In the order of the row, behind "Moments", which is there from the start. */
export const footViews: readonly FootView[] = [
  { key: 'now', name: 'At the field', load: () => import('../now/NowView.svelte') },
  { key: 'today', name: 'Light today', load: () => import('../over-time/LightToday.svelte') },
  { key: 'year', name: 'Year', load: () => import('../over-time/YearView.svelte') },
  { key: 'places', name: 'Where to stand', load: () => import('../places/WhereToStand.svelte') },
  { key: 'movements', name: 'Movements', load: () => import('../movements/MovementsView.svelte') },
  { key: 'plan', name: 'Plan', load: () => import('../plan/PlanView.svelte') },
  { key: 'wind-record', name: 'Wind record', load: () => import('../wind-record/WindRecordView.svelte') },
  { key: 'flown', name: 'What really flies', load: () => import('../flown/FlownView.svelte') },
  { key: 'log', name: 'Log', load: () => import('../log/LogView.svelte') },
];

const there = new Map<string, Component>();

/**
 * A view, at once where it has been fetched before: then it is shown with the click itself, and the map does not change its size twice,
 * for a word of waiting and for the view.
 */
export function fetched({ key, load }: FootView): Component | Promise<Component> {
  return (
    there.get(key) ??
    load().then(({ default: view }) => {
      there.set(key, view);
      return view;
    })
  );
}
