import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { groundUnder } from '../../../src/figures/sight/ground';
import { contentsOf, runwayFeature, spotFeature } from '../../support/contents';

const a = [8.5, 47.4] as const;
const b = destination(a, 100, 2000);
const sloping = runwayFeature('sloping', a, b, [{ elevation: 400 }, { elevation: 420 }]);
/** Beyond the end of the first and 600 m beside it. */
const c = destination(destination(a, 100, 2600), 190, 600);
const other = runwayFeature('other', c, destination(c, 190, 900), [{ elevation: 300 }, {}]);

function ground(at: readonly [number, number], features: readonly unknown[], spot = {}, elevation?: number) {
  const site = elevation === undefined ? {} : { elevation };
  const contents = contentsOf([...features, spotFeature('spot', at, spot)], { site });
  const [standing] = contents.spots;
  if (!standing) throw new Error('expected a spot');
  return groundUnder(standing, contents.runways, elevation ?? 0);
}

describe('ground under a spot', () => {
  test('[F100] its own word goes first', () => {
    expect(ground(a, [sloping], { ground: 512.5 }, 7)).toEqual({ elevation: 512.5, from: 'stated' });
    expect(ground(a, [sloping], { ground: 0 }, 7)).toEqual({ elevation: 0, from: 'stated' });
  });

  test('[F101] else the pavement of the nearest runway, abeam', () => {
    const abeam = ground(destination(destination(a, 100, 500), 10, 300), [sloping, other], {}, 7);
    expect(abeam.from).toBe('runway');
    expect(abeam.elevation).toBeCloseTo(405, 3);
    // Before the first end and past the last it is as high as that end.
    expect(ground(destination(a, 280, 900), [sloping, other]).elevation).toBeCloseTo(400, 6);
    expect(ground(destination(b, 55, 300), [sloping, other]).elevation).toBeCloseTo(420, 6);
    // An end that says nothing is as high as the other one.
    expect(ground(destination(c, 190, 800), [sloping, other])).toMatchObject({
      elevation: 300,
      from: 'runway',
    });
    expect(ground(destination(c, 190, 800), [other, sloping]).elevation).toBeCloseTo(300, 6);
  });

  test('[F102] else the field', () => {
    expect(ground(a, [], {}, 77)).toEqual({ elevation: 77, from: 'site' });
    const silent = runwayFeature('silent', a, b, [{}, {}]);
    expect(ground(a, [silent], {}, 77).elevation).toBe(77);
  });
});
