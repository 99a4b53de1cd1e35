import { groundLine } from '../figures/geometry/earth';
import type { Position, Survey, SurveyFeature } from '../survey/document';
import { isObject, type Json } from '../survey/json';
import { kindOf } from '../survey/read-feature';

/** m within which every vertex of two features has to lie for them to be one thing; both ends of a runway. CP. */
const near = { vertex: 15, runwayEnd: 50 } as const;

/** A thing of theirs that is one of mine under another id. */
export interface SameThing {
  readonly theirs: string;
  readonly mine: string;
  /** A runway drawn the other way round: its first end is my second. */
  readonly reversed: boolean;
}

/**
 * Things that both have drawn without knowing of each other: of one kind, named alike and in one place. Each is
 * matched once, the nearest first. Log entries are never one: two people saw two passes.
 */
export function sameThings(mine: Survey, theirs: Survey, base: Survey | null): readonly SameThing[] {
  const known = new Set([...(base?.features ?? []).map(({ id }) => id)]);
  const strangers = (here: Survey, there: Survey) => {
    const taken = new Set(there.features.map(({ id }) => id));
    return here.features.filter(({ id }) => !taken.has(id) && !known.has(id));
  };
  const pairs = byName(strangers(mine, theirs), strangers(theirs, mine));
  const found = pairs.flatMap(([m, t]) => {
    const match = matched(m, t);
    return match ? [{ ...match, mine: m.id, theirs: t.id }] : [];
  });
  found.sort((p, q) => p.apart - q.apart);
  const taken = new Set<string>();
  return found.flatMap(({ mine: m, theirs: t, reversed }) => {
    if (taken.has(`m ${m}`) || taken.has(`t ${t}`)) return [];
    taken.add(`m ${m}`).add(`t ${t}`);
    return [{ mine: m, theirs: t, reversed }];
  });
}

/** Runways of both under one id that they have drawn the other way round since. */
export function turnedRunways(mine: Survey, theirs: Survey): readonly SameThing[] {
  const mineById = new Map(mine.features.map((feature) => [feature.id, feature]));
  return theirs.features.flatMap((feature) => {
    const own = mineById.get(feature.id);
    if (!own || kindOf(own) !== 'runway' || kindOf(feature) !== 'runway') return [];
    return matched(own, feature)?.reversed ? [{ mine: own.id, theirs: own.id, reversed: true }] : [];
  });
}

/** Pairs of one kind and name; so only few distances are measured. */
function byName(
  mine: readonly SurveyFeature[],
  theirs: readonly SurveyFeature[],
): readonly (readonly [SurveyFeature, SurveyFeature])[] {
  const named = new Map<string, SurveyFeature[]>();
  for (const feature of theirs) {
    const sign = signOf(feature);
    if (sign !== null) named.set(sign, [...(named.get(sign) ?? []), feature]);
  }
  return mine.flatMap((feature) => {
    const sign = signOf(feature);
    return sign === null ? [] : (named.get(sign) ?? []).map((other) => [feature, other] as const);
  });
}

function signOf(feature: SurveyFeature): string | null {
  const kind = kindOf(feature);
  const name = feature.properties?.['name'];
  if (kind === null || kind === 'log-entry' || typeof name !== 'string') return null;
  const plain = name.trim().replace(/\s+/g, ' ').toLowerCase();
  // "25/07" is the runway "07/25" drawn from its other end.
  const sign = kind === 'runway' ? plain.split('/').sort().join('/') : plain;
  return plain === '' ? null : `${kind} ${JSON.stringify(feature.geometry?.['type'])} ${sign}`;
}

function matched(
  mine: SurveyFeature,
  theirs: SurveyFeature,
): { readonly apart: number; readonly reversed: boolean } | null {
  const [m, t] = [verticesOf(mine), verticesOf(theirs)];
  if (m.length === 0 || m.length !== t.length) return null;
  const runway = kindOf(mine) === 'runway';
  const within = runway ? near.runwayEnd : near.vertex;
  const apart = (order: readonly Position[]) =>
    Math.max(...order.map((p, i) => groundLine(m[i] as Position, p).distance));
  const ways = runway ? [t, [...t].reverse()] : mine.geometry?.['type'] === 'Polygon' ? turned(t) : [t];
  const distances = ways.map(apart);
  const least = Math.min(...distances);
  return least <= within ? { apart: least, reversed: runway && distances[0] !== least } : null;
}

/** Where a ring begins, and which way round it runs, means nothing. */
function turned(ring: readonly Position[]): readonly (readonly Position[])[] {
  const open = ring.slice(0, -1);
  return open.flatMap((_, i) => {
    const from = [...open.slice(i), ...open.slice(0, i)];
    const back = [...from].reverse();
    return [from, back].map((way) => [...way, way[0] as Position]);
  });
}

/** The positions of a point, a line or a polygon without holes; none where anything is odd. */
function verticesOf({ geometry }: SurveyFeature): readonly Position[] {
  if (!isObject(geometry)) return [];
  const { type, coordinates } = geometry;
  const lists =
    type === 'Point'
      ? [coordinates]
      : type === 'Polygon' && Array.isArray(coordinates) && coordinates.length === 1
        ? (coordinates[0] as Json)
        : type === 'LineString'
          ? coordinates
          : [];
  if (!Array.isArray(lists) || lists.length > 500) return [];
  const good = (lists as readonly Json[]).filter(isPosition);
  return good.length === lists.length ? good : [];
}

const isPosition = (value: Json | undefined): value is Position & Json =>
  Array.isArray(value) && value.length >= 2 && value.every((number) => Number.isFinite(number));
