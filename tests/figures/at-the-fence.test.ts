import { describe, expect, test } from 'vitest';
import { openAt } from '../../src/figures/access/open-spans';
import { readOpeningHours } from '../../src/figures/access/read-hours';
import { problemsOf } from '../../src/figures/checks/problems';
import { destination } from '../../src/figures/geometry/earth';
import { verdictFor } from '../../src/figures/optics/verdict';
import { standingOf } from '../../src/figures/plan/standing';
import { isWorthIt } from '../../src/figures/score-words';
import { outlookOf } from '../../src/figures/outlook';
import { spotFigures } from '../../src/figures/spot-figures';
import { flowFor } from '../../src/figures/traffic/flow/flow-for';
import { pathsOf } from '../../src/figures/traffic/paths';
import { readTypedWind } from '../../src/figures/traffic/wind/typed-wind';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../support/contents';

type Properties = Record<string, unknown>;
const from = [8.5, 47.4] as const;
const noon = Date.parse('2026-06-21T10:00:00Z');
const jet = { ...plainSubject, key: 'jet', span: 34, groundRun: 1200, landingRun: 900 };
const single = { ...jet, key: 'single', propulsion: 'propeller', span: 11, groundRun: 290, landingRun: 175 };

function strip(id: string, bearing: number, length: number, more: Properties = {}, closed = false) {
  const end = (deg: number) => ({ designator: String((deg / 10) % 36 || 36).padStart(2, '0'), closed });
  return runwayFeature(id, from, destination(from, bearing, length), [end(bearing), end(bearing + 180)], {
    surface: 'asphalt',
    ...more,
  });
}

function inUse(wind: string, subject: Properties, ...runways: readonly object[]) {
  const read = readTypedWind(wind);
  if (!read.ok) throw new Error(read.reason);
  const contents = contentsOf(runways, { subjects: [subject], flow: {} });
  const { arrivals, reason } = flowFor(contents, read.value, noon);
  const ends = arrivals.map(
    ({ runway, end }) => contents.runways.find((r) => r.id === runway)?.ends[end].designator,
  );
  return { ends, reason };
}

/** Whether hours let one in, by the clock of Zurich in summer. */
function isOpen(hours: string, local: string): boolean | null {
  const read = readOpeningHours(hours);
  const here = { position: from, timeZone: 'Europe/Zurich' } as const;
  return read && openAt(read, Date.parse(`${local}+02:00`), here);
}

/** What is said of a spot `behind` m before the end at which runway 09 begins, `aside` m off its line. */
function saidOf(behind: number, aside: number, subject: Properties, access: Properties = {}) {
  const at = destination(destination(from, 270, behind), 180, aside);
  const contents = contentsOf(
    [strip('main', 90, 2400), spotFeature('s', at, { access: { status: 'public', ...access } })],
    { subjects: [subject], site: { timeZone: 'Europe/Zurich' } },
  );
  const [spot] = contents.spots;
  if (!spot) throw new Error('expected the spot');
  const said = problemsOf(contents, [], noon).flatMap(({ id, reason }) => (id === 's' ? [reason] : []));
  return { said, standing: standingOf(spot, contents, noon) };
}

describe('what practitioners argue about at the fence', () => {
  test('[F2082] the days of a list hold for all its hours: a lunch break does not open the weekend', () => {
    const hours = 'Mo-Fr 09:00-12:00, 13:00-17:00';
    expect(isOpen(hours, '2026-06-20T14:00')).toBe(false); // a Saturday
    expect(isOpen(hours, '2026-06-22T14:00')).toBe(true);
    expect(isOpen(hours, '2026-06-22T12:30')).toBe(false);
    expect(isOpen('09:00-12:00, Sa 13:00-17:00', '2026-06-21T10:00')).toBe(true);
  });

  test('[F2083] hours copied from a map say several days, and semicolons', () => {
    const hours = 'Mo-Fr 08:00-18:00; Sa,Su 10:00-16:00';
    expect(isOpen(hours, '2026-06-21T11:00')).toBe(true);
    expect(isOpen(hours, '2026-06-21T09:00')).toBe(false);
    expect(isOpen('Mo,We-Th 08:00-18:00', '2026-06-23T09:00')).toBe(false); // a Tuesday
    expect(isOpen('Sa,', '2026-06-20T09:00')).toBeNull();
  });

  test('[F2084] 4 kt with gusts of 17: calm by the mean, but nobody lands with the gusts behind', () => {
    const { ends, reason } = inUse('240/4G17', jet, strip('main', 60, 2400));
    expect(ends).toEqual(['24']);
    expect(reason).toMatch(/^4 kt of wind count as calm \(under 5 kt\), but not its gusts: 24 of 06\/24/);
    expect(reason).toMatch(/06 has 17 kt of tailwind in the gusts/);
    expect(inUse('240/4', jet, strip('main', 60, 2400)).ends).toEqual(['06', '24']);
    expect(inUse('240/4G5', jet, strip('main', 60, 2400)).ends).toEqual(['06', '24']);
  });

  test('[F2085] a permission of five years ago that names no last day holds, and is to be asked for again', () => {
    const granted = (askedOn: string, more = {}) =>
      saidOf(-1000, 400, jet, { status: 'ask', permission: { answer: 'granted', askedOn, ...more } });
    const { said, standing } = granted('2021-05-01');
    expect(said.join()).toMatch(/permission of 2021-05-01 names no last day.*over a year/i);
    expect(standing).toBe('open');
    expect(granted('2026-03-01').said).toEqual([]);
    expect(granted('2021-05-01', { until: '2027-01-01' }).said).toEqual([]);
  });

  test('[F2086] a public road behind the end where jets begin: one may stand there, and is told of the blast', () => {
    const { said, standing } = saidOf(120, 20, jet);
    expect(said.join()).toMatch(/120 m behind.*09.*jet blast/i);
    expect(standing).toBe('open');
    for (const [behind, aside, subject] of [
      [230, 20, jet],
      [120, 70, jet],
      [120, 20, single],
      [-300, 20, single],
    ] as const)
      expect(saidOf(behind, aside, subject).said.join()).not.toMatch(/blast/i);
  });

  test('[F2087] the main runway is closed: light aircraft fly from the strip, and no jet flies at all', () => {
    const field = [strip('main', 60, 2400, {}, true), strip('cross', 150, 700)];
    expect(inUse('330/12', single, ...field).ends).toEqual(['33']);
    const { ends, reason } = inUse('330/12', jet, ...field);
    expect(ends).toEqual([]);
    expect(reason).toMatch(/^No end can be used: .*06 is closed.*too short/);
  });

  test('[F2088] long grass and short asphalt: a jet takes the asphalt, across the wind if it must', () => {
    const field = [strip('grass', 60, 2600, { surface: 'grass' }), strip('hard', 150, 1800)];
    expect(inUse('250/18', jet, ...field).ends).toEqual(['33']);
    expect(inUse('060/9', single, ...field).ends).toEqual(['06']);
  });

  test('[F2089] too near for the shortest lens: what is cut off is said, and no extender is advised', () => {
    const { kit, body } = contentsOf([], { kit: plainKit });
    const [zoom, long] = kit.lenses;
    if (!zoom || !long) throw new Error('expected two lenses');
    const verdict = verdictFor(zoom, 50, body, kit.fill);
    expect(verdict).toMatchObject({ verdict: 'too-long', extender: null, focalLength: 70 });
    expect(verdict.verdict === 'too-long' && verdict.cutOff).toBeCloseTo(1 - 50 / (0.8 * 70), 6);
    expect(verdictFor(long, 50, body, kit.fill)).toMatchObject({ verdict: 'too-long', extender: null });
  });

  test('[F2090] nothing of a moonless midnight is called worth it, and it is not unknown either', () => {
    const contents = contentsOf([strip('main', 90, 2400), spotFeature('s', [8.51, 47.398])], {
      subjects: [jet],
      kit: plainKit,
    });
    const [spot] = contents.spots;
    if (!spot) throw new Error('expected the spot');
    const paths = pathsOf(contents, (kind, _runway, end) => kind === 'arrival' && end === 0, null);
    const midnight = Date.parse('2026-12-20T23:30:00Z');
    const best = spotFigures(spot, paths, outlookOf(contents, null), [midnight])[0]?.paths[0]?.best;
    expect(best).toMatchObject({ light: 'dark', glare: false, score: { total: 0, reach: 1 } });
    expect(isWorthIt(best?.score.total ?? 1)).toBe(false);
  });

  test('[F2091] a display line, a winch run or a crowd line without length is listed, like any path', () => {
    const place = [8.51, 47.41];
    const line = (id: string, kind: string) => ({
      type: 'Feature',
      id,
      properties: { kind },
      geometry: { type: 'LineString', coordinates: [place, place] },
    });
    const kinds = ['display-line', 'winch-run', 'crowd-line'];
    const contents = contentsOf(kinds.map((kind) => line(kind, kind)));
    const aside = problemsOf(contents, [], noon).filter(({ used }) => !used);
    expect(aside.map(({ id }) => id)).toEqual(kinds);
    for (const { reason } of aside) expect(reason).toMatch(/in one place\. Drag one away/);
  });
});
