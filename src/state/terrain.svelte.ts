import type { ElevationGrid } from '../figures/sight/terrain';
import { Turns } from './turns';

/** Where the ground's heights come from. `sample`: the made-up model of the sample site. */
export type TerrainSource = 'none' | 'sample' | 'file' | 'online';

/** Heights round one airfield, and whose they are. */
export interface LoadedTerrain {
  readonly grid: ElevationGrid;
  readonly credit: string | null;
}

/** The ground's heights that figures use. They come when they come: until then the ground is assumed. */
export class Terrain {
  #grid = $state.raw<ElevationGrid | null>(null);
  #credit = $state.raw<string | null>(null);
  #source = $state.raw<TerrainSource>('none');
  #state = $state.raw<'none' | 'loading' | 'loaded' | 'failed'>('none');
  #reason = $state.raw<string | null>(null);
  #remark = $state.raw<string | null>(null);
  readonly #turns = new Turns();

  get grid(): ElevationGrid | null {
    return this.#grid;
  }
  get credit(): string | null {
    return this.#credit;
  }
  get source(): TerrainSource {
    return this.#source;
  }
  get state(): 'none' | 'loading' | 'loaded' | 'failed' {
    return this.#state;
  }
  /** Why it could not be loaded, in words for the user. */
  get reason(): string | null {
    return this.#reason;
  }

  /** What is to be known of heights that are there, in words for the user. */
  get remark(): string | null {
    return this.#remark;
  }
  remarkOn(words: string): void {
    this.#remark = words;
  }

  none(): void {
    this.#turns.begin();
    this.#source = 'none';
    this.#state = 'none';
    this.#grid = this.#credit = this.#reason = this.#remark = null;
  }

  /**
   * Loads in the background. `load` answers with the heights, or with why there are none. Returns what became of
   * it: `late` where other heights, or none, have been asked for since.
   */
  async load(
    source: TerrainSource,
    load: () => Promise<LoadedTerrain | string>,
  ): Promise<'loaded' | 'failed' | 'late'> {
    const isLast = this.#turns.begin();
    this.#source = source;
    this.#state = 'loading';
    this.#grid = this.#credit = this.#reason = this.#remark = null;
    let answer: LoadedTerrain | string;
    try {
      answer = await load();
    } catch {
      answer =
        source === 'file'
          ? 'the file could not be read: it is damaged, or is no longer where it was. Choose it again, or another.'
          : 'the heights could not be fetched; are you online?';
    }
    if (!isLast()) return 'late';
    if (typeof answer === 'string') {
      this.#state = 'failed';
      this.#reason = answer;
      return 'failed';
    }
    this.#grid = answer.grid;
    this.#credit = answer.credit;
    this.#state = 'loaded';
    return 'loaded';
  }
}
