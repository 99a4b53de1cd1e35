import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { lensCoverage } from '../../../src/figures/optics/lens-coverage';
import { outlookOf } from '../../../src/figures/outlook';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../../support/contents';

const a = [8.5, 47.4] as const;
const runway = runwayFeature('rwy', a, destination(a, 90, 2500), [
  { designator: '09' },
  { designator: '27' },
]);
/** South of the runway, the sun behind. */
const south = destination(destination(a, 90, 600), 180, 300);
const noon = Date.parse('2026-09-21T11:00:00Z');
const night = Date.parse('2026-09-21T23:00:00Z');

function coverage(lenses: readonly object[], instants = [noon], status = 'public') {
  const spot = spotFeature('s', south, { access: { status } });
  const contents = contentsOf([runway, spot], { subjects: [plainSubject], kit: { ...plainKit, lenses } });
  const paths = pathsOf(contents, (kind) => kind === 'arrival', null);
  return lensCoverage(contents, paths, outlookOf(contents, null), instants);
}
const lens = (shortest: number, longest: number, extenders: number[] = []) => ({
  key: `${shortest}`,
  name: 'x',
  shortest,
  longest,
  widestAperture: 4,
  extenders,
});

describe('which lens to take', () => {
  test('[F614] a 100-400 and a 500 with 1.4x serve what the card says that they serve: to about 930 mm, no gap between them', () => {
    const { bins, lenses } = coverage([lens(100, 400), lens(500, 500, [1.4])]);
    const served = bins.filter((bin) => bin.covered);
    expect(served[0]?.from).toBeLessThan(100);
    expect(served.length).toBe(bins.filter((bin) => bin.to > (served[0]?.to ?? 0) - 1).length);
    expect(served.at(-1)?.to).toBeGreaterThan(800);
    const [zoom, prime] = lenses.map((l) => [Math.round(l.served.from), Math.round(l.served.to)]);
    expect(zoom).toEqual([80, 533]);
    expect(prime).toEqual([400, 933]);
  });

  test('[F325] shares of good frames: bins, lenses and what is missing add up', () => {
    const { frames, bins, lenses, missing } = coverage([lens(70, 200), lens(200, 350, [1.4])]);
    expect(frames).toBeGreaterThan(50);
    expect(bins.reduce((sum, bin) => sum + bin.share, 0)).toBeCloseTo(1, 9);
    const [short, long] = lenses;
    expect(short?.alone).toBe(short?.extended);
    expect(long?.extended).toBeGreaterThan(long?.alone ?? 1);
    expect((short?.extended ?? 0) + (long?.extended ?? 0) + missing).toBeGreaterThan(0.999);
    expect(missing).toBeGreaterThan(0);
    expect(bins.find((bin) => bin.from < 100 && bin.to > 100)?.covered).toBe(true);
    expect(bins.at(-1)?.covered).toBe(false);
    // A lens that covers everything leaves nothing.
    expect(coverage([lens(20, 810)]).missing).toBe(0);
  });

  test('[F326] nothing is good at night, or where nobody may stand', () => {
    expect(coverage([lens(70, 200)], [night])).toMatchObject({ frames: 0, missing: 0 });
    expect(coverage([lens(70, 200)], [noon], 'forbidden').frames).toBe(0);
  });
});
