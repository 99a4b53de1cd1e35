import type { KeptText } from '../../storage/kept-text';
import { Memo } from '../../survey/memo';
import type { BaseGround, BaseReport, Credit } from './ground';
import { readKeptBases, type KeptBases, type OwnMap } from './own-map';
import { plainId, providers } from './providers';

/** The files that are kept on this device. */
export interface KeptArchives {
  read(key: string): Promise<Blob | null>;
}

const waiting: BaseReport = { health: 'waiting', credit: [], reason: null };

/** Which base map lies under the survey. Kept on the device, never in a survey. */
export class BaseChoice {
  readonly #store: KeptText;
  readonly #archives: KeptArchives;
  #values = $state.raw<KeptBases>() as KeptBases;
  #report = $state.raw<BaseReport>(waiting);
  #keptByDevice = $state.raw(true);
  /** One object for each map of the user's, so that the map on the page knows when nothing has changed. */
  readonly #grounds = new Memo<BaseGround>();

  constructor(store: KeptText, archives: KeptArchives) {
    this.#store = store;
    this.#archives = archives;
    this.#values = readKeptBases(store.read());
  }

  get own(): readonly OwnMap[] {
    return this.#values.own;
  }
  get pale(): boolean {
    return this.#values.pale;
  }
  /** False once the device has refused to keep the choice: it lasts until the page is left. */
  get kept(): boolean {
    return this.#keptByDevice;
  }
  /** The plain plan as well when what was chosen is there no more. */
  readonly chosen = $derived.by(() => {
    const { chosen, own } = this.#values;
    return [...providers, ...own].some(({ id }) => id === chosen) ? chosen : plainId;
  });
  readonly ground = $derived.by((): BaseGround => {
    const own = this.#values.own.find(({ id }) => id === this.chosen);
    return own
      ? this.#groundOf(own)
      : (providers.find(({ id }) => id === this.chosen)?.ground ?? { kind: 'plain' });
  });

  /** How the chosen map fares, as the map on the page last told. */
  get report(): BaseReport {
    return this.#report;
  }
  tell(report: BaseReport): void {
    this.#report = report;
  }

  choose(id: string): void {
    if (id === this.chosen) return;
    this.#report = waiting;
    this.#set((kept) => ({ ...kept, chosen: id }));
  }
  setPale(pale: boolean): void {
    this.#set((kept) => ({ ...kept, pale }));
  }
  /** Adds a map and shows it. */
  add(map: OwnMap): void {
    this.#report = waiting;
    this.#set((kept) => ({ ...kept, own: [...kept.own, map], chosen: map.id }));
  }
  /** Takes a map of the user's off the list, and says what it was. */
  remove(id: string): OwnMap | null {
    const map = this.own.find((m) => m.id === id) ?? null;
    this.#set((kept) => ({ ...kept, own: kept.own.filter((m) => m.id !== id) }));
    return map;
  }
  /** Another tab may have added or removed a map meanwhile. */
  refresh(): void {
    const text = this.#store.read();
    if (text === null) return;
    const kept = readKeptBases(text);
    this.#values = { ...kept, own: kept.own.map((map) => this.#known(map)) };
  }

  #set(change: (kept: KeptBases) => KeptBases): void {
    const { chosen, pale } = this.#values;
    if (this.#keptByDevice) this.refresh();
    this.#values = change({ ...this.#values, chosen, pale });
    this.#keptByDevice = this.#store.write(JSON.stringify(this.#values));
  }

  /** The object that stands for a map already, so that the map on the page is not put in anew. */
  #known(map: OwnMap): OwnMap {
    const same = this.#values.own.find(({ id }) => id === map.id);
    return same && JSON.stringify(same) === JSON.stringify(map) ? same : map;
  }

  #groundOf(own: OwnMap): BaseGround {
    return this.#grounds.get([own], () => groundOf(own, this.#archives));
  }
}

function groundOf(
  { id, kind, name, address, credit: typed, maxZoom }: OwnMap,
  archives: KeptArchives,
): BaseGround {
  const credit = creditOf(typed);
  if (kind === 'archive')
    return { kind, name, from: address === null ? { read: () => archives.read(id) } : { address }, credit };
  if (address === null) return { kind: 'plain' };
  return kind === 'tiles'
    ? { kind, name, template: address, maxZoom, credit }
    : { kind, name, address, credit };
}

export const creditOf = (typed: string): Credit => (typed === '' ? [] : [{ text: typed, href: null }]);
