import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { destination } from '../../src/figures/geometry/earth';
import { moonAt } from '../../src/figures/light/moon';
import { bundled } from '../support/bundle';
import { feature, plainKit, plainSubject, runwayFeature, spotFeature, surveyText } from '../support/contents';
import { browserWith } from './page';
import type * as Tested from './viewfinder-page';
import type { Wanted } from './viewfinder-page';

declare const tested: typeof Tested;

let page: Page;
beforeAll(async () => {
  const [browser, code] = await Promise.all([browserWith(true), bundled('browser/viewfinder-page.ts')]);
  page = await browser.newPage();
  await page.addScriptTag({ content: code });
}, 60_000);
afterAll(() => page.context().close());

const spot = [8.56, 47.45] as const;
/** 14:00 local: the sun in the south-west, 54 degrees up. And 05:30 UTC: 15 degrees up, east-north-east. */
const afternoon = Date.parse('2026-06-21T13:00:00Z');
const morning = Date.parse('2026-06-21T05:30:00Z');

const subjects = [
  { ...plainSubject, key: 'jet', length: 37.6, span: 34.1, height: 11.8, engines: 2, wing: 'low' },
  { ...plainSubject, key: 'business', length: 14.4, span: 15.9, height: 4.6, engines: 2 },
  {
    ...plainSubject,
    key: 'single',
    propulsion: 'propeller',
    length: 8.3,
    span: 11,
    height: 2.7,
    wing: 'high',
    engines: 1,
    rpm: 2400,
  },
  {
    ...plainSubject,
    key: 'turboprop',
    propulsion: 'propeller',
    length: 27.2,
    span: 27,
    height: 7.6,
    wing: 'high',
    engines: 2,
    rpm: 1200,
  },
  { ...plainSubject, key: 'glider', propulsion: 'none', length: 8.4, span: 17, height: 1.55, engines: 0 },
  {
    ...plainSubject,
    key: 'helicopter',
    propulsion: 'rotor',
    length: 12.9,
    span: 10.7,
    height: 3.3,
    rpm: 390,
    blades: 3,
  },
];

const kit = {
  ...plainKit,
  lenses: [{ key: 'any', name: 'Any', shortest: 10, longest: 3000, widestAperture: 4 }],
};

/** A parked subject 250 m north of the spot, facing `heading`, with other things round it. */
function parked(heading: number, ...others: readonly unknown[]): string {
  const middle = destination(spot, 0, 250);
  const ring = [45, 135, 225, 315, 45].map((b) => destination(middle, b, 60));
  const apron = feature('stand', 'apron', 'Polygon', [ring], { heading });
  return surveyText([spotFeature('s', spot, { ground: 0, eyeHeight: 2 }), apron, ...others], {
    subjects,
    kit,
  });
}
/** The same place passed in flight, rotor turning: `heading` as above. */
function passing(heading: number): string {
  const middle = destination(spot, 0, 250);
  const line = [destination(middle, heading + 180, 160), destination(middle, heading, 160)];
  const path = feature('pass', 'flight-path', 'LineString', line, { heights: [1, 1], source: 'drawn' });
  const survey = JSON.parse(parked(heading)) as { features: unknown[] };
  return JSON.stringify({ ...survey, features: [survey.features[0], path] });
}
const wall = (away: number, height: number, sight = 'solid') =>
  feature(
    'wall',
    'obstacle',
    'LineString',
    [-60, 60].map((east) => destination(destination(spot, 0, away), 90, east)),
    {
      height,
      sight,
    },
  );
const measure = (wanted: Partial<Wanted>) =>
  page.evaluate((w) => tested.measure(w), {
    survey: parked(270),
    spot: 's',
    path: 'stand',
    at: afternoon,
    subject: 'jet',
    width: 450,
    height: 300,
    ...wanted,
  } satisfies Wanted);

/** A display line 250 m north of the spot, flown past it level and banked, each both ways. */
function banked(): string {
  const middle = destination(spot, 0, 250);
  const line = [destination(middle, 270, 600), destination(middle, 90, 600)];
  const show = feature('show', 'display-line', 'LineString', line, {
    passes: ['level', 'topside', 'underside'],
    speed: 80,
  });
  const survey = JSON.parse(parked(270)) as { features: unknown[] };
  const crowd = feature('crowd', 'crowd-line', 'LineString', [spot, destination(spot, 90, 20)]);
  return JSON.stringify({ ...survey, features: [survey.features[0], show, crowd] });
}

describe('the viewfinder agrees with the figures', () => {
  test.each(['level', 'topside', 'underside'])(
    '[V8] %s, a jet abeam on a display line: as wide and as high as it is framed, to 3 %',
    async (pass) => {
      const { measured, fill } = await measure({
        survey: banked(),
        subject: 'business',
        path: `show/${pass}/forward`,
        station: pass === 'underside' ? 1200 + (80 ** 2 * Math.PI) / (4 * 9.80665 * Math.sqrt(3)) : 2600,
      });
      const { box } = measured;
      if (!box) throw new Error('expected an aircraft in the frame');
      const shares = [(box.right - box.left) / 450, (box.bottom - box.top) / 300];
      expect(Math.abs(Math.max(...shares) / fill - 1)).toBeLessThan(0.03);
      // Level it is a thin thing across the frame; banked by 60 degrees its wings take much of the height.
      if (pass === 'level') expect(shares[1]).toBeLessThan(0.6);
      else expect(shares[1]).toBeGreaterThan(0.6);
    },
  );

  test('[V13] an arrowhead of three fills the frame together, to 3 %, each drawn where it flies', async () => {
    const look = async (aircraft: number, part: 'formation' | 'whole') => {
      const survey = banked().replace('"speed":80', `"speed":80,"aircraft":${aircraft},"spacing":30`);
      const hold = { portrait: false, part };
      const wanted = { survey, subject: 'business', path: 'show/level/forward', station: 2600, hold };
      return measure(wanted);
    };
    const [three, one] = [await look(3, 'formation'), await look(1, 'whole')];
    const { box } = three.measured;
    if (!box) throw new Error('expected aircraft in the frame');
    const shares = [(box.right - box.left) / 450, (box.bottom - box.top) / 300];
    expect(Math.abs(Math.max(...shares) / three.fill - 1)).toBeLessThan(0.03);
    // All of them within it, the group in its middle.
    expect(Math.abs((box.left + box.right) / 2 - 225)).toBeLessThan(3);
    // What is drawn is a little lower than the points by which it is framed.
    expect(Math.abs((box.top + box.bottom) / 2 - 150)).toBeLessThan(7);
    // Three of the size that one would have at this focal length; what overlaps is counted once.
    const scale = (three.needed ?? NaN) / (one.needed ?? NaN);
    const drawn = three.measured.all / (one.measured.all * scale ** 2);
    expect(drawn).toBeGreaterThan(2.5);
    expect(drawn).toBeLessThan(3.4);
  });

  test.each(subjects.map((s) => s.key))(
    '[V1] %s: as wide as it is framed, to 2 %, from the side, nose-on and tail-on, landscape and portrait',
    async (subject) => {
      const looks = [
        [270, false],
        [180, false],
        [0, false],
        [90, true],
      ] as const;
      for (const [heading, portrait] of looks) {
        const [width, height] = portrait ? [300, 450] : [450, 300];
        const hold = { portrait, part: 'whole' } as const;
        const { measured, fill, lens } = await measure({
          ...(subject === 'helicopter'
            ? { survey: passing(heading), path: 'pass', station: 160 }
            : { survey: parked(heading) }),
          subject,
          hold,
          width,
          height,
        });
        const { box } = measured;
        if (!box) throw new Error('expected an aircraft in the frame');
        const shares = [(box.right - box.left) / width, (box.bottom - box.top) / height];
        expect(lens.sensorWidth > lens.sensorHeight).toBe(!portrait);
        // One of the two takes the wanted share.
        const off = Math.abs(Math.max(...shares) / fill - 1);
        expect(off, `${subject} heading ${heading}`).toBeLessThan(0.02);
      }
    },
  );

  test('[V2] a longer focal length draws it larger in proportion', async () => {
    const wide = async (focalLength: number) => {
      const { box } = (await measure({ pinned: { focalLength } })).measured;
      return (box?.right ?? 0) - (box?.left ?? 0);
    };
    const [short, long] = [await wide(60), await wide(180)];
    expect(long / short).toBeCloseTo(3, 1);
  });

  test('[V3] half an aircraft fills the frame with that half', async () => {
    const whole = await measure({});
    for (const part of ['nose', 'tail'] as const) {
      const half = await measure({ hold: { portrait: false, part } });
      expect(half.needed ?? 0).toBeGreaterThan(1.6 * (whole.needed ?? Infinity));
      const { box } = half.measured;
      // Facing west: the nose is on the left; the other half runs out of the frame.
      if (part === 'nose') expect(box).toMatchObject({ right: 450 });
      else expect(box).toMatchObject({ left: 0 });
    }
  });

  test('[V4] the flank that the figures call lit is bright, the other one dark', async () => {
    const brightness = true;
    // From the south in the afternoon the sun is behind the photographer; from the north it is not.
    const lit = await measure({ brightness });
    const back = destination(spot, 0, 500);
    const other = parked(270).replace(JSON.stringify(spot), JSON.stringify(back));
    const dark = await measure({ survey: other, brightness });
    expect([lit.sample.flankLit, dark.sample.flankLit]).toEqual([true, false]);
    expect(lit.measured.brightness).toBeGreaterThan(1.5 * (dark.measured.brightness ?? NaN));
    // A low sun in the morning, from the east-north-east: now it is the other way round.
    const [south, north] = [
      await measure({ at: morning, brightness }),
      await measure({ at: morning, survey: other, brightness }),
    ];
    expect([south.sample.flankLit, north.sample.flankLit]).toEqual([false, true]);
    expect(north.measured.brightness).toBeGreaterThan(1.5 * (south.measured.brightness ?? NaN));
  });

  test('[V5] what the figures call blocked is hidden, what is in part is in part, a mesh hides nothing', async () => {
    const seen = async (...others: readonly unknown[]) => {
      const { measured, sample } = await measure({ survey: parked(270, ...others) });
      return { share: measured.visible / measured.all, sight: sample.score.sight };
    };
    expect(await seen()).toEqual({ share: 1, sight: 1 });
    expect(await seen(wall(30, 6))).toEqual({ share: 0, sight: 0 });
    expect(await seen(wall(30, 6, 'mesh'))).toEqual({ share: 1, sight: 1 });
    const part = await seen(wall(200, 5));
    expect(part.sight).toBeGreaterThan(0);
    expect(part.sight).toBeLessThan(1);
    expect(part.share).toBeGreaterThan(0);
    expect(part.share).toBeLessThan(1);
    // Trees hide in summer only.
    expect(await seen(wall(30, 6, 'leaf'))).toEqual({ share: 0, sight: 0 });
    const winter = await measure({
      survey: parked(270, wall(30, 6, 'leaf')),
      at: Date.parse('2026-01-20T12:00:00Z'),
    });
    expect(winter.measured.visible).toBe(winter.measured.all);
    // Behind the aircraft a wall hides nothing.
    expect(await seen(wall(300, 30))).toEqual({ share: 1, sight: 1 });
  });

  test('[V6] dusk and night are darker than day, overcast softer than sun', async () => {
    const at = async (time: string, sky: 'clear' | 'heavy' = 'clear') =>
      (await measure({ at: Date.parse(time), pinned: { sky }, brightness: true })).measured.brightness ?? NaN;
    const [day, dusk, night] = [
      await at('2026-06-21T13:00:00Z'),
      await at('2026-06-21T20:00:00Z'),
      await at('2026-06-21T23:00:00Z'),
    ];
    expect(day).toBeGreaterThan(2 * dusk);
    expect(dusk).toBeGreaterThan(2 * night);
    expect(day).toBeGreaterThan(await at('2026-06-21T13:00:00Z', 'heavy'));
  });

  test('[V80] grass with a low sun behind one is bright, against it dark', async () => {
    // The morning's sun stands in the east-north-east, 15 degrees up.
    const towards = (bearing: number) => {
      const middle = destination(spot, bearing, 250);
      const ring = [45, 135, 225, 315, 45].map((b) => destination(middle, b, 60));
      const apron = feature('stand', 'apron', 'Polygon', [ring], { heading: bearing + 90 });
      return surveyText([spotFeature('s', spot, { ground: 0, eyeHeight: 2 }), apron], { subjects, kit });
    };
    const grass = (survey: string) =>
      page.evaluate(([w]) => tested.brightness(w, 0.3, 0.85, 0.7, 1), [
        {
          survey,
          spot: 's',
          path: 'stand',
          at: morning,
          subject: 'jet',
          width: 300,
          height: 200,
        } satisfies Wanted,
      ] as const);
    const [behind, against] = [await grass(towards(250)), await grass(towards(70))];
    expect(behind.mean).toBeGreaterThan(100);
    expect(behind.mean).toBeGreaterThan(1.7 * against.mean);
  });

  test('[V81] through a wall one sees neither pavement nor paint nor a shadow: it is of one colour', async () => {
    const runway = runwayFeature(
      'behind',
      destination(destination(spot, 0, 150), 270, 600),
      destination(destination(spot, 0, 150), 90, 600),
      [{ designator: '09' }, { designator: '27' }],
      { width: 45 },
    );
    const survey = parked(270, wall(30, 6), runway);
    const { least, most } = await page.evaluate(([w]) => tested.brightness(w, 0.05, 0.05, 0.95, 0.95), [
      {
        survey,
        spot: 's',
        path: 'stand',
        at: afternoon,
        subject: 'jet',
        width: 300,
        height: 200,
      } satisfies Wanted,
    ] as const);
    expect(most - least).toBeLessThan(3);
  });

  describe('the moon', () => {
    /** Something that passes a degree and a half beside the moon, seen through 300 mm; on the moon's right half a wall, or none. */
    const beside = (at: string, ...others: readonly unknown[]): Wanted => {
      const { azimuth, altitude } = moonAt(spot, Date.parse(at));
      const level = 900 * Math.cos((altitude * Math.PI) / 180);
      const middle = destination(spot, azimuth - 1.5, level);
      const heights = [900, 900].map((range) => range * Math.sin((altitude * Math.PI) / 180));
      const line = [destination(middle, azimuth, -200), destination(middle, azimuth, 200)];
      const pass = feature('pass', 'flight-path', 'LineString', line, { heights, source: 'drawn' });
      return {
        survey: surveyText([spotFeature('s', spot, { ground: 0, eyeHeight: 2 }), pass, ...others], {
          subjects,
          kit,
        }),
        spot: 's',
        path: 'pass',
        station: 200,
        at: Date.parse(at),
        subject: 'single',
        pinned: { focalLength: 300 },
        width: 900,
        height: 600,
      };
    };
    const look = (wanted: Wanted) => page.evaluate(([w]) => tested.bright(w, 80), [wanted] as const);
    type Seen = Awaited<ReturnType<typeof look>>;
    const dot = (a: readonly number[], b: readonly number[]) =>
      a.reduce((sum, v, i) => sum + v * (b[i] ?? NaN), 0);
    /** px to the right of and below the upper left corner at which a direction is seen, 900 px to 36 mm. */
    const seenAt = ({ camera, lens }: Seen, d: readonly number[]) => {
      const scale = (lens.focalLength / lens.sensorWidth) * 900;
      const ahead = dot(d, camera.forward);
      return [
        450 + (scale * dot(d, camera.right)) / ahead,
        300 - (scale * dot(d, camera.top)) / ahead,
      ] as const;
    };
    /** Full on 2026-10-26, high in the night. */
    const full = '2026-10-26T21:00:00Z';

    test('[V10] full, stands where it is to be seen, half a degree across', async () => {
      const seen = await look(beside(full));
      const [x, y] = seenAt(seen, seen.moon.direction);
      expect(Math.hypot(seen.x - x, seen.y - y)).toBeLessThan(1.5);
      // 0.518 degrees on average (its mean radius 1,737.4 km at 384,400 km).
      const across = (300 / 36) * 900 * 2 * Math.tan(Math.asin(1737.4 / 384_400));
      expect(Math.sqrt((4 * seen.count) / Math.PI) / across).toBeCloseTo(1, 1);
    });

    test('[V11] its lit limb is turned to the sun, a young one and an old one, and so much of it is lit', async () => {
      for (const at of ['2026-04-20T19:20:00Z', '2026-10-18T19:30:00Z', '2026-10-05T03:40:00Z']) {
        const seen = await look(beside(at));
        const { direction } = seen.moon;
        const sun = seen.sun.direction;
        // A hundredth of the way from the moon to the sun along the sky: which way that is on the picture.
        const next = direction.map((c, i) => c + 0.01 * ((sun[i] ?? 0) - dot(sun, direction) * c));
        const [x, y] = seenAt(seen, direction);
        const [sx, sy] = seenAt(seen, next);
        const turned = Math.atan2(seen.y - y, seen.x - x) - Math.atan2(sy - y, sx - x);
        expect(Math.abs(Math.atan2(Math.sin(turned), Math.cos(turned))), at).toBeLessThan(0.02);
        const disc = (Math.PI / 4) * ((300 / 36) * 900 * 0.00904) ** 2;
        expect(Math.abs(seen.count / disc - seen.moon.lit), at).toBeLessThan(0.03);
      }
    });

    test('[V12] a wall before it hides it, and cloud as well', async () => {
      const { azimuth } = moonAt(spot, Date.parse(full));
      const foot = destination(spot, azimuth, 30);
      const before = feature(
        'before',
        'obstacle',
        'LineString',
        [-20, 20].map((right) => destination(foot, azimuth + 90, right)),
        { height: 80, sight: 'solid' },
      );
      expect((await look(beside(full, before))).count).toBe(0);
      const clouded = beside(full);
      expect((await look({ ...clouded, pinned: { focalLength: 300, sky: 'heavy' } })).count).toBe(0);
    });
  });

  test('[V7] giving it back frees what the graphics card held; another one can be opened after it', async () => {
    await measure({ subject: 'jet' });
    const before = await page.evaluate(() => tested.cost());
    for (const subject of ['glider', 'jet']) await measure({ subject });
    const after = await page.evaluate(() => tested.cost());
    expect(after.geometries).toBe(before.geometries);
    await page.evaluate(() => tested.dispose());
    expect((await measure({})).measured.all).toBeGreaterThan(1000);
  });
});
