import { expect, test } from 'vitest';
import { outlookOf } from '../../src/figures/outlook';
import { mapped } from '../../src/figures/geometry/earth';
import { siteFrame } from '../../src/figures/sight/site-frame';
import { inspectPath } from '../../src/figures/spot/inspect-path';
import { Scratch } from '../../src/figures/scratch';
import { pathsOf } from '../../src/figures/traffic/paths';
import { areaAbout } from '../../src/sweep/area';
import { spotThere } from '../../src/figures/spot/spot-there';
import { leastFocals, linesFor, reachLines } from '../../src/sweep/reach-lines';
import { contentsOf, plainKit, plainSubject, runwayFeature } from '../support/contents';

const contents = contentsOf(
  [
    runwayFeature(
      'main',
      [8.01, 50.02],
      [8.0305, 50.021],
      [
        { designator: '08', elevation: 112 },
        { designator: '26', elevation: 112 },
      ],
    ),
  ],
  { subjects: [plainSubject], kit: plainKit, site: { reference: [8.01, 50.02] } },
);

test('[S180] a spot on a reach line needs that focal length for its nearest sample between 30 and 135 degrees of aspect', async () => {
  const [path] = pathsOf(contents, (kind, _, end) => kind === 'arrival' && end === 1, null);
  if (!path) throw new Error('expected a path');
  const area = areaAbout(contents.runways, siteFrame([8.01, 50.02]), 20, 2400);
  const focals = leastFocals(contents, path, area, null, Date.UTC(2026, 5, 21, 12));
  const lines = await reachLines(focals, area, linesFor(contents, 560));
  expect(lines.map(({ focalLength }) => focalLength)).toEqual([70, 100, 200, 300, 400, 560, 600]);
  const outlook = outlookOf(contents, null);
  const scratch = new Scratch();
  let compared = 0;
  for (const { focalLength, lines: each } of lines.filter(({ focalLength: mm }) => mm >= 200)) {
    const places = each.flat();
    for (const position of places.filter((_, i) => i % Math.ceil(places.length / 6) === 0)) {
      // Where the aspect begins to count the least focal length jumps: the line follows that edge, and is none of equal needs.
      const [x, y] = mapped(area.frame, position);
      const [column, row] = [(x - area.west) / area.cell - 0.5, (y - area.south) / area.cell - 0.5].map(
        Math.floor,
      );
      const corners = [0, 1, area.count, area.count + 1].map(
        (step) => focals[(row ?? 0) * area.count + (column ?? 0) + step] ?? Infinity,
      );
      if (Math.max(...corners) > 1.2 * Math.min(...corners)) continue;
      const spot = spotThere(position, null);
      let least = Infinity;
      for (const station of path.samples.station) {
        if (Math.abs(station) > 2500) continue;
        const sample = inspectPath(spot, path, station, outlook, 0, scratch);
        const aspect = sample.aspect ?? 0;
        if (aspect >= 30 && aspect <= 135) least = Math.min(least, sample.focalLength ?? Infinity);
      }
      // Between cells of 20 m a contour is straight: within 2 %.
      expect(Math.abs(least / focalLength - 1)).toBeLessThan(0.02);
      compared++;
    }
  }
  expect(compared).toBeGreaterThan(6);
});
