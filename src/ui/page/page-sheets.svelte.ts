import type { Merging } from '../../ports/merging';
import type { View } from '../../state/view.svelte';
import { sheetHeights } from './sheet-heights';

export type SheetKey = 'map' | 'survey' | 'selected' | 'light';

/** On a narrow page one sheet at a time lies under the map: which, and how tall. To be made while a component is set up. */
export class PageSheets {
  readonly #view: Pick<View, 'hand' | 'selection' | 'foot'>;
  #chosen = $state.raw<SheetKey>('map');
  #usualHeight = $state.raw<string>(sheetHeights.half);
  /** The day at the field is read in one look, in large type: the map is a thumb away, under its own tab. */
  #fieldHeight = $state.raw<string>(sheetHeights.tall);
  /** Drawing needs the whole map. */
  readonly open = $derived.by((): SheetKey => (this.#view.hand.tool === 'select' ? this.#chosen : 'map'));
  readonly #atField = $derived.by(() => this.open === 'light' && this.#view.foot.open === 'now');
  readonly height = $derived.by(() => (this.#atField ? this.#fieldHeight : this.#usualHeight));

  constructor(view: Pick<View, 'hand' | 'selection' | 'foot'>, merging: Pick<Merging, 'underWay'>) {
    this.#view = view;
    $effect(() => {
      // Both places are on the map, and the questions under it.
      if (merging.underWay) this.#chosen = 'map';
    });
    $effect(() => {
      // On a narrow page the side view lies under the map, not under a sheet.
      if (view.selection.sightLine) this.#chosen = 'map';
    });
    $effect(() => {
      // Asked for in the menu of a narrow page, it lies in a sheet of that page.
      if (view.foot.open === 'places' || view.foot.open === 'now') this.#chosen = 'light';
    });
  }

  get isTall(): boolean {
    return this.height === sheetHeights.tall;
  }

  choose(key: SheetKey): void {
    this.#chosen = key;
    if (key === 'map') return;
    this.#view.hand.tool = 'select';
    // A sheet and a side view would leave nothing of the map; asked for again, the side view comes back to it.
    this.#view.selection.sightLine = false;
  }

  /** Gives the map back the page. */
  close(): void {
    this.#chosen = 'map';
  }

  resize(to: string): void {
    if (this.#atField) this.#fieldHeight = to;
    else this.#usualHeight = to;
  }
}
