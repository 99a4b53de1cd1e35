import { catalogueCredit } from '../imports/catalogue/credit';
import type { Position } from '../survey/document';
import type { AirfieldMatch, Airfields } from '../ports/airfields';
import type { AirfieldNeeds } from './airfield-catalogue';

/** The airfield catalogue, its search and the time zones: loaded when somebody looks for an airfield. */
export class LateAirfields implements Airfields {
  readonly credit = catalogueCredit;
  readonly #needs: AirfieldNeeds;
  #catalogue: Airfields | null = null;

  constructor(needs: AirfieldNeeds) {
    this.#needs = needs;
  }

  async load(): Promise<string | null> {
    try {
      return await (await this.#there()).load();
    } catch {
      return 'The search could not be loaded. Is there a network? Try again.';
    }
  }

  search(text: string): readonly AirfieldMatch[] {
    return this.#catalogue?.search(text) ?? [];
  }

  async start(match: AirfieldMatch): Promise<void> {
    await (await this.#there()).start(match);
  }

  async startEmpty(name: string, position: Position): Promise<void> {
    await (await this.#there()).startEmpty(name, position);
  }

  async #there(): Promise<Airfields> {
    const { AirfieldCatalogue } = await import('./airfield-catalogue');
    return (this.#catalogue ??= new AirfieldCatalogue(this.#needs));
  }
}
