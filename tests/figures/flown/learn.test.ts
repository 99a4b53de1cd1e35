import { describe, expect, it } from 'vitest';
import { learnFrom } from '../../../src/figures/flown/learn';
import { contentsOf } from '../../support/contents';
import {
  arrivalOf24,
  departureOf06,
  madeFlight,
  madeRunway,
  type MadePoint,
} from '../../support/made-flights';

const learned = (...flights: readonly unknown[]) => learnFrom(contentsOf([madeRunway.feature, ...flights]));
const times = <T>(count: number, make: (i: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, i) => make(i));

const arrival = { glide: 3.2, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1.5 };
const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 1.5 };
const arrivals = (count: number, change: Partial<typeof arrival> = {}) =>
  times(count, (i) => madeFlight(`a${i}`, arrivalOf24({ ...arrival, ...change, seed: i + 1 })));
const departures = (count: number) =>
  times(count, (i) => madeFlight(`d${i}`, departureOf06({ ...departure, seed: i + 1 })));

/** The second half of an arrival mirrored upwards: it comes down to 60 m and climbs away. */
const goAround = (i: number) =>
  madeFlight(
    `g${i}`,
    arrivalOf24({ ...arrival, seed: 900 + i }).map((p) => ({
      ...p,
      height: p.height < 245 ? 245 + (245 - p.height) * 3 : p.height,
    })),
  );

describe('[L10] what was put into made flights comes back', () => {
  it('arrivals: end, glide, height over the threshold, touchdown, line and speed', () => {
    const { flown, other } = learned(...arrivals(20));
    expect(other).toBe(0);
    expect(flown).toHaveLength(1);
    const [a] = flown;
    expect(a).toMatchObject({ runway: 'r1', end: 1, kind: 'arrival' });
    expect(a?.flights).toHaveLength(20);
    expect(a?.glide?.median).toBeCloseTo(3.2, 1);
    expect(Math.abs((a?.crossing?.median ?? NaN) - 21)).toBeLessThan(1);
    // The centre rolls 5 m above the pavement, so the wheels cross 16 m above it.
    expect(Math.abs((a?.wheels?.median ?? NaN) - 16)).toBeLessThan(1);
    // The glide meets the rolling height where (21 - 5) / (tan 3.2 degrees - slope of the pavement) is flown.
    const contact = 16 / (Math.tan((3.2 * Math.PI) / 180) + -6 / 2400);
    expect(Math.abs((a?.touchdown?.median ?? NaN) - contact)).toBeLessThan(45);
    const at2000 = a?.stations.find(({ station }) => station === 2000);
    expect(Math.abs((at2000?.height[1] ?? NaN) - (21 + 2000 * Math.tan((3.2 * Math.PI) / 180)))).toBeLessThan(
      1,
    );
    expect(Math.abs((at2000?.offset?.[1] ?? NaN) - 4)).toBeLessThan(1);
    expect(Math.abs((at2000?.speed ?? NaN) - 66)).toBeLessThan(1);
    expect(at2000?.height[0]).toBeLessThan(at2000?.height[1] ?? NaN);
    expect(at2000?.height[2]).toBeGreaterThan(at2000?.height[1] ?? NaN);
    expect(a?.stations.at(-1)?.station).toBe(6000);
  });

  it('departures: where they leave the ground, and how they climb', () => {
    const { flown } = learned(...departures(12));
    expect(flown).toHaveLength(1);
    expect(flown[0]).toMatchObject({ runway: 'r1', end: 0, kind: 'departure', glide: null, touchdown: null });
    expect(flown[0]?.gradient?.median).toBeCloseTo(0.09 - 0, 2);
    expect(Math.abs((flown[0]?.liftOff?.median ?? NaN) - 1280)).toBeLessThan(40);
  });

  it('circuits are arrivals and departures in one: their final tells the glide', () => {
    const circuit = (i: number): readonly MadePoint[] => {
      const out = departureOf06({ ...departure, gradient: 0.09, speed: 50, noise: 0.5, seed: i })
        .filter(({ along }) => along < 3500)
        .map((p) => ({ ...p, height: Math.min(p.height, 480) }));
      const turn = (from: MadePoint, along: number, offset: number, height: number): MadePoint => ({
        along,
        offset,
        height,
        time: from.time + Math.hypot(along - from.along, offset - from.offset) / 50,
      });
      const path = [...out];
      const fly = (along: number, offset: number, height: number) => {
        const from = path.at(-1) as MadePoint;
        for (let k = 1; k <= 20; k++)
          path.push(
            turn(
              path.at(-1) as MadePoint,
              from.along + ((along - from.along) * k) / 20,
              from.offset + ((offset - from.offset) * k) / 20,
              from.height + ((height - from.height) * k) / 20,
            ),
          );
      };
      fly(3500, -1400, 480);
      fly(-2600, -1400, 480);
      fly(-2600, 0, 180 + 21 + 2600 * Math.tan((4 * Math.PI) / 180));
      fly(-10, 0, 202);
      fly(290, 0, 186);
      fly(1500, 0, 186);
      return path;
    };
    const { flown, other } = learned(...times(6, (i) => madeFlight(`c${i}`, circuit(i + 1))));
    expect(other).toBe(0);
    expect(flown.map(({ kind, end }) => [kind, end])).toEqual([['circuit', 0]]);
    expect(Math.abs((flown[0]?.glide?.median ?? NaN) - 4)).toBeLessThan(0.15);
    // 3 km of final, base and downwind still to fly: on base, whose offset says nothing of the line.
    expect(flown[0]?.stations.find(({ station }) => station === 3000)?.offset).toBeNull();
  });
});

describe('[L11] what practitioners would argue about', () => {
  it('go-arounds, crossings and flights that were lost at 300 m are counted and teach nothing', () => {
    const lost = madeFlight(
      'lost',
      arrivalOf24({ ...arrival, seed: 77 }).filter(({ along }) => along > 6500),
    );
    const crossing = madeFlight(
      'crossing',
      times(60, (i) => ({ along: 1200, offset: -3000 + i * 100, height: 900, time: i })),
    );
    const plain = learned(...arrivals(9)).flown[0];
    const { flown, other } = learned(...arrivals(9), goAround(1), goAround(2), lost, crossing);
    expect(other).toBe(4);
    expect(flown[0]).toEqual(plain);
  });

  it('three flights in feet as metres, or on another height system by 40 m, do not move the medians of twelve', () => {
    const plain = learned(...arrivals(12)).flown[0]?.glide?.median ?? NaN;
    const wrong = times(3, (i) =>
      madeFlight(
        `w${i}`,
        arrivalOf24({ ...arrival, seed: 300 + i }).map((p) => ({ ...p, height: p.height * 3.28084 })),
      ),
    );
    const high = times(3, (i) =>
      madeFlight(
        `h${i}`,
        arrivalOf24({ ...arrival, seed: 400 + i }).map((p) => ({ ...p, height: p.height + 40 })),
      ),
    );
    const { flown, other } = learned(...arrivals(12), ...wrong, ...high);
    expect(other).toBe(6);
    expect(flown[0]?.glide?.median).toBeCloseTo(plain, 9);
  });

  it('four arrivals are stories, five are a habit', () => {
    expect(learned(...arrivals(4))).toMatchObject({
      flown: [],
      few: [{ runway: 'r1', end: 1, kind: 'arrival', flights: 4 }],
    });
    expect(learned(...arrivals(5)).flown).toHaveLength(1);
  });

  it('without times nobody knows the speed, and all else is known', () => {
    const untimed = times(6, (i) => madeFlight(`u${i}`, arrivalOf24({ ...arrival, seed: i + 1 }), false));
    const { flown } = learned(...untimed);
    expect(flown[0]?.glide).not.toBeNull();
    expect(flown[0]?.stations.every(({ speed }) => speed === null)).toBe(true);
  });

  it('joining at 800 m tells no glide: under a kilometre of it anything fits', () => {
    const late = times(6, (i) =>
      madeFlight(
        `l${i}`,
        arrivalOf24({ ...arrival, seed: i + 1 }).map((p) =>
          p.along > 2900 ? { ...p, offset: (p.along - 2900) * 2 } : p,
        ),
      ),
    );
    expect(learned(...late).flown[0]?.glide).toBeNull();
  });

  it('a drawn path is what somebody meant, not what flew', () => {
    const drawn = arrivals(6).map((f) => ({ ...f, properties: { ...f.properties, source: 'drawn' } }));
    expect(learned(...drawn)).toEqual({ flown: [], few: [], uses: [], other: 0 });
  });

  it('taxiing about for an hour is no flight', () => {
    const taxi = madeFlight(
      't',
      times(50, (i) => ({ along: 200 + 20 * i, offset: 0, height: 186, time: i * 10 })),
    );
    expect(learned(taxi).other).toBe(1);
  });
});
