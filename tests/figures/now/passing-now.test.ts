import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { flowsNow } from '../../../src/figures/now/flow-now';
import { passingNow } from '../../../src/figures/now/passing-now';
import { reportAge } from '../../../src/figures/now/report-age';
import { todayAt } from '../../../src/figures/now/today';
import { outlookOf } from '../../../src/figures/outlook';
import { flownPaths } from '../../../src/figures/plan/flow-spans';
import { spotFigures } from '../../../src/figures/spot-figures';
import { everyPath } from '../../../src/figures/traffic/every-path';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { readContents } from '../../../src/survey/contents';
import { opened } from '../../support/contents';

const contents = readContents(opened(readFileSync('sample-sites/tolverby.geojson', 'utf8')));
const orchard = contents.spots.find(({ id }) => id === 's5x9ht');
const evening = Date.parse('2026-06-21T16:00:00Z');

function now(instant: number, spot = orchard) {
  if (!spot) throw new Error('expected the spot');
  const [flow] = flowsNow(contents, 0, instant);
  if (!flow) throw new Error('expected a flow');
  const span = { from: -Infinity, to: Infinity, arrivals: flow.arrivals, departures: flow.departures };
  const paths = pathsOf(contents, flownPaths([span]), null);
  return { around: passingNow(contents, null, spot, paths, instant), paths, spot };
}

describe('what comes past now', () => {
  it('[F948] leads with what is worth most, by the same figures as the panel of the spot', () => {
    const { around, paths, spot } = now(evening);
    expect(around.passing.map(({ path }) => path.name)).toContain('25 arrival');
    const totals = around.passing.map(({ sample }) => sample.score.total);
    expect(totals).toEqual(totals.toSorted((a, b) => b - a));
    const [figures] = spotFigures(spot, paths, outlookOf(contents, null), [evening]);
    for (const { path, sample } of around.passing) {
      const seen = figures?.paths.find(({ ref }) => ref.path === path.ref.path);
      expect(sample).toEqual(seen?.pass ?? seen?.best);
    }
  });

  it('[F949] says when the light changes: the minute before it is what it is now, that minute it is what is said', () => {
    // Twenty minutes before sunset (21:05), the figures a minute on either side decide.
    const before = Date.parse('2026-06-21T18:45:00Z');
    const { around, paths, spot } = now(before);
    const lead = around.passing[0];
    const minutes = lead?.toCome.minutes ?? NaN;
    expect(minutes).toBeGreaterThan(15);
    expect(minutes).toBeLessThan(25);
    const lightAt = (offset: number) => {
      const [figures] = spotFigures(spot, paths, outlookOf(contents, null), [before + offset * 60_000]);
      return figures?.paths.find(({ ref }) => ref.path === lead?.path.ref.path)?.best.light;
    };
    expect(lightAt(minutes + 1)).toBe(lead?.toCome.to?.light);
    expect(lightAt(minutes - 1)).toBe(lead?.sample.light);
    expect(lead?.toCome.to?.light).toBe('civil-twilight');
    // Two hours ahead and no more.
    expect(now(Date.parse('2026-06-21T15:30:00Z')).around.passing[0]?.toCome.minutes).toBeNull();
  });

  it('[F1119] arguable: a display comes past while one of its acts is on, or a few minutes of it, and not all day', () => {
    const [display] = contents.displayLines;
    if (!display) throw new Error('expected the display line');
    const act = { ...{ date: '2026-06-21', to: null, type: '', name: 'Solo jet' }, time: '18:20' };
    const shown = {
      ...contents,
      displayLines: [{ ...display, passes: ['level' as const], programme: [act] }],
    };
    const span = { from: -Infinity, to: Infinity, arrivals: [], departures: [] };
    const paths = everyPath(shown, flownPaths([span]), null);
    const passes = (clock: string) =>
      contents.spots
        .flatMap(
          (spot) => passingNow(shown, null, spot, paths, Date.parse(`2026-06-21T${clock}+02:00`)).passing,
        )
        .filter(({ path }) => path.ref.path.startsWith(`${display.id}/`)).length;
    expect(passes('18:22:00')).toBeGreaterThan(0);
    expect(passes('18:16:00')).toBe(passes('18:22:00'));
    expect(passes('17:30:00')).toBe(0);
    expect(passes('18:40:00')).toBe(0);
  });

  it('[F950] nothing is within reach from far away', () => {
    const far = orchard && { ...orchard, id: 'far', position: [18.4, 50.93] as const };
    expect(now(evening, far).around.passing).toEqual([]);
  });
});

describe('what holds now', () => {
  const weather = (
    observed: string | null,
    forecastTo: string | null = null,
    entered: string | null = null,
  ) => ({ observed, entered, forecastTo }) as NonNullable<typeof contents.weather>;

  it('[F951] arguable: a METAR is old after 90 minutes, a TAF when its time is over, a typed wind as a METAR', () => {
    const at = Date.parse('2026-06-21T12:00:00Z');
    expect(reportAge(weather('2026-06-21T10:30:00Z'), at)).toEqual({ minutes: 90, stale: false });
    expect(reportAge(weather('2026-06-21T10:29:00Z'), at)).toEqual({ minutes: 91, stale: true });
    expect(reportAge(weather(null, '2026-06-21T18:00:00Z', '2026-06-21T05:00:00Z'), at)?.stale).toBe(false);
    expect(reportAge(weather(null, '2026-06-21T12:00:00Z', '2026-06-21T05:00:00Z'), at)?.stale).toBe(true);
    expect(reportAge(weather(null, null, '2026-06-21T08:00:00Z'), at)?.stale).toBe(true);
    expect(reportAge(weather(null), at)).toBeNull();
  });

  it('[F952] turns through the flows of the survey, and the day is that of its clock', () => {
    expect(flowsNow(contents, 1, evening).map(({ name }) => name)).toEqual(['East wind', 'West wind']);
    const late = Date.parse('2026-06-21T22:30:00Z');
    expect(todayAt(contents.site, late).date).toBe('2026-06-22');
  });
});
