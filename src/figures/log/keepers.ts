import type { Contents } from '../../survey/contents';
import type { LogEntry } from '../../survey/schema/log-entry';
import { lensName } from '../../survey/lens-name';
import { minuteOfDay, parseInstant } from '../../time/local-time';
import { rangesOf } from '../optics/reach';
import { beyondEveryLens } from './beyond-every-lens';
import { keeper } from './practice';

/** Passes of one spot, hour, light or lens, and those among them that were worth keeping (rated 3 or more). */
export interface KeeperRow {
  readonly key: string;
  readonly passes: number;
  readonly keepers: number;
}

export const keeperGroups = ['spot', 'hour', 'light', 'lens'] as const;
export type KeeperGroup = (typeof keeperGroups)[number];

/** How often what was photographed was worth keeping; rows in the order of hours, else the most keepers first. */
export function keepersBy(
  group: KeeperGroup,
  contents: Pick<Contents, 'logEntries' | 'site' | 'kit'>,
): readonly KeeperRow[] {
  const rows = new Map<string, { passes: number; keepers: number }>();
  for (const entry of contents.logEntries) {
    const key = keyOf[group](entry, contents);
    if (key === null) continue;
    const row = rows.get(key) ?? { passes: 0, keepers: 0 };
    row.passes++;
    if ((entry.kept ?? 0) >= keeper) row.keepers++;
    rows.set(key, row);
  }
  const all = [...rows].map(([key, row]): KeeperRow => ({ key, ...row }));
  return group === 'hour'
    ? all.toSorted((a, b) => Number(a.key) - Number(b.key))
    : all.toSorted((a, b) => b.keepers - a.keepers || b.passes - a.passes || (a.key < b.key ? -1 : 1));
}

type Around = Pick<Contents, 'site' | 'kit'>;
/** Id of the spot, hour of the airfield's clock, class of the light, name of the kit's lens; null is counted nowhere. */
const keyOf: Record<KeeperGroup, (entry: LogEntry, around: Around) => string | null> = {
  spot: ({ spot }) => spot,
  hour: ({ time }, { site }) => {
    const instant = time === null ? null : parseInstant(time);
    return instant === null ? null : String(Math.floor(minuteOfDay(instant, site.timeZone) / 60));
  },
  light: ({ predicted }) => predicted.light,
  lens: ({ settings: { focalLength } }, { kit }) => {
    const lens =
      focalLength === null ? null : kit.lenses.find((l) => !beyondEveryLens(focalLength, rangesOf(l)));
    return lens ? lensName(lens) : null;
  },
};
