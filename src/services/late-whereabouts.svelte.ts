import type { Whereabouts, WhereaboutsSeat } from '../ports/whereabouts';

/** The device's whereabouts, loaded when it is first asked for. */
export class LateWhereabouts implements WhereaboutsSeat {
  #current = $state.raw<Whereabouts | null>(null);

  get current(): Whereabouts | null {
    return this.#current;
  }

  async open(): Promise<Whereabouts> {
    const [{ DeviceWhereabouts }, { thisDevice }] = await Promise.all([
      import('./device-whereabouts.svelte'),
      import('./this-device'),
    ]);
    return (this.#current ??= new DeviceWhereabouts(thisDevice()));
  }
}
