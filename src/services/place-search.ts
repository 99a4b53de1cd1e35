import type { PlaceLists } from '../exports/sweep/place-lists';
import { messageOf } from '../keeping/survey-files';
import type { BaseAsked, PlaceFile, PlaceSearch } from '../ports/place-search';
import type { Position } from '../survey/document';
import { saveFile } from '../storage/files';
import type { SweepClient } from '../sweep/client';

/** Looking for places to stand, in this browser's workers. */
export class WorkersPlaceSearch implements PlaceSearch {
  #client: Promise<SweepClient> | null = null;

  foresee(...question: Parameters<SweepClient['prepare']>): void {
    // Whoever asks in earnest hears of what fails.
    this.#made().then(
      (client) => client.prepare(...question),
      () => undefined,
    );
  }

  prepare(): void {
    this.#made().then(
      (client) => client.warm(),
      () => undefined,
    );
    import('../sweep/errand-workers').catch(() => undefined);
  }

  async sweep() {
    const client = await this.#made();
    const ask: SweepClient['ask'] = (...question) => client.ask(...question);
    return { ask, cancel: () => client.cancel(), close: () => client.cancel() };
  }

  #made(): Promise<SweepClient> {
    const made = (this.#client ??= import('../sweep/workers').then(({ sweepClient }) => sweepClient()));
    // Asked for again after a failure (no network).
    made.catch(() => (this.#client = null));
    return made;
  }

  async errands() {
    return (await import('../sweep/errand-workers')).errandClient;
  }

  async groundOf(
    { name, credit, read }: BaseAsked,
    reference: Position,
    runways: readonly (readonly [Position, Position])[],
  ) {
    const { groundLayers, groundOfBase } = await import('../imports/base-map/ground-of-base');
    const mark = [...new Set(credit.map(({ text }) => text))].join(', ') || name;
    const text = `Ground uses from ${name}: ${mark}.`;
    return groundOfBase(read(groundLayers), { reference, runways }, { text, mark });
  }

  async save(file: PlaceFile, lists: PlaceLists): Promise<string | null> {
    let called = 'The file';
    try {
      // Its name and kind as well: most visits take nothing along.
      const { placeFiles } = await import('./place-files');
      const { make, name, ...kind } = placeFiles[file];
      called = name;
      const content = make(lists).then((made) => new Blob([made], { type: kind.mediaType }));
      await saveFile(content, name, kind, null);
      return null;
    } catch (error) {
      return `${called} could not be saved: ${messageOf(error)}.`;
    }
  }
}
