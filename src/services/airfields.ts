import { catalogueCredit } from '../imports/catalogue/credit';
import type { Position } from '../survey/document';
import type { AirfieldMatch, Airfields, NearAirfield, NearLight } from '../ports/airfields';
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

  positionOf(match: AirfieldMatch): Position | null {
    return this.#catalogue?.positionOf(match) ?? null;
  }

  async near(from: Position, reach: number): Promise<readonly NearAirfield[]> {
    return (await this.#there()).near(from, reach);
  }

  async lightAt(airfield: NearAirfield, date: string): Promise<NearLight> {
    return (await this.#there()).lightAt(airfield, date);
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
