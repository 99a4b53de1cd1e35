import type { LandArea } from '../imports/land/land-file';
import { loadLand } from '../imports/land/load';
import type { BaseChoice } from '../state/base-maps/base-choice.svelte';
import type { BaseGround } from '../state/base-maps/ground';
import type { OwnMap } from '../state/base-maps/own-map';
import { pickFile, type FileKind } from '../storage/files';
import type { KeptFiles } from '../storage/kept-files';
import { askForPersistence, room } from '../storage/persistence';
import { freshId } from '../survey/ids';
import type { BaseMapDraft, BaseMaps, LandOverlay } from '../ports/base-maps';

const archiveKind: FileKind = {
  mediaType: 'application/vnd.pmtiles',
  extensions: ['.pmtiles'],
  description: 'PMTiles archive of map tiles',
};

export interface BaseMapNeeds {
  readonly choice: BaseChoice;
  readonly files: KeptFiles;
  readonly landUrl?: string;
}

/** The part of the composition root that knows base maps: what the user adds, and the files that are kept for it. */
export class SunsideBaseMaps implements BaseMaps {
  readonly choice: BaseChoice;
  readonly #files: KeptFiles;
  readonly #landUrl: string;
  #land: Promise<LandOverlay | null> | null = null;

  constructor({ choice, files, landUrl = './land.json' }: BaseMapNeeds) {
    this.choice = choice;
    this.#files = files;
    this.#landUrl = landUrl;
  }

  async addAddress({ kind, address: typed, name, credit, maxZoom }: BaseMapDraft): Promise<string | null> {
    const { readAddress, nameOfAddress } = await import('../state/base-maps/address');
    const reading = readAddress(kind, typed);
    if (!reading.ok) return reading.reason;
    const { address } = reading;
    const map: OwnMap = {
      id: this.#newId(),
      name: name.trim() || nameOfAddress(address),
      kind,
      address,
      credit: credit.trim(),
      maxZoom,
      size: null,
    };
    const trouble = await troubleWith(
      kind === 'tiles'
        ? { kind: 'plain' }
        : kind === 'style'
          ? { kind, name, address, credit: [] }
          : { kind, name, from: { address }, credit: [] },
    );
    if (trouble === null) this.choice.add(map);
    return trouble;
  }

  async addFile(
    given: File | null,
    { name, credit }: Pick<BaseMapDraft, 'name' | 'credit'>,
  ): Promise<string | null> {
    const file = given ?? (await pickFile(archiveKind))?.file ?? null;
    if (!file) return null;
    const trouble = await troubleWith({
      kind: 'archive',
      name: file.name,
      from: { read: () => Promise.resolve(file) },
      credit: [],
    });
    if (trouble !== null) return `"${file.name}": ${trouble}`;
    const free = await room();
    if (free && file.size > free.quota - free.used)
      return `"${file.name}" has ${megabytes(file.size)}, and there is room for ${megabytes(free.quota - free.used)}: delete another map, or make a smaller archive.`;
    const id = this.#newId();
    const kept = await this.#files.keep(id, file);
    if (!kept.ok) return `"${file.name}" could not be kept on this device: ${kept.reason}.`;
    // Else the browser may clear it with everything else when space runs short.
    void askForPersistence();
    this.choice.add({
      id,
      name: name.trim() || file.name.replace(/\.pmtiles$/i, ''),
      kind: 'archive',
      address: null,
      credit: credit.trim(),
      maxZoom: 19,
      size: file.size,
    });
    return null;
  }

  async tidy(): Promise<void> {
    this.choice.refresh();
    const wanted = new Set(this.choice.own.map(({ id }) => id));
    for (const key of await this.#files.keys()) if (!wanted.has(key)) await this.#files.forget(key);
  }

  land(): Promise<LandOverlay | null> {
    this.#land ??= loadLand(this.#landUrl).then((areas) => {
      // Not to be had is not for ever: whoever looks that far again asks again.
      if (!areas) this.#land = null;
      return areas && overlayOf(areas);
    });
    return this.#land;
  }

  #newId(): string {
    return `own-${freshId(new Set(this.choice.own.map(({ id }) => id)))}`;
  }
}

/** Why a base map cannot be used, in words with the mend; null when it can. */
async function troubleWith(ground: BaseGround): Promise<string | null> {
  // The map's own way to read it: loaded with the map, so not a part of the page's first script.
  const [{ readBase }, { UnusableBase }] = await Promise.all([
    import('../map/base/read-base'),
    import('../map/base/base-parts'),
  ]);
  try {
    (await readBase(ground, new AbortController().signal)).close?.();
    return null;
  } catch (error) {
    if (error instanceof UnusableBase) return `This does not work: ${error.message}.`;
    return 'It cannot be reached. Check the address and the network; if it opens in a tab of its own, its server does not let other pages read it.';
  }
}

const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(bytes < 9.95e6 ? 1 : 0)} MB`;

const overlayOf = (areas: readonly LandArea[]): LandOverlay => ({
  type: 'FeatureCollection',
  features: areas.map((coordinates) => ({
    type: 'Feature',
    properties: {},
    geometry: { type: 'Polygon', coordinates },
  })),
});
