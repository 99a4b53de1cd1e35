import type { Terrain } from '../state/terrain.svelte';
import { Turns } from '../state/turns';
import type { KeptFiles } from '../storage/kept-files';
import type { KeptText } from '../storage/kept-text';
import { pickFile, type FileKind } from '../storage/files';
import type { Position } from '../survey/document';
import type { GroundHeights } from '../ports/ground-heights';

const heightFile: FileKind = {
  mediaType: 'image/tiff',
  extensions: ['.tif', '.tiff', '.pmtiles'],
  description: 'Heights of the ground (GeoTIFF in EPSG:4326, or PMTiles in the Terrarium encoding)',
};
/** Mapzen's terrain tiles, open data on the cloud of Amazon; asked only when the user has switched them on. */
const online = {
  url: (z: number, x: number, y: number) =>
    `https://s3.amazonaws.com/elevation-tiles-prod/terrarium/${z}/${x}/${y}.png`,
  credit: 'Heights: Mapzen terrain tiles, from ArcticDEM, EU-DEM, SRTM, USGS and others',
} as const;
const kept = 'ground-heights';

/** Most visits look at no heights before the page is there. */
const sources = () => import('./heights-from');

export interface HeightNeeds {
  readonly terrain: Terrain;
  readonly files: Pick<KeptFiles, 'keep' | 'read' | 'forget'>;
  /** 'none', 'online' or 'file': for every airfield. */
  readonly choice: KeptText;
  /** The sample's own heights, about its place. */
  readonly sample: { readonly url: string; readonly near: Position };
}

/** The part of the composition root that knows where heights come from: files, tiles, and the sample's own. */
export class SunsideGroundHeights implements GroundHeights {
  readonly #needs: HeightNeeds;
  readonly #choosing = new Turns();
  /** The airfield that was looked at last. */
  #about: Position | null = null;

  constructor(needs: HeightNeeds) {
    this.#needs = needs;
  }

  /** Another airfield is looked at: what was chosen is loaded for it. */
  async look(about: Position): Promise<void> {
    this.#about = about;
    const { choice, sample, terrain } = this.#needs;
    if (near(about, sample.near)) return this.#loadSample(about);
    const chosen = choice.read();
    if (chosen === 'online') return this.#loadOnline(about);
    if (chosen === 'file') return this.#loadKept(about);
    terrain.none();
  }

  none(): void {
    this.#choosing.begin();
    const { choice, files, terrain } = this.#needs;
    choice.write('none');
    void files.forget(kept);
    terrain.none();
  }

  useOnline(about: Position): Promise<void> {
    this.#choosing.begin();
    this.#needs.choice.write('online');
    return this.#loadOnline(about);
  }

  async pickFile(about: Position): Promise<void> {
    const picked = await pickFile(heightFile);
    if (!picked) return;
    const isChosen = this.#choosing.begin();
    const { choice, files, terrain } = this.#needs;
    const { file } = picked;
    const became = await terrain.load('file', async () => (await sources()).fromFile(file, file.name, about));
    if (became === 'failed' || !isChosen()) return;
    const keeping = await files.keep(kept, file);
    // Chosen otherwise meanwhile: what a newer choice keeps is its own affair, what none keeps goes.
    if (!isChosen()) {
      if (choice.read() !== 'file') await files.forget(kept);
      return;
    }
    if (keeping.ok) choice.write('file');
    else if (became === 'loaded')
      terrain.remarkOn(
        `"${file.name}" is used now, but it could not be kept on this device: ${keeping.reason}. Choose it again after the next start.`,
      );
    // Another airfield was opened while the file was read: it is for that one too.
    if (keeping.ok && became === 'late' && this.#about) await this.look(this.#about);
  }

  async #loadOnline(about: Position): Promise<void> {
    await this.#needs.terrain.load('online', async () => {
      const fetched = async (z: number, x: number, y: number) => {
        const answer = await fetch(online.url(z, x, y));
        return answer.ok ? answer.blob() : null;
      };
      const grid = await (await sources()).fromTiles(about, fetched);
      return grid ? { grid, credit: online.credit } : 'there are no heights here; are you online?';
    });
  }

  async #loadKept(about: Position): Promise<void> {
    const { files, terrain } = this.#needs;
    await terrain.load('file', async () => {
      const file = await files.read(kept);
      return file
        ? (await sources()).fromFile(file, 'The file', about)
        : 'the file is not on this device any more';
    });
  }

  async #loadSample(about: Position): Promise<void> {
    const { sample, terrain } = this.#needs;
    await terrain.load('sample', async () => {
      const answer = await fetch(sample.url);
      return answer.ok
        ? (await sources()).fromFile(await answer.blob(), 'The sample', about)
        : 'the sample is not there';
    });
  }
}

const near = (a: Position, b: Position) => Math.abs(a[0] - b[0]) < 0.1 && Math.abs(a[1] - b[1]) < 0.1;
