import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figuresFor } from '../../src/figures/figures-for';
import { readContents } from '../../src/survey/contents';
import { openSurvey } from '../../src/survey/open';

const text = readFileSync(new URL('../../sample-sites/tolverby.geojson', import.meta.url), 'utf8');
const opened = openSurvey(text);
if (!opened.ok) throw new Error(opened.reason);
const contents = readContents(opened.survey);

/** The sample's moments A and B, 08:00 and 19:00 summer time (UTC + 2 h). */
const at = {
  morning: figuresFor(contents, Date.UTC(2026, 5, 21, 6), null),
  evening: figuresFor(contents, Date.UTC(2026, 5, 21, 17), null),
};
type When = keyof typeof at;

const spots = {
  orchard: 's5x9ht',
  deck: 's2w6bn',
  mill: 's7d1kc',
  beacon: 's4p8ym',
  farm: 's9f3ra',
};
type Spot = keyof typeof spots;

function seen(when: When, spot: Spot) {
  const found = at[when].spots.find((s) => s.id === spots[spot]);
  if (!found) throw new Error(`expected the spot "${spots[spot]}"`);
  const path = (name: string) => {
    const path = found.paths.find((p) => p.ref.path === name);
    if (!path) throw new Error(`expected the path "${name}"`);
    return path;
  };
  return { ...found, arrival25: path('r8k2v4/25/arrival'), arrival14: path('r3m7qd/14/arrival'), path };
}
const best25 = (when: When, spot: Spot) => seen(when, spot).arrival25.best.score.total;

describe('the sample site tells what it was made for', () => {
  test('nothing about it is in doubt, the designators and lengths included', () => {
    expect(at.evening.problems).toEqual([]);
    for (const runway of at.evening.runways)
      for (const end of runway.ends) expect(end.suggestedDesignator).toBe(end.designator);
    expect(at.evening.runways.map((r) => Math.round(r.length))).toEqual([2450, 1600]);
  });

  test('the orchard path is the best place for arrivals of 25 in the evening', () => {
    const { arrival25 } = seen('evening', 'orchard');
    expect(arrival25.best.score.total).toBeGreaterThan(0.95);
    expect(arrival25.best.light).toBe('front-lit');
    expect(arrival25.glareShare).toBe(0);
    for (const other of ['deck', 'mill', 'farm'] as const)
      expect(best25('evening', 'orchard'), other).toBeGreaterThan(best25('evening', other) + 0.2);
    // From the rise a 400 does it as well, a little loose and through more air.
    expect(best25('evening', 'orchard')).toBeGreaterThan(best25('evening', 'beacon'));
  });

  test('the lay-by opposite has the sun behind the aircraft then, and is the better one in the morning', () => {
    const { best, closest } = seen('evening', 'mill').arrival25;
    expect(best.score.light).toBeLessThan(seen('evening', 'orchard').arrival25.best.score.light / 2);
    expect(best.flankLit).toBe(false);
    expect(closest.light).toBe('back-lit');
    expect(best25('morning', 'mill')).toBeGreaterThan(best25('evening', 'mill') + 0.3);
    expect(best25('morning', 'mill')).toBeGreaterThan(best25('morning', 'orchard'));
  });

  test('the eyes on the car-park deck stand above all others', () => {
    const eyes = contents.spots.map((s) => [s.id, s.eyeHeight] as const);
    expect(eyes.filter(([, height]) => height > 5)).toEqual([[spots.deck, 11]]);
    // From up there an aircraft on the ground is looked down on.
    expect(seen('morning', 'deck').path('r8k2v4/25/departure').closest.elevation).toBeLessThan(-0.5);
    expect(seen('morning', 'mill').path('r8k2v4/25/departure').closest.elevation).toBeGreaterThan(-0.5);
  });

  test('from the seat on the rise everything is beyond a 200 mm lens, and in reach of a 400 mm one', () => {
    for (const path of seen('evening', 'beacon').paths)
      expect(path.closest.focalLength, path.ref.path).toBeGreaterThan(1.5 * 200);
    expect(seen('evening', 'beacon').arrival25.closest.focalLength).toBeLessThan(1.5 * 400);
    expect(seen('evening', 'orchard').arrival25.closest.focalLength).toBeLessThan(200);
  });

  test('the field edge is the place for arrivals of 14, if the farm agrees', () => {
    const total = (spot: Spot) => seen('evening', spot).arrival14.best.score.total;
    for (const other of ['orchard', 'mill'] as const)
      expect(total('farm'), other).toBeGreaterThan(total(other) + 0.5);
    expect(total('farm')).toBeGreaterThan(total('beacon') + 0.4);
    expect(contents.spots.find((s) => s.id === spots.farm)?.access.status).toBe('ask');
  });

  test('no spot stands in a no-go area or on the pavement, so none is set aside', () => {
    expect(at.morning.spots).toHaveLength(5);
    expect(at.morning.problems.filter((p) => p.id !== null)).toEqual([]);
  });
});
