import { practice } from '../practice';
import type { Tags } from './elements';
import { heightOfLevels, leastHeightIn } from './heights';

/** A building between its underside and its top, m above the ground. */
export interface Storeys {
  readonly height: number;
  /** 0 for one that stands on the ground. */
  readonly underside: number;
  /** What was said of its underside and cannot be used; null where all can. */
  readonly odd: string | null;
}

const none = /^0+(?:\.0+)?\s*(?:m|metres?|meters?)?$/i;

/**
 * `min_height` and `building:min_level` are counted from the ground, as its height is (OpenStreetMap wiki, "Simple 3D Buildings", from
 * memory). `stated`: the height that the map says, null for none; `otherwise`: what stands in for it. A top that nobody has measured
 * lies above the underside by at least a storey; a measured one that does not is a contradiction: then it hides down to the ground.
 */
export function undersideOf(tags: Tags, stated: number | null, otherwise: number): Storeys {
  const height = stated ?? otherwise;
  const said = [tags['min_height'] ?? tags['building:min_height'], tags['building:min_level']] as const;
  const words = said.find((text) => text !== undefined);
  if (words === undefined || none.test(words.trim())) return { height, underside: 0, odd: null };
  const underside = leastHeightIn(said[0]) ?? heightOfLevels(said[1], Math.min);
  const odd = words.slice(0, 40);
  if (underside === null || (stated !== null && underside >= stated)) return { height, underside: 0, odd };
  return { height: stated ?? Math.max(otherwise, underside + practice.levelHeight), underside, odd: null };
}
