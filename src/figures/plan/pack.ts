import type { Contents } from '../../survey/contents';
import type { Body, Lens } from '../../survey/schema/kit';
import type { Rules } from '../../survey/schema/rules';
import type { Permission, StandingSpot } from '../../survey/schema/standing-spot';
import { dateAt } from '../../time/local-time';
import { holdsOn } from '../access/holds-on';
import { ladderAt } from '../access/ladder-at';
import { mayStand } from '../access/may-stand';
import { batteryHours, framesPerHour } from '../practice';
import type { Stay } from './stays-of';

/** One thing to take along, and what it follows from. */
export type PackItem =
  | { readonly kind: 'body'; readonly body: Body }
  | {
      readonly kind: 'lens';
      readonly lens: Lens;
      readonly extenders: readonly number[];
      /** The paths that it is for, each named once. */
      readonly paths: readonly string[];
    }
  | { readonly kind: 'cards'; readonly frames: number }
  | { readonly kind: 'batteries'; readonly count: number }
  | { readonly kind: 'identification' }
  | { readonly kind: 'permission'; readonly spot: StandingSpot; readonly permission: Permission }
  | { readonly kind: 'ask-first'; readonly spot: StandingSpot }
  | { readonly kind: 'ladder'; readonly spot: StandingSpot; readonly said: string | null }
  | { readonly kind: 'tripod'; readonly rule: Rules['tripods'] }
  | { readonly kind: 'radio'; readonly rule: Rules['radio'] };

/**
 * What a day's stays need: the lenses of their windows and no others, cards and batteries by their hours, papers, a
 * ladder only where one may stand on it, a tripod where the settings ask for one and the field does not forbid it, a
 * radio receiver unless listening is forbidden.
 */
export function packFor(
  stays: readonly Stay[],
  { rules, site, body }: Pick<Contents, 'rules' | 'site' | 'body'>,
): PackItem[] {
  const windows = stays.flatMap((stay) => stay.windows);
  const hours = stays.reduce((sum, { from, to }) => sum + (to - from), 0) / 3_600_000;
  if (stays.length === 0) return [];
  const items: PackItem[] = [{ kind: 'body', body }, ...lensesOf(windows)];
  items.push(
    { kind: 'cards', frames: Math.max(1, Math.ceil((hours * framesPerHour) / 100)) * 100 },
    // One more than the hours take: cold, and forgetting to charge.
    { kind: 'batteries', count: Math.ceil(hours / batteryHours) + 1 },
    { kind: 'identification' },
  );
  const spots = new Map(
    stays.flatMap(({ spot, from }) => (spot ? [[spot.id, { spot, from }] as const] : [])),
  );
  for (const { spot, from } of spots.values()) {
    const { permission } = spot.access;
    const { status } = mayStand(spot, { rules, site }, from);
    if (permission && holdsOn(permission, dateAt(from, site.timeZone)))
      items.push({ kind: 'permission', spot, permission });
    else if (status === 'ask' || status === 'unknown') items.push({ kind: 'ask-first', spot });
    const ladder = ladderAt(spot, rules);
    if (ladder.may === 'yes' || ladder.may === 'as-said')
      items.push({ kind: 'ladder', spot, said: ladder.said });
  }
  const shaky = windows.some(({ settings }) => settings?.warnings.some(({ kind }) => kind === 'tripod'));
  if (shaky && rules.tripods !== 'forbidden') items.push({ kind: 'tripod', rule: rules.tripods });
  if (rules.radio !== 'forbidden') items.push({ kind: 'radio', rule: rules.radio });
  return items;
}

function lensesOf(windows: Stay['windows']): PackItem[] {
  const byKey = new Map<string, { lens: Lens; extenders: Set<number>; paths: Set<string> }>();
  for (const { lens: verdict, pathName } of windows) {
    if (!verdict) continue;
    const { lens, extender } = verdict;
    const entry = byKey.get(lens.key) ?? { lens, extenders: new Set<number>(), paths: new Set<string>() };
    if (extender !== null) entry.extenders.add(extender);
    entry.paths.add(pathName);
    byKey.set(lens.key, entry);
  }
  return [...byKey.values()].map(({ lens, extenders, paths }) => ({
    kind: 'lens',
    lens,
    extenders: [...extenders],
    paths: [...paths],
  }));
}
