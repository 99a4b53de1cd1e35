import type { StandingSpot } from '../../survey/schema/standing-spot';
import { moveWorth } from '../practice';
import { dayStepMinutes, type DayRow } from '../when/day-rows';
import { worthwhile } from './windows';

/** A stay at a spot and the path that is worth most there, in steps of the day (`to` excluded). */
export interface Stay {
  readonly spot: StandingSpot;
  readonly row: DayRow;
  readonly from: number;
  readonly to: number;
  /** The move that leads here from the stay before, null at the first and where one stays. */
  readonly move: { readonly from: StandingSpot; readonly minutes: number } | null;
}

interface Place {
  readonly spot: StandingSpot;
  readonly rows: readonly { readonly row: DayRow; readonly gain: Float64Array }[];
  /** The most that any of its paths gives at each step. */
  readonly most: Float64Array;
}

/**
 * The ladder of the day: where to stand when, so that the day brings most, moves counted with their time, in which
 * nothing is photographed. Worked out from the evening backwards: at every step one stays, or leaves for where the
 * rest of the day is worth more by at least a quarter of an hour of perfect pictures.
 */
export function ladderOf(
  rows: readonly { readonly row: DayRow; readonly gain: Float64Array }[],
  minutesBetween: (a: StandingSpot, b: StandingSpot) => number,
): Stay[] {
  const places = placesOf(rows);
  const steps = places[0]?.most.length ?? 0;
  if (places.length === 0 || steps === 0) return [];
  const cost = places.map((a) =>
    places.map((b) =>
      a === b ? 0 : Math.max(1, Math.ceil(minutesBetween(a.spot, b.spot) / dayStepMinutes)),
    ),
  );
  const penalty = (moveWorth * 60) / dayStepMinutes;
  const rest = Array.from({ length: steps + 1 }, () => new Float64Array(places.length));
  const goes = Array.from({ length: steps }, () => new Int16Array(places.length));
  for (let t = steps - 1; t >= 0; t--) {
    places.forEach(({ most }, s) => {
      let [value, to] = [(most[t] as number) + (rest[t + 1]?.[s] as number), s];
      places.forEach((_, j) => {
        const arrive = t + (cost[s]?.[j] as number);
        if (j === s || arrive >= steps) return;
        const there = (rest[arrive]?.[j] as number) - penalty;
        if (there > value + 1e-9) [value, to] = [there, j];
      });
      (rest[t] as Float64Array)[s] = value;
      (goes[t] as Int16Array)[s] = to;
    });
  }
  const begin = rest[0] as Float64Array;
  let at = begin.indexOf(Math.max(...begin));
  const path: Visit[] = [];
  for (let t = 0, from = 0; t < steps;) {
    const to = goes[t]?.[at] as number;
    if (to === at) {
      t++;
      if (t === steps) path.push({ place: at, from, to: t });
      continue;
    }
    path.push({ place: at, from, to: t });
    t += cost[at]?.[to] as number;
    at = to;
    from = t;
  }
  return staysOf(path, places, minutesBetween);
}

interface Visit {
  readonly place: number;
  readonly from: number;
  readonly to: number;
}

function placesOf(rows: readonly { readonly row: DayRow; readonly gain: Float64Array }[]): Place[] {
  const spots = [...new Set(rows.map(({ row }) => row.spot))];
  return spots.map((spot) => {
    const here = rows.filter(({ row }) => row.spot === spot);
    const most = Float64Array.from(here[0]?.gain ?? [], (_, t) =>
      Math.max(...here.map(({ gain }) => gain[t] as number)),
    );
    return { spot, rows: here, most };
  });
}

/** The worthwhile stretches of the visits. A visit without one is passed over. */
function staysOf(
  visits: readonly Visit[],
  places: readonly Place[],
  minutesBetween: (a: StandingSpot, b: StandingSpot) => number,
): Stay[] {
  const stays: Stay[] = [];
  for (const visit of visits) {
    const { spot, rows, most } = places[visit.place] as Place;
    for (const [a, b] of worthwhile(most.slice(visit.from, visit.to))) {
      const [from, to] = [visit.from + a, visit.from + b];
      const sum = (gain: Float64Array) => gain.subarray(from, to).reduce((x, y) => x + y, 0);
      const [row] = rows.toSorted((x, y) => sum(y.gain) - sum(x.gain));
      if (!row) continue;
      const before = stays.at(-1)?.spot;
      const move = before && before !== spot ? { from: before, minutes: minutesBetween(before, spot) } : null;
      stays.push({ spot, row: row.row, from, to, move });
    }
  }
  return stays;
}
