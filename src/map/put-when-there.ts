/**
 * Puts on the map what comes over the net, unless it is not wanted any more by then: calling what is returned says
 * so. Land that comes late must not lie over a base map chosen meanwhile.
 */
export function putWhenThere<T>(coming: Promise<T | null>, put: (value: T) => void): () => void {
  let wanted = true;
  void coming.then((value) => {
    if (wanted && value !== null) put(value);
  });
  return () => {
    wanted = false;
  };
}
