import type { Missing } from '../ports/program';

/** Where the browser's abilities are looked for; a test stands in for it. */
export interface Surroundings {
  readonly isSecureContext?: boolean;
  readonly navigator?: {
    readonly serviceWorker?: unknown;
    readonly storage?: { readonly persist?: unknown } | undefined;
    readonly geolocation?: unknown;
    readonly clipboard?: unknown;
  };
}

/**
 * What this browser withholds from the page, as far as the user notices. Plain http in a local network counts as
 * insecure (W3C Secure Contexts): no service worker, storage manager, clipboard or position there. Locks and
 * randomUUID are withheld too; nothing here uses them.
 */
export function missingFor({ isSecureContext, navigator = {} }: Surroundings): readonly Missing[] {
  const { serviceWorker, storage, geolocation, clipboard } = navigator;
  const there: Readonly<Record<Missing, boolean>> = {
    offline: serviceWorker !== undefined,
    keeping: storage?.persist !== undefined,
    // The object is there on plain http too; asking it fails.
    position: geolocation !== undefined && isSecureContext === true,
    clipboard: clipboard !== undefined,
  };
  return (Object.keys(there) as Missing[]).filter((ability) => !there[ability]);
}
