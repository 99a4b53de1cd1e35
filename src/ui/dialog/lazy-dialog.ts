import type { Component } from 'svelte';
import type { View } from '../../state/view.svelte';

type Shown = Component<{ onclose: () => void }>;

/** A dialog that comes when it is asked for the first time: most visits need none. */
export type LazyDialog = () => Promise<{ readonly default: Shown }>;

/** The dialog, or null with a notice where it cannot be had. */
export async function loadDialog(dialog: LazyDialog, view: Pick<View, 'notice'>): Promise<Shown | null> {
  try {
    return (await dialog()).default;
  } catch {
    view.notice = 'That part of the program could not be loaded. Are you online? Try again.';
    return null;
  }
}
