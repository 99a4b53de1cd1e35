import type { BaseHealth } from '../../state/base-maps/ground';

/** Failures in a row, with nothing that came in between, after which the server counts as out of reach. */
const patience = 3;

/**
 * Tells from the tiles that come, fail or are missing how a base map fares. One tile that comes proves a server to
 * be there; a tile that is missing (status 404) only shows when the map has come to rest and it has not come.
 */
export class TileHealth {
  #health: BaseHealth = 'waiting';
  #came = 0;
  #failed = 0;
  #asked = new Set<string>();

  get health(): BaseHealth {
    return this.#health;
  }

  asked(tile: string): void {
    this.#asked.add(tile);
  }
  came(tile: string): void {
    this.#asked.delete(tile);
    this.#came++;
    this.#failed = 0;
    this.#health = 'shown';
  }
  /** No longer wanted: says nothing about the server. */
  left(tile: string): void {
    this.#asked.delete(tile);
  }
  failed(tile: string | null): void {
    if (tile !== null) this.#asked.delete(tile);
    this.#failed++;
    if (this.#failed >= patience || tile === null) this.#health = 'unreachable';
  }
  /** Everything that was asked for has been answered. */
  rested(): void {
    if (this.#came === 0 && this.#failed > 0) this.#health = 'unreachable';
    else if (this.#came === 0 && this.#asked.size > 0) this.#health = 'empty';
    this.#asked.clear();
    this.#came = 0;
    this.#failed = 0;
  }
}
