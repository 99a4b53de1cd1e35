import { expect, test } from 'vitest';
import { surveyFit } from '../../src/map/survey-fit';

const bounds = [
  [10, 0],
  [10.02, 0.01],
] as const;

test('[M34] a survey is shown whole, 60 px from the edges, and from what takes the left', () => {
  expect(surveyFit(bounds, { width: 1000, height: 800 }, 300)).toEqual({
    kind: 'inside',
    padding: { top: 60, right: 60, bottom: 60, left: 360 },
    maxZoom: 16,
  });
  expect(surveyFit(bounds, { width: 320, height: 560 }, 0)).toMatchObject({ padding: { right: 40 } });
});

test('[M35] on a map that a sheet covers, it is fitted about its middle for a map that is seen again', () => {
  // 160 px wide, 20 px (an eighth) free on either side: 0.02 degrees in 120 px; the world is 512 px at zoom 0.
  const fit = surveyFit(bounds, { width: 160, height: 160 }, 0);
  expect(fit).toMatchObject({ kind: 'about', centre: [10.01, 0.005] });
  expect(fit.kind === 'about' && fit.zoom).toBeCloseTo(Math.log2((120 / 0.02) * (360 / 512)), 6);
});

test('[M36] a survey of one spot is not shown closer than zoom 16', () => {
  const spot = [
    [10, 50],
    [10, 50],
  ] as const;
  expect(surveyFit(spot, { width: 160, height: 100 }, 0)).toMatchObject({ kind: 'about', zoom: 16 });
  expect(surveyFit(spot, { width: 800, height: 600 }, 0)).toMatchObject({ kind: 'inside', maxZoom: 16 });
});
