/** GB of memory from which a device has some to spare; browsers tell no more than 8. */
const roomy = 4;

/** What browsers may tell of the device (Network Information API, Device Memory API): not all do. */
interface Means {
  readonly connection?: { readonly saveData?: boolean };
  readonly deviceMemory?: number;
}

/**
 * Calls once the page has nothing else to do: for what somebody may never ask for. Never where that would be at the device's cost,
 * with data to be saved or little memory, nor where the browser does not say when it is at rest. Returns how to call it off.
 */
export function atLeisure(go: () => void): () => void {
  const { connection, deviceMemory = roomy } = navigator as Means;
  if (connection?.saveData || deviceMemory < roomy || !('requestIdleCallback' in window))
    return () => undefined;
  const id = requestIdleCallback(go);
  return () => cancelIdleCallback(id);
}
