import type { LayerHost } from '../layer-host';
import { slots } from '../layers';
import type { BaseGround, BaseReport, Credit } from '../../state/base-maps/ground';
import { basePrefix, UnusableBase, type BaseParts, type LayerSpec } from './base-parts';
import { creditText, joinedCredits } from './credit-text';
import { readBase } from './read-base';
import { TileHealth } from './tile-health';

export interface TileId {
  readonly z: number;
  readonly x: number;
  readonly y: number;
}

/** What a base map needs of the map library. */
export interface BaseHost extends LayerHost {
  setVisible(layer: string, visible: boolean): void;
  setGlyphs(url: string | null): void;
  addSprite(id: string, url: string): void;
  removeSprite(id: string): void;
  /** Asks again for tiles that failed. */
  askAgain(source: string, tiles: readonly TileId[]): void;
  /** Whether all that the source was asked for has been answered, one way or the other. */
  isSettled(source: string): boolean;
  /** The HTML that the source's own data give as its credit. */
  attribution(source: string): string | undefined;
}

/** ms until the server is asked again by itself: each time twice as long. */
const [firstRetry, lastRetry] = [15_000, 240_000];

/** ms between two looks at whether all tiles have been answered: that a tile is missing makes no event. */
const lookAgain = 400;

const plain: BaseGround = { kind: 'plain' };
const key = ({ z, x, y }: TileId) => `${z}/${x}/${y}`;

/** The base map under the survey: put in, taken out, watched, and asked again after its server was out of reach. */
export class BaseLayers {
  readonly #host: BaseHost;
  readonly #tell: (report: BaseReport) => void;
  readonly #read: typeof readBase;
  #ground: BaseGround = plain;
  #parts: BaseParts | null = null;
  #reading: AbortController | null = null;
  #health = new TileHealth();
  #reason: string | null = null;
  #told: BaseReport | null = null;
  #failed = new Map<string, { readonly source: string; readonly tile: TileId }>();
  #pale = true;
  #delay = firstRetry;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #look: ReturnType<typeof setTimeout> | undefined;

  constructor(host: BaseHost, tell: (report: BaseReport) => void, read = readBase) {
    this.#host = host;
    this.#tell = tell;
    this.#read = read;
  }

  show(ground: BaseGround, pale: boolean): void {
    this.#pale = pale;
    if (ground !== this.#ground) {
      this.#ground = ground;
      this.#delay = firstRetry;
      void this.#begin();
    } else this.#setGrounds();
  }

  /** Asks the server again, if it was out of reach. */
  retry(): void {
    if (this.#health.health !== 'unreachable') return;
    // Without any tile that failed, what is missing is what says where the tiles are. An archive is opened anew.
    if (!this.#parts || this.#failed.size === 0 || this.#ground.kind === 'archive') void this.#begin();
    else this.#askAgain();
  }

  /** Layers whose colours are those of the look. */
  get repaintable(): readonly LayerSpec[] {
    return this.#parts?.isOnPaper ? this.#parts.layers : [];
  }

  remove(): void {
    this.#stop();
    this.#parts?.close?.();
  }

  #stop(): void {
    clearTimeout(this.#timer);
    clearTimeout(this.#look);
    this.#timer = this.#look = undefined;
    this.#reading?.abort();
  }

  async #begin(): Promise<void> {
    this.#stop();
    const reading = new AbortController();
    this.#reading = reading;
    const wasUnreachable = this.#health.health === 'unreachable' && this.#parts !== null;
    if (!wasUnreachable) this.#clear();
    if (this.#ground.kind === 'plain') {
      this.#told = null;
      return;
    }
    this.#health = new TileHealth();
    try {
      const parts = await this.#read(this.#ground, reading.signal);
      if (reading.signal.aborted) return parts.close?.();
      this.#clear();
      this.#put(parts);
      this.#report();
    } catch (error) {
      if (reading.signal.aborted) return;
      this.#reason = error instanceof UnusableBase ? error.message : null;
      this.#health.failed(null);
      this.#report();
    }
  }

  #put(parts: BaseParts): void {
    this.#parts = parts;
    this.#reason = null;
    if (parts.glyphs !== null) this.#host.setGlyphs(parts.glyphs);
    for (const { id, url } of parts.sprites) this.#host.addSprite(id, url);
    for (const [id, source] of Object.entries(parts.sources)) this.#host.addSource(id, source);
    for (const layer of parts.layers) this.#host.addLayer(layer, slots.base, parts.isOnPaper);
    this.#setGrounds();
  }

  #clear(): void {
    this.#failed.clear();
    this.#health = new TileHealth();
    const parts = this.#parts;
    this.#parts = null;
    this.#reason = null;
    if (parts) {
      for (const { id } of parts.layers) this.#host.removeLayer(id);
      for (const id of Object.keys(parts.sources)) this.#host.removeSource(id);
      for (const { id } of parts.sprites) this.#host.removeSprite(id);
      if (parts.glyphs !== null) this.#host.setGlyphs(null);
      parts.close?.();
    }
    this.#setGrounds();
  }

  /** What covers the page wholly is there only while the base is: under a base that fails lies the plain plan. */
  #setGrounds(): void {
    const shown = this.#parts !== null && this.#health.health === 'shown';
    for (const { id, type } of this.#parts?.layers ?? [])
      if (type === 'background') this.#host.setVisible(id, shown);
    // What is drawn on paper is quiet already.
    this.#host.setVisible(slots.base, shown && this.#pale && !this.#parts?.isOnPaper);
  }

  #isOurs(source: string | undefined): source is string {
    return source !== undefined && source.startsWith(basePrefix);
  }

  asked(source: string | undefined, tile: TileId): void {
    if (!this.#isOurs(source)) return;
    this.#health.asked(source + key(tile));
    this.#look ??= setTimeout(() => this.#settle(), lookAgain);
  }
  left(source: string | undefined, tile: TileId): void {
    if (this.#isOurs(source)) this.#health.left(source + key(tile));
  }
  came(source: string | undefined, tile: TileId): void {
    if (!this.#isOurs(source)) return;
    const wasAway = this.#health.health === 'unreachable';
    this.#health.came(source + key(tile));
    this.#failed.delete(source + key(tile));
    this.#report();
    if (!wasAway) return;
    this.#delay = firstRetry;
    this.#askAgain();
  }
  /** What the source says about itself has come: its credit, for one. */
  described(source: string | undefined): void {
    if (this.#isOurs(source)) this.#report();
  }
  /** True when the trouble is the base map's, and with that told. */
  failed(source: string | undefined, tile: TileId | null): boolean {
    if (!this.#isOurs(source)) return false;
    const name = tile && source + key(tile);
    if (name !== null && tile) this.#failed.set(name, { source, tile });
    this.#health.failed(name);
    this.#report();
    return true;
  }
  #settle(): void {
    this.#look = undefined;
    const sources = Object.keys(this.#parts?.sources ?? {});
    if (!sources.every((id) => this.#host.isSettled(id))) {
      this.#look = setTimeout(() => this.#settle(), lookAgain);
      return;
    }
    this.#health.rested();
    this.#report();
  }

  #askAgain(): void {
    const bySource = new Map<string, TileId[]>();
    for (const { source, tile } of this.#failed.values())
      bySource.set(source, [...(bySource.get(source) ?? []), tile]);
    this.#failed.clear();
    for (const [source, tiles] of bySource) this.#host.askAgain(source, tiles);
    this.#plan();
  }

  #plan(): void {
    if (this.#health.health !== 'unreachable') {
      clearTimeout(this.#timer);
      this.#timer = undefined;
      return;
    }
    this.#timer ??= setTimeout(() => {
      this.#timer = undefined;
      this.#delay = Math.min(this.#delay * 2, lastRetry);
      this.retry();
    }, this.#delay);
  }

  #report(): void {
    if (this.#ground.kind === 'plain') return;
    this.#plan();
    const { health } = this.#health;
    const sources = Object.keys(this.#parts?.sources ?? {});
    const credit: Credit = joinedCredits([
      this.#parts?.credit ?? [],
      ...sources.map((id) => creditText(this.#host.attribution(id) ?? '')),
    ]);
    const told = this.#told;
    if (told && told.health === health && told.reason === this.#reason && sameCredit(told.credit, credit))
      return;
    this.#told = { health, credit, reason: this.#reason };
    if (told?.health !== health) this.#setGrounds();
    this.#tell(this.#told);
  }
}

const sameCredit = (a: Credit, b: Credit) =>
  a.length === b.length && a.every(({ text, href }, i) => text === b[i]?.text && href === b[i].href);
