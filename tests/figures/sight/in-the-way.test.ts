import { describe, expect, test } from 'vitest';
import { figuresFor } from '../../../src/figures/figures-for';
import { destination } from '../../../src/figures/geometry/earth';
import type { ElevationGrid } from '../../../src/figures/sight/terrain';
import {
  contentsOf,
  feature,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
} from '../../support/contents';
import { once } from '../../support/once';

type Place = readonly [lng: number, lat: number];
const west: Place = [8.5, 47.4];
const east = destination(west, 90, 2400);
const ends = [
  { designator: '09', elevation: 400 },
  { designator: '27', elevation: 400 },
] as const;
/** m east of the western end and north of the runway. */
const at = (x: number, y: number): Place =>
  destination(destination(west, 90, x), y < 0 ? 180 : 0, Math.abs(y));
const block = (
  id: string,
  [x0, x1]: readonly [number, number],
  [y0, y1]: readonly [number, number],
  more = {},
) =>
  feature(id, 'obstacle', 'Polygon', [[at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1), at(x0, y0)]], {
    height: 30,
    sight: 'solid',
    ...more,
  });
const fence = (id: string, from: Place, to: Place, more = {}) =>
  feature(id, 'obstacle', 'LineString', [from, to], { height: 30, sight: 'solid', ...more });

/** A spot 300 m south of the middle of the runway. */
const stand = at(1200, -300);
const noon = Date.UTC(2026, 5, 21, 10, 30);

function seen(
  features: readonly unknown[],
  {
    instant = noon,
    spot = {},
    where = stand,
    zone = 'Europe/Zurich',
    terrain = null as ElevationGrid | null,
  } = {},
) {
  const contents = contentsOf(
    [runwayFeature('rwy', west, east, ends), spotFeature('spot', where, spot), ...features],
    { kit: plainKit, subjects: [plainSubject], site: { timeZone: zone, elevation: 400, reference: west } },
  );
  const [figures] = figuresFor(contents, instant, terrain).spots;
  const path = (name: string) => {
    const found = figures?.paths.find((p) => p.ref.path === `rwy/${name}`);
    if (!found) throw new Error(`expected ${name}`);
    return found;
  };
  return { ...figures, path, arrival: path('27/arrival'), departure: path('09/departure') };
}
/** With nothing in the way. */
const openField = once(() => seen([]));
/** A hangar between the spot and the runway's middle, 100 m wide and 60 m away. */
const hangar = block('hangar', [1150, 1250], [-240, -200]);

describe('what is in the way', () => {
  test('[F130] a building hides a stretch: it is named, and the shares count its length', () => {
    const open = openField();
    const { arrival, departure } = seen([hangar]);
    expect(open.arrival.hidden).toEqual([]);
    expect(open.arrival.visibleShare).toBe(1);
    // Seen from 300 m away the near side at 60 m, 50 m to either side, takes up 250 m to either side of the runway.
    const [stretch, ...more] = arrival.hidden;
    expect(more).toEqual([]);
    expect(stretch?.by).toBe('hangar');
    // The threshold of 27 is the eastern end, 1200 m before the middle: stations are negative there.
    // The fin tip follows 13.5 m behind the centre, and is hidden as late.
    expect(stretch?.from).toBe(-980);
    // The roll-out ends in the middle, before the hangar does.
    expect(stretch?.to).toBeCloseTo(-1190.8, 1);
    const usable = open.arrival.sector.runs.flatMap((r) => r.bearings).length;
    const inSight = arrival.sector.runs.flatMap((r) => r.bearings).length;
    expect(usable - inSight).toBe(12);
    expect(arrival.visibleShare).toBeGreaterThan(1 - 13 / usable);
    expect(arrival.visibleShare).toBeLessThan(1 - 11 / usable);
    expect(departure.hidden).toMatchObject([{ from: 980, to: 1440, by: 'hangar' }]);
  });

  test('[F131] best is never behind it; closest is over all samples, hidden or not', () => {
    const open = openField();
    const { arrival } = seen([hangar]);
    expect(arrival.closest.station).toBe(open.arrival.closest.station);
    expect(arrival.closest.score).toMatchObject({ sight: 0, total: 0 });
    expect(arrival.closest.hiddenBy).toBe('hangar');
    expect(arrival.closest.slantRange).toBe(open.arrival.closest.slantRange);
    expect(arrival.best.score.sight).toBe(1);
    expect(arrival.best.score.total).toBeGreaterThan(0);
    expect(Math.abs(arrival.best.station + 1200)).toBeGreaterThan(250);
    // Not at night either, when all totals are nothing.
    const night = seen([hangar], { instant: Date.UTC(2026, 11, 21, 23) }).arrival;
    expect(night.best.score.total).toBe(0);
    expect(night.best.score.sight).toBeGreaterThan(0);
    // With everything hidden there is no better one.
    const all = seen([block('ring', [1100, 1300], [-400, -200], { height: 900 })]).arrival;
    expect(all.best.station).toBe(all.closest.station);
    expect(all.best.score.total).toBe(0);
    expect(all.visibleShare).toBe(0);
  });

  test('[F132] wheels, centre and fin tip count one by one', () => {
    // Just high enough for the wheels of what rolls past, then for the centre, then for the fin.
    const share = (height: number) => {
      const { sector, closest } = seen([block('low', [900, 1500], [-160, -150], { height })]).departure;
      return sector.runs.flatMap((run) => run.from).length && closest.score.sight;
    };
    // From 1.7 m over a wall halfway: hidden is what lies below twice the wall's height, less the eye's.
    expect(share(0.8)).toBe(1);
    expect(share(1.2)).toBeCloseTo(2 / 3, 12);
    expect(share(3.6)).toBeCloseTo(1 / 3, 12);
    expect(share(5.6)).toBe(0);
  });

  test('[F133] mesh hides nothing and is named; what is behind a wall is not seen through it', () => {
    const line = [at(0, -250), at(2400, -250)] as const;
    const { arrival } = seen([fence('net', ...line, { height: 4, sight: 'mesh' })]);
    expect(arrival.visibleShare).toBe(1);
    expect(arrival.hidden).toEqual([]);
    expect(arrival.through).toEqual(['net']);
    expect(arrival.closest.score.sight).toBe(1);
    const behind = seen([
      fence('wall', at(0, -270), at(2400, -270), { height: 60 }),
      fence('net', ...line, { height: 4, sight: 'mesh' }),
    ]).arrival;
    expect(behind.through).toEqual([]);
    expect(behind.hidden.map((h) => h.by)).toContain('wall');
  });

  test('[F134] leaves hide in their months, by the calendar of the site', () => {
    const leaf = (leafMonths: readonly number[]) =>
      block('trees', [1150, 1250], [-240, -200], { sight: 'leaf', leafMonths });
    const share = (months: readonly number[], instant: number, zone: string) =>
      seen([leaf(months)], { instant, zone }).arrival.visibleShare;
    expect(share([5, 6, 7], noon, 'UTC')).toBeLessThan(1);
    expect(share([5, 6, 7], Date.UTC(2026, 0, 15), 'UTC')).toBe(1);
    // The last hours of April in UTC are May in Tokyo.
    const lastOfApril = Date.UTC(2026, 3, 30, 20);
    expect(share([5], lastOfApril, 'UTC')).toBe(1);
    expect(share([5], lastOfApril, 'Asia/Tokyo')).toBeLessThan(1);
    // Not said: in leaf from April to October in the north.
    expect(share([], noon, 'UTC')).toBeLessThan(1);
    expect(share([], Date.UTC(2026, 0, 15), 'UTC')).toBe(1);
  });

  test('[F135] it stands on its base, else on the ground of the nearest runway', () => {
    const hidden = (more: object) =>
      seen([block('low', [1150, 1250], [-240, -200], { height: 20, ...more })]).arrival.hidden.length;
    expect(hidden({})).toBe(1);
    expect(hidden({ base: 400 })).toBe(1);
    expect(hidden({ base: 370 })).toBe(0);
    // What has its foot above the eye hides down to the ground all the same.
    expect(hidden({ base: 430 })).toBe(1);
  });

  test('[F136] who stands on a roof looks over its edge, who stands below it sees nothing', () => {
    const deck = block('deck', [1100, 1300], [-400, -250], { height: 9.5 });
    const above = seen([deck], { spot: { eyeHeight: 11 } });
    expect(above.arrival.hidden).toEqual([]);
    expect(above.arrival.visibleShare).toBe(1);
    const below = seen([deck], { spot: { eyeHeight: 1.7 } });
    expect(below.arrival.visibleShare).toBeLessThan(0.6);
    // From outside the same deck hides as any block does.
    const outside = seen([deck], { where: at(1200, -420), spot: { eyeHeight: 1.7 } });
    expect(outside.arrival.hidden).toMatchObject([{ by: 'deck' }]);
  });

  test('[F137] holes in a block are open ground', () => {
    const ring = (x0: number, x1: number, y0: number, y1: number) =>
      [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1), at(x0, y0)] as const;
    const court = feature(
      'court',
      'obstacle',
      'Polygon',
      [ring(1000, 1400, -500, -100), [...ring(1100, 1300, -400, -200)].reverse()],
      { height: 0.5, sight: 'solid' },
    );
    // Standing in the court, eyes above its walls: what rolls past is seen over them down to the wheels.
    expect(seen([court]).arrival.visibleShare).toBe(1);
    // Eyes below them see nothing of it.
    expect(seen([court], { spot: { eyeHeight: 0.3 } }).arrival.closest.score.sight).toBeLessThan(1);
  });

  test('[F138] the first obstacle on the line is named, and each stretch has its own', () => {
    const { departure } = seen([
      block('far', [900, 1500], [-120, -110]),
      block('near', [1150, 1250], [-240, -200]),
    ]);
    expect(departure.hidden.map((h) => h.by)).toEqual(['far', 'near', 'far']);
    const [first, middle, last] = departure.hidden;
    expect(first?.to).toBe((middle?.from ?? NaN) - 20);
    expect(last?.from).toBe((middle?.to ?? NaN) + 20);
  });

  test('[F139] glare that is hidden is none, and the caution stays', () => {
    // Evening: the sun stands over the western end, low.
    const evening = Date.UTC(2026, 5, 21, 18, 45);
    const open = seen([], { instant: evening }).path('27/departure');
    const glaring = open.glareShare ?? 0;
    expect(glaring).toBeGreaterThan(0);
    const walls = [fence('high', at(600, -290), at(1100, 100), { height: 120 })];
    const hidden = seen(walls, { instant: evening });
    expect(hidden.sunHiddenBy).toBe('high');
    expect(hidden.path('27/departure').glareShare).toBe(0);
    const near = (figures: typeof open) => [figures.closest, figures.best].map((s) => s.sunNear);
    expect(near(hidden.path('27/departure'))[0]).toBe(near(open)[0]);
    // A low wall hides neither.
    const low = seen([fence('low', at(600, -290), at(1100, 100), { height: 1 })], { instant: evening });
    expect(low.sunHiddenBy).toBeNull();
    expect(low.path('27/departure').glareShare).toBeCloseTo(glaring, 12);
  });
});

/** A model of the ground 4 km to each side: level but for a ridge along the runway, between it and the spot. */
function ridge(high: number, level = 400): ElevationGrid {
  const [step, half] = [0.00025, 160];
  const size = 2 * half + 1;
  const [lng, lat] = stand;
  const crest = at(1200, -150)[1];
  const heights = Float32Array.from({ length: size * size }, (_, i) => {
    const north = (lat + half * step - Math.floor(i / size) * step - crest) * 111_200;
    return level + high * Math.exp(-(north * north) / (2 * 30 ** 2));
  });
  return {
    columns: size,
    rows: size,
    west: lng - half * step,
    north: lat + half * step,
    stepLng: step,
    stepLat: step,
    heights,
  };
}

describe('terrain in the way', () => {
  test('[F140] a ridge hides what it is higher than, and is named', () => {
    expect(seen([], { terrain: ridge(0) }).arrival.hidden).toEqual([]);
    const { arrival, departure, groundFrom, ground } = seen([], { terrain: ridge(14) });
    expect(groundFrom).toBe('terrain');
    expect(ground).toBeCloseTo(400, 0);
    expect(arrival.hidden.map((h) => h.by)).toEqual(['terrain']);
    expect(departure.closest.hiddenBy).toBe('terrain');
    expect(departure.best.score.sight).toBeGreaterThan(0);
    expect(departure.visibleShare).toBeLessThan(0.9);
  });

  test('[F141] the ground under a spot is its own word, else the terrain, else the runway', () => {
    const terrain = ridge(0, 412);
    expect(seen([], { terrain })).toMatchObject({ groundFrom: 'terrain', ground: 412 });
    expect(seen([], { terrain, spot: { ground: 405 } })).toMatchObject({ groundFrom: 'stated', ground: 405 });
    expect(seen([], { terrain, where: at(1200, -9000) })).toMatchObject({
      groundFrom: 'runway',
      ground: 400,
    });
  });

  test('[F142] obstacles stand on the terrain, runways do not move', () => {
    const terrain = ridge(0, 390);
    const open = openField();
    const hut = (more: object) =>
      seen([block('hut', [1150, 1250], [-240, -200], { height: 6, ...more })], { terrain });
    // Eye and hut stand 10 m lower, the aircraft where they were: the hut hides what rolls.
    expect(hut({}).arrival.closest.height).toBe(open.arrival.closest.height);
    expect(hut({}).arrival.hidden.map((h) => h.by)).toEqual(['hut']);
    expect(hut({ base: 382 }).arrival.hidden).toEqual([]);
  });

  test('[F143] where the model has no data it hides nothing', () => {
    const holed = ridge(60);
    const terrain = { ...holed, heights: holed.heights.map((h) => (h > 401 ? NaN : h)) };
    expect(seen([], { terrain }).arrival.hidden).toEqual([]);
    const blank = { ...holed, heights: holed.heights.map(() => NaN) };
    expect(seen([], { terrain: blank })).toMatchObject({ groundFrom: 'runway', ground: 400 });
  });
});
