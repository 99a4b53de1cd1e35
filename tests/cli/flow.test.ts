import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readArguments } from '../../src/cli/arguments';
import { flowJson } from '../../src/cli/flow-json';
import { givenWind } from '../../src/cli/given-wind';
import { runCommand } from '../support/command';
import { contentsOf, plainSubject, runwayFeature, surveyText } from '../support/contents';

const at = Date.parse('2026-06-21T12:00:00Z');
const features = [
  runwayFeature('twin', [8.5, 47.4], [8.53, 47.4], [{ designator: '09' }, { designator: '09' }]),
  runwayFeature(
    'half',
    [8.51, 47.39],
    [8.52, 47.41],
    [{ designator: '02', closed: true }, { designator: '20' }],
  ),
  runwayFeature('dot', [8.5, 47.4], [8.5, 47.4], [{ designator: '01' }, { designator: '19' }]),
];
const sunside = { site: { elevation: 430 }, subjects: [plainSubject] };

/** The command's answer without a process round it. */
function flow(wind: string | null, metar: string | null = null) {
  const given = givenWind({ wind, metar }, at);
  if (!given.ok) return given.reason;
  return given.value && flowJson(contentsOf(features, sunside), given.value, at);
}

let folder = '';
beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), 'sunside-'))));
afterAll(() => rmSync(folder, { recursive: true }));

describe('the flow that the figures command adds', () => {
  test('[F230] mean components in the order of runways and ends; ends in use as "<runway id>/<designator>"', () => {
    const answer = flow('27010G18KT');
    expect(answer).toMatchObject({
      wind: { from: 270, speedKt: 10, gustKt: 18 },
      ends: [
        { runway: 'twin', designator: '09' },
        { runway: 'twin', designator: '09' },
        { runway: 'half', designator: '02' },
        { runway: 'half', designator: '20' },
      ],
      arrivals: ['twin/09#1'],
      departures: ['twin/09#1'],
      reason: expect.stringContaining('Most headwind') as string,
    });
    const ends = (answer as { ends: { headwindKt: number; crosswindKt: number }[] }).ends;
    expect(ends[0]?.headwindKt).toBeCloseTo(-10, 2);
    expect(ends[1]?.headwindKt).toBeCloseTo(10, 2);
    // Flying 200 degrees true, a wind from 270 comes from the right.
    expect(ends[3]?.crosswindKt).toBeGreaterThan(9);
  });

  test('[F231] null where there is no answer, never NaN', () => {
    const variable = flow('VRB06KT');
    expect(variable).toMatchObject({ wind: { from: null, speedKt: 6, gustKt: null } });
    expect((variable as { ends: object[] }).ends[0]).toEqual({
      runway: 'twin',
      designator: '09',
      headwindKt: null,
      crosswindKt: null,
    });
    expect(flow('00000KT')).toMatchObject({
      wind: { from: null, speedKt: 0, gustKt: null },
      ends: Array(4).fill({ headwindKt: 0, crosswindKt: 0 }) as object[],
      // The longer of the two, of which one end is closed.
      arrivals: ['half/20'],
      either: false,
      light: [],
    });
    expect(flow(null)).toBe(null);
  });

  test('[F232] a METAR gives the same; what its reader got wrong is said in the reason', () => {
    expect(flow(null, 'METAR EPXX 211150Z 27010G18KT CAVOK 20/10 Q1018')).toEqual(flow('27010G18KT'));
    expect(flow(null, 'METAR EPXX 211150Z 24010KMH CAVOK')).toMatchObject({
      reason: expect.stringContaining('misreads 24010KMH') as string,
    });
    expect(flow('P99KT')).toMatch(/^--wind: "P99KT" says/);
    expect(flow(null, 'rain')).toMatch(/^--metar: no METAR can be read/);
    expect(readArguments(['a', '--wind', 'x', '--metar', 'y'], at)).toMatchObject({ ok: false });
  });

  test('[F653] a wind as people write it is understood as well', () => {
    expect(flow('360/15G25')).toMatchObject({ wind: { from: 360, speedKt: 15, gustKt: 25 } });
    expect(flow('270/10')).toEqual(flow('27010KT'));
    expect(flow('VRB03KT')).toMatchObject({ wind: { from: null, speedKt: 3 } });
    expect(flow('00000KT')).toEqual(flow('calm'));
    expect(flow('north')).toMatch(/^--wind: "north" is no wind/);
  });

  test('[F233] the command itself: flow stands beside the rest, a bad wind ends with status 2 and one line', async () => {
    const path = join(folder, 'survey.geojson');
    writeFileSync(path, surveyText(features, sunside));
    const good = await runCommand(path, '--at', '2026-06-21T12:00:00Z', '--wind', '27010G18KT');
    const printed = JSON.parse(good.out) as Record<string, unknown>;
    expect(Object.keys(printed)).toEqual(['at', 'used', 'problems', 'runways', 'spots', 'flow']);
    expect(printed['flow']).toEqual(flow('27010G18KT'));
    const bad = await runCommand(path, '--wind', '27010P');
    expect([bad.status, bad.out]).toEqual([2, '']);
    expect(bad.err).toMatch(/^--wind: "27010P" is no wind[^\n]*\n$/);
  });
});
