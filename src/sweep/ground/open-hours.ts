import type { Contents } from '../../survey/contents';
import { openInstants } from '../../figures/access/open-instants';
import { mapped, type Frame } from '../../figures/geometry/earth';
import { atSpot } from '../practice';

/** At which of the instants people are let in: by the hours of a spot of the survey where one stands at it, else by the field's. */
export class OpenHours {
  readonly #field: Uint8Array;
  readonly #spots: readonly { readonly x: number; readonly y: number; readonly open: Uint8Array }[];

  constructor({ site, rules, spots }: Contents, frame: Frame, instants: readonly number[]) {
    const { timeZone } = site;
    this.#field = openInstants(rules.hours, instants, { position: site.reference, timeZone });
    this.#spots = spots.flatMap(({ access: { hours }, position }) => {
      if (hours === null) return [];
      const [x, y] = mapped(frame, position);
      return [{ x, y, open: openInstants(hours, instants, { position, timeZone }) }];
    });
  }

  /** 1 for each instant at which one may be there. */
  at(x: number, y: number): Uint8Array {
    let [open, least] = [this.#field, atSpot];
    for (const spot of this.#spots) {
      const away = Math.hypot(spot.x - x, spot.y - y);
      if (away <= least) [open, least] = [spot.open, away];
    }
    return open;
  }
}
