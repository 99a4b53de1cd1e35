import type { View } from '../../state/view.svelte';
import { loadDialog, type LazyDialog } from './lazy-dialog';

/** A dialog or a dock that is fetched when it is first wanted: most visits want none. To be made while a component is set up. */
export class LateDialog {
  /** Null until it is there. */
  Shown = $state.raw<Awaited<ReturnType<typeof loadDialog>>>(null);

  constructor(wanted: () => boolean, dialog: LazyDialog, notices: Pick<View, 'notice'>) {
    $effect(() => {
      if (wanted() && !this.Shown)
        void loadDialog(dialog, notices).then((shown) => {
          this.Shown = shown;
        });
    });
  }
}
