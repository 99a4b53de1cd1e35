import type { DevicePosition } from '../ports/position';

/** The part of the browser's geolocation that is used; a test stands in for it. */
export interface Locator {
  getCurrentPosition(
    found: (at: { readonly coords: { readonly longitude: number; readonly latitude: number } }) => void,
    failed: (error: { readonly code: number }) => void,
    options: PositionOptions,
  ): void;
}

const otherwise = 'Type a town, an airfield or coordinates instead.';
/** By the error codes of the Geolocation standard. */
const reasons: Readonly<Record<number, string>> = {
  1: `This browser may not tell the page where you are. ${otherwise}`,
  2: `This device does not know where it is. ${otherwise}`,
  3: `This device took too long to find out where it is. ${otherwise}`,
};
/** ms: a town is near enough, and may have been found a while ago. */
const options: PositionOptions = { enableHighAccuracy: false, timeout: 20_000, maximumAge: 600_000 };

export class BrowserPosition implements DevicePosition {
  readonly #locator: Locator | null;

  /** Null where the browser has none, or the page came over plain http. */
  constructor(locator: Locator | null) {
    this.#locator = locator;
  }

  ask(): ReturnType<DevicePosition['ask']> {
    return new Promise((resolve) => {
      if (!this.#locator)
        return resolve({ ok: false, reason: `This browser gives the page no position here. ${otherwise}` });
      this.#locator.getCurrentPosition(
        ({ coords: { longitude, latitude } }) => resolve({ ok: true, position: [longitude, latitude] }),
        ({ code }) => resolve({ ok: false, reason: reasons[code] ?? (reasons[2] as string) }),
        options,
      );
    });
  }
}
