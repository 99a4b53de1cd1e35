import { expect, test } from 'vitest';
import { mapped } from '../../src/figures/geometry/earth';
import { outlookOf } from '../../src/figures/outlook';
import { lightCeiling, lightFactor } from '../../src/figures/score';
import { SightLines } from '../../src/figures/sight/sight-lines';
import { siteFrame } from '../../src/figures/sight/site-frame';
import { targetsAlong } from '../../src/figures/sight/spot-sight';
import { standing } from '../../src/figures/sight/surroundings';
import { pathsOf } from '../../src/figures/traffic/paths';
import { readContents } from '../../src/survey/contents';
import { areaAbout, cellPosition } from '../../src/sweep/area';
import { LazySight } from '../../src/sweep/lazy-sight';
import { builtUpSurvey, wavyGround } from '../bench/built-up-survey';
import { seeded } from '../support/tolerance';

test('[S122] [F1113] what is in sight, asked sample by sample over squares of tops, is what sight lines say', () => {
  const survey = readContents(builtUpSurvey());
  const contents = {
    ...survey,
    obstacles: survey.obstacles.map((o, i) => ({
      ...o,
      height: 2 * o.height,
      // Some that one can see under.
      underside: i % 7 === 0 ? 2 : 0,
    })),
  };
  const paths = pathsOf(contents, (kind) => kind === 'arrival', null).slice(0, 2);
  const { framing, around } = outlookOf(contents, wavyGround());
  if (!around) throw new Error('expected surroundings');
  const area = areaAbout(contents.runways, siteFrame(contents.site.reference), 20, null);
  const lazy = new LazySight(around, paths, framing);
  const lines = new SightLines();
  const targets = paths.map((path) => targetsAlong(path, framing, around));
  const random = seeded(122);
  const seen = [0, 0, 0, 0];
  for (let k = 0; k < 15; k++) {
    const does = standing(around, k % 2 === 0 ? 1 : 6);
    const [x, y] = mapped(around.frame, cellPosition(area, Math.floor(random() * area.count ** 2)));
    // Now and then from a roof.
    const eye = 27 + 20 * random();
    lazy.stand(does, x, y, eye);
    const sky = Array.from({ length: 8 }, (_, s) => ({
      east: Math.sin(s),
      north: Math.cos(s),
      steepness: 0.02 * (s + 1),
    }));
    lines.stand(around, does, x, y, eye, targets, sky);
    for (const each of sky)
      expect(lazy.hidesSky(each.east, each.north, each.steepness)).toBe(lines.towards(each) !== -1);
    targets.forEach((target, p) => {
      lines.look(target);
      const wrong = Array.from({ length: target.count }, (_, i) => i).filter((i) => {
        const points = lines.inSight[i] ?? NaN;
        seen[points] = (seen[points] ?? 0) + 1;
        return lazy.at(p, i) !== points / 3;
      });
      expect(wrong).toEqual([]);
    });
  }
  expect(Math.min(...seen)).toBeGreaterThan(20);
});

test('[S131] light only falls with the angle, under any sky and at any altitude: the limits of the sweep rest on it', () => {
  for (const direct of [0, 0.35, 1])
    for (let altitude = -7; altitude < 90; altitude += 0.5) {
      const sky = { direct, visibility: 10_000 };
      let before = lightCeiling(altitude, sky);
      for (let angle = 0; angle <= 180; angle += 2) {
        const light = lightFactor(altitude, angle, null, sky);
        expect(light).toBeLessThanOrEqual(before + 1e-12);
        before = light;
      }
    }
});
