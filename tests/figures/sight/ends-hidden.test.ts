import { expect, test } from 'vitest';
import { endsHidden } from '../../../src/figures/frame/ends-hidden';
import { destination } from '../../../src/figures/geometry/earth';
import { inspectPath } from '../../../src/figures/spot/inspect-path';
import { outlookOf } from '../../../src/figures/outlook';
import { contentsOf, feature, plainKit, plainSubject, spotFeature } from '../../support/contents';
import { oneSamplePath } from '../../support/one-sample';

const stand = [8.5, 47.4] as const;
const noon = Date.UTC(2026, 5, 21, 10, 30);
/** m east and north of the spot. */
const at = (x: number, y: number) => destination(destination(stand, x < 0 ? 270 : 90, Math.abs(x)), 0, y);

/** An aircraft of 30 m that flies east, 300 m north of the spot, seen past a wall half-way. */
function past(from: number, to: number) {
  const wall = feature('wall', 'obstacle', 'LineString', [at(from, 150), at(to, 150)], {
    height: 60,
    base: 0,
    sight: 'solid',
  });
  const contents = contentsOf([spotFeature('s', stand, { ground: 0, eyeHeight: 1.7 }), wall], {
    subjects: [plainSubject],
    kit: plainKit,
    site: { reference: stand, elevation: 0 },
  });
  const [spot] = contents.spots;
  if (!spot) throw new Error('expected a spot');
  const path = oneSamplePath(at(0, 300), 30, 90, { speed: 60 });
  const outlook = outlookOf(contents, null);
  const { score } = inspectPath(spot, path, 0, outlook, noon);
  return { ...endsHidden(spot, 0, path, 0, outlook, noon), sight: score.sight };
}

test('[F145] says what hides nose and tail, where wheels, centre and fin tip are in sight too', () => {
  // The line to the nose, 15 m ahead of the centre, passes the wall's plane 7.5 m to the east.
  expect(past(7.3, 30)).toEqual({ nose: 'wall', tail: null, sight: 1 });
  expect(past(7.7, 30)).toEqual({ nose: null, tail: null, sight: 1 });
  expect(past(-30, -7.3)).toEqual({ nose: null, tail: 'wall', sight: 1 });
  expect(past(-30, 30)).toEqual({ nose: 'wall', tail: 'wall', sight: 0 });
});
