import { expect, test } from 'vitest';
import { destination } from '../../src/figures/geometry/earth';
import { framingOf } from '../../src/figures/optics/framing';
import { PathInView } from '../../src/figures/path-in-view';
import { contentsOf, plainKit, plainSubject } from '../support/contents';
import { eyeOver, oneSamplePath } from '../support/one-sample';
import { seeded } from '../support/tolerance';

const { body, subject: plain } = contentsOf([], { subjects: [plainSubject], kit: plainKit });

test('[F1200] no needed focal length is below the least one, however the aircraft is turned, near or overhead; few are far above', () => {
  const random = seeded(1200);
  const between = (low: number, high: number) => low + random() * (high - low);
  const eye = [8.55, 47.45] as const;
  const shares: number[] = [];
  for (let k = 0; k < 3000; k++) {
    const subject = {
      ...plain,
      length: between(5, 75),
      span: between(5, 80),
      height: between(2, 24),
      propulsion: k % 5 === 0 ? ('rotor' as const) : ('jet' as const),
    };
    const level = k % 2 === 0;
    const framing = framingOf(subject, body, between(0.3, 1), { portrait: k % 3 === 0, part: 'whole' });
    const path = oneSamplePath(
      destination(eye, between(0, 360), 10 ** between(1.5, 4)),
      400 + between(-20, 900),
      between(0, 360),
      level
        ? { attitude: between(-0.1, 0.2) }
        : { attitude: between(-1.5, 1.5), bank: between(-3, 3), slope: between(-0.3, 0.3) },
    );
    const samples = k % 7 === 0 ? { ...path.samples, headingKnown: false } : path.samples;
    const view = new PathInView();
    view.look(samples, eyeOver(eye, 400), framing);
    const [needed, least] = [view.focalAt(0), view.leastFocal[0] ?? NaN];
    if (Number.isNaN(needed)) continue;
    expect(least).toBeLessThanOrEqual(needed);
    if (level && (view.range[0] ?? 0) > 1000 && Math.abs(view.up[0] ?? 0) < 100) shares.push(least / needed);
  }
  // Level and far away the bound is worth having.
  expect(shares.length).toBeGreaterThan(60);
  expect(shares.sort((a, b) => a - b)[Math.floor(shares.length / 2)]).toBeGreaterThan(0.6);
});
