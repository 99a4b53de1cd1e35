import { expect, test } from 'vitest';
import { alongRunway } from '../../src/figures/geometry/along-runway';
import type { Contents } from '../../src/survey/contents';
import { candidatesOf, type Candidate } from '../../src/sweep/candidates';
import { planSweep } from '../../src/sweep/plan';
import { runwayClear } from '../../src/sweep/practice';
import { Sweep } from '../../src/sweep/sweep';
import { madeGround } from '../support/made-ground';
import { thorough } from '../support/thorough';

/** The list for the day of an equinox, when the sun stands south (north of the equator) from rising to setting. */
function listed(contents: Contents) {
  const noon = Date.UTC(2026, 2, 20, 12) - (contents.site.reference[0] / 15) * 3_600_000;
  const planned = planSweep(
    contents,
    {
      side: null,
      cell: 90,
      hours: { from: noon - 5 * 3_600_000, to: noon + 5 * 3_600_000 },
      step: 7200,
      names: null,
      wind: null,
      configuration: 0,
      at: noon,
    },
    null,
  );
  if (!planned.ok) throw new Error(planned.reason);
  const sweep = new Sweep(contents, planned.plan, null);
  const cells = Int32Array.from({ length: planned.plan.area.count ** 2 }, (_, i) => i);
  return candidatesOf(sweep, sweep.figuresOf(cells)).candidates;
}

const most = (candidates: readonly Candidate[], way: string) =>
  Math.max(0, ...candidates.filter((c) => c.way === way).map((c) => c.goodMinutes));

const made = [
  ['EDNY', 'AT76', 'South Lane', 'North Lane'],
  ['EDDN', 'A320', 'South Lane', 'North Lane'],
  ['NZCH', 'B738', 'North Lane', 'South Lane'],
] as const;

// The others, one of them south of the equator, in npm run thorough.
test.each(thorough ? made : made.slice(0, 1))(
  '[S200] %s with made ground: the sunny lane first, nobody by the runway, in the pond or on the works road',
  (icao, subject, sunny, shady) => {
    const contents = madeGround(icao, subject);
    const candidates = listed(contents);
    expect(candidates.length).toBeGreaterThan(4);
    expect(candidates[0]?.ground).toBe('open');
    expect(most(candidates, sunny)).toBeGreaterThan(most(candidates, shady));
    for (const { position, way, focalLength, paths } of candidates) {
      expect(['Works Road', 'Pond']).not.toContain(way);
      expect(focalLength).toBeGreaterThan(20);
      expect(paths.length).toBeGreaterThan(0);
      for (const runway of contents.runways) {
        const along = alongRunway(runway, position);
        if (!along || along.station < 0 || along.station > along.length) continue;
        const clear = runwayClear.find(({ under }) => along.length < under)?.clear ?? 0;
        expect(Math.abs(along.offset)).toBeGreaterThan(clear);
      }
    }
  },
);
