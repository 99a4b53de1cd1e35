import type { Patch } from '../../survey/edits/set-properties';
import type { Frequency } from '../../survey/schema/site';

/** The site's frequencies as the file has them; an empty list is left out. */
export const frequencyPatch = (list: readonly Frequency[]): Patch => ({
  frequencies:
    list.length === 0
      ? undefined
      : list.map(({ use, name, mhz }) => ({ use, ...(name == null ? {} : { name }), mhz })),
});
