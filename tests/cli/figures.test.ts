import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { EventEmitter } from 'node:events';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { command } from '../../src/cli/figures';
import { runCommand, startCommand } from '../support/command';
import { tiff, type TiffPlan } from '../support/tiff';
import { feature, plainKit, plainSubject, runwayFeature, spotFeature, surveyText } from '../support/contents';

let folder = '';
beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), 'sunside-'))));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

/** A GeoTIFF of level ground round the survey below, with a ridge across it. */
function model(name: string, change: Partial<TiffPlan> = {}): string {
  const [columns, rows] = [240, 160];
  const heights = Float32Array.from({ length: columns * rows }, (_, i) =>
    Math.floor(i / columns) % 20 === 10 ? 470 : 430,
  );
  const path = join(folder, name);
  const plan = { columns, rows, heights, west: 8.44, north: 47.44, stepLng: 0.0005, stepLat: 0.0005 };
  writeFileSync(path, new Uint8Array(tiff({ ...plan, ...change })));
  return path;
}

type Value = null | boolean | number | string | Value[] | { [key: string]: Value };
const isRecord = (value: Value): value is { [key: string]: Value } =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A value's shape: member names in order, types of the leaves. */
function shape(value: Value): Value {
  if (Array.isArray(value)) return value.map(shape);
  if (!isRecord(value)) return value === null ? 'null' : typeof value;
  return Object.fromEntries(Object.entries(value).map(([key, child]) => [key, shape(child)]));
}

const sample = {
  station: 'number',
  height: 'number',
  groundRange: 'number',
  slantRange: 'number',
  bearing: 'number',
  elevation: 'number',
  aspect: 'number',
  focalLength: 'number',
  focalLength35: 'number',
  lightAngle: 'number',
  phaseAngle: 'number',
  flankLit: 'boolean',
  light: 'string',
  glare: 'boolean',
  score: {
    total: 'number',
    light: 'number',
    reach: 'number',
    aspect: 'number',
    sight: 'number',
    haze: 'number',
  },
};
const end = {
  designator: 'string',
  trueBearing: 'number',
  magneticBearing: 'number',
  suggestedDesignator: 'string',
};

const features = [
  runwayFeature('twin', [8.5, 47.4], [8.52, 47.4], [{ designator: '09' }, { designator: '09' }]),
  runwayFeature(
    'half',
    [8.51, 47.39],
    [8.52, 47.41],
    [{ designator: '02', closed: true }, { designator: '20' }],
  ),
  runwayFeature('dot', [8.5, 47.4], [8.5, 47.4], [{ designator: '01' }, { designator: '19' }]),
  spotFeature('near', [8.508, 47.396]),
  // On the line of the first runway, and too far away for any lens.
  spotFeature('far', [9.4, 47.4]),
  spotFeature('lost', [8.5, 95]),
];
const survey = surveyText(features, {
  site: { elevation: 430 },
  kit: plainKit,
  subjects: [plainSubject, { ...plainSubject, key: 'small', length: 7, span: 9, height: 2.4 }],
});

interface PrintedSample {
  focalLength: number | null;
  focalLength35: number;
  settings?: { focalLength: number; iso: number; ev100: number };
}

interface Printed {
  at: string;
  used: { subject: string; body: string };
  problems: { id: string | null; reason: string; used: boolean }[];
  runways: { id: string; declination: number; ends: { designator: string }[] }[];
  spots: {
    id: string;
    runways: { id: string; side: string | null }[];
    paths: {
      path: string;
      closest: PrintedSample;
      best: PrintedSample;
      pass: PrintedSample | null;
      visibleShare: number | null;
      glareShare: number | null;
      hidden: { from: number; to: number; by: string }[];
    }[];
  }[];
}

async function printed(...args: readonly string[]): Promise<Printed> {
  const { status, out, err } = await runCommand(...args);
  expect(err).toBe('');
  expect(status).toBe(0);
  return JSON.parse(out) as Printed;
}

/** The survey above at one instant, printed once. */
let evening: Printed;
beforeAll(async () => {
  evening = await printed(file('survey.geojson', survey), '--at', '2026-06-21T17:00:00Z');
});

const hasShape = (value: unknown) =>
  JSON.stringify(Object.keys(value as object)) === JSON.stringify(Object.keys(sample));

describe('the figures command', () => {
  test('[C1] prints JSON of the shape in section 5 of the design, and nothing else', () => {
    const value = evening;
    expect(Object.keys(value)).toEqual(['at', 'used', 'problems', 'runways', 'spots']);
    expect(value.at).toBe('2026-06-21T17:00:00Z');
    expect(value.used).toEqual({ subject: 'plain', body: 'full' });
    expect(shape(value.spots[0] as unknown as Value)).toEqual({
      id: 'string',
      name: 'string',
      sun: { azimuth: 'number', altitude: 'number' },
      sky: { direct: 'number', visibility: 'number' },
      runways: ['twin', 'half'].map(() => ({
        id: 'string',
        centrelineDistance: 'number',
        side: 'string',
        station: 'number',
      })),
      paths: Array.from({ length: 9 }, () => ({
        path: 'string',
        closest: { ...sample, flankLit: expect.stringMatching(/boolean|null/) as string },
        best: { ...sample, flankLit: expect.stringMatching(/boolean|null/) as string },
        // Null where the kit reaches nothing of it, or nothing of the side.
        pass: expect.toSatisfy((pass: unknown) => pass === 'null' || hasShape(pass)) as object,
        // Null where no sample is usable.
        visibleShare: expect.stringMatching(/number|null/) as string,
        glareShare: expect.stringMatching(/number|null/) as string,
        hidden: [],
      })),
    });
    expect(value.spots[0]?.paths.some((p) => p.visibleShare === 1)).toBe(true);
    expect(shape(value.runways as unknown as Value)).toEqual(
      ['twin', 'half'].map(() => ({
        id: 'string',
        length: 'number',
        trueBearing: 'number',
        declination: 'number',
        ends: [end, end],
      })),
    );
  });

  test('[C2] two ends of one designator get #0 and #1; closed ends have no paths', () => {
    const { spots } = evening;
    const names = ['twin/09#0', 'twin/09#1', 'half/20'].flatMap((path) =>
      ['arrival', 'departure', 'circuit'].map((kind) => `${path}/${kind}`),
    );
    expect(spots[0]?.paths.map((p) => p.path)).toEqual(names);
  });

  test('[C3] what has no answer is null; doubts are used, what has no meaning is not', () => {
    const value = evening;
    const far = value.spots.find((s) => s.id === 'far');
    expect(far?.paths.map((p) => [p.visibleShare, p.glareShare])).toEqual(Array(9).fill([null, null]));
    const onLine = value.spots.find((s) => s.id === 'near')?.runways;
    expect(onLine?.map((r) => r.side)).not.toContain(null);
    expect(value.spots.map((s) => s.id)).toEqual(['near', 'far']);
    expect(value.runways.map((r) => r.id)).toEqual(['twin', 'half']);
    const of = (id: string) => value.problems.filter((p) => p.id === id).map((p) => p.used);
    expect(of('dot')).toEqual([false]);
    expect(of('lost')).toEqual([false]);
    expect(of('twin').length).toBeGreaterThan(0);
    expect(of('twin')).not.toContain(false);
    expect(value.problems.every((p) => Object.keys(p).join() === 'id,reason,used')).toBe(true);
  });

  test('[C4] --subject, --body and an instant with an offset', async () => {
    const path = file('survey.geojson', survey);
    const small = await printed(
      path,
      '--at',
      '2026-06-21T19:00:00+02:00',
      '--subject',
      'small',
      '--body',
      'crop',
    );
    expect(small.at).toBe('2026-06-21T17:00:00Z');
    expect(small.used).toEqual({ subject: 'small', body: 'crop' });
    const first = (value: Printed) => value.spots[0]?.paths[0]?.best;
    // The smaller aircraft needs more, and the smaller sensor is worth 1.53 times its focal length.
    const ratio = (first(small)?.focalLength35 ?? NaN) / (first(small)?.focalLength ?? NaN);
    expect(ratio).toBeCloseTo(Math.hypot(36, 24) / Math.hypot(23.5, 15.6), 9);
    expect(first(small)?.focalLength).not.toBe(first(evening)?.focalLength);
  });

  test('[F302] --lens adds settings to every sample, with exactly their members', async () => {
    const path = file('survey.geojson', survey);
    const at = ['--at', '2026-06-21T17:00:00Z', '--lens', 'long'];
    const options = ['--at-focal', '400', '--aperture', '7.1', '--shutter', '1/500', '--sky', 'overcast'];
    const [unpinned, pinned] = await Promise.all([printed(path, ...at), printed(path, ...at, ...options)]);
    const members = 'focalLength aperture shutter iso ev100 near far panRate blurStill propellerArc'.split(
      ' ',
    );
    for (const { spots } of [unpinned, pinned])
      for (const { closest, best } of spots.flatMap((s) => s.paths))
        for (const sample of [closest, best]) {
          expect(Object.keys(sample)).toEqual([
            ...Object.keys(evening.spots[0]?.paths[0]?.best ?? {}),
            'settings',
          ]);
          expect(Object.keys(sample.settings ?? {})).toEqual(members);
        }
    for (const { best } of pinned.spots.flatMap((s) => s.paths)) {
      expect(best.settings).toMatchObject({
        focalLength: 400,
        aperture: 7.1,
        shutter: 1 / 500,
        propellerArc: null,
      });
      const { iso, ev100 } = best.settings ?? { iso: NaN, ev100: NaN };
      expect(iso).toBeCloseTo(100 * 2 ** (Math.log2(7.1 ** 2 * 500) - ev100), 6);
    }
    for (const { best } of unpinned.spots.flatMap((s) => s.paths)) {
      const within = Math.max(150, Math.min(400, best.focalLength ?? 150));
      expect(best.settings?.focalLength).toBeCloseTo(within, 9);
    }
    expect(evening.spots[0]?.paths[0]?.best.settings).toBeUndefined();
  });

  test('[C5] without --at it is now', async () => {
    const before = Date.now();
    const { at } = await printed(file('empty.geojson', surveyText([])));
    expect(Date.parse(at)).toBeGreaterThanOrEqual(before);
    expect(Date.parse(at)).toBeLessThanOrEqual(Date.now());
  });

  test('[F157] what hides a stretch of a path, and --terrain for the ground', async () => {
    const wall = feature(
      'wall',
      'obstacle',
      'LineString',
      [
        [8.507, 47.3965],
        [8.509, 47.3965],
      ],
      { height: 40, base: 430 },
    );
    const path = file(
      'walled.geojson',
      JSON.stringify({ ...JSON.parse(survey), features: [...features, wall] }),
    );
    const [flat, hilly] = await Promise.all([
      printed(path, '--at', '2026-06-21T17:00:00Z'),
      printed(path, '--at', '2026-06-21T17:00:00Z', '--terrain', model('ridge.tif')),
    ]);
    const by = ({ spots }: Printed) => new Set(spots[0]?.paths.flatMap((p) => p.hidden.map((h) => h.by)));
    expect([...by(flat)]).toEqual(['wall']);
    expect([...by(hilly)].sort()).toEqual(['terrain', 'wall']);
    const stretch = flat.spots[0]?.paths.flatMap((p) => p.hidden)[0];
    expect(Object.keys(stretch ?? {})).toEqual(['from', 'to', 'by']);
  });

  test('[C6] whatever cannot be answered: exit status 2, one plain line, nothing on standard output', async () => {
    const good = file('survey.geojson', survey);
    const newer = survey.replace('"version":1', '"version":2');
    const refused: readonly (readonly [args: readonly string[], words: RegExp])[] = [
      [[], /a survey file is missing/],
      [[join(folder, 'absent.geojson')], /cannot be read/],
      [
        [file('broken.geojson', '{"type":\n"FeatureCollection",\n}')],
        /not JSON: it breaks at line 3, column 1/,
      ],
      [[file('newer.geojson', newer)], /newer version/],
      [[good, '--at', 'yesterday'], /--at: expected ISO 8601/],
      [[good, '--subject', 'nobody'], /--subject: the survey has no subject "nobody"/],
      [[good, '--body', 'nobody'], /--body: the kit has no body "nobody"/],
      [[good, '--lens', 'none'], /--lens: the kit has no lens "none"/],
      [[good, '--lens', 'long', '--aperture', 'f/0'], /--aperture: expected an f-number above 0/],
      [
        [good, '--lens', 'long', '--at-focal', '700'],
        /--at-focal: lens "long" can be set to 150 to 400 mm, or 210 to 560 mm with its 1.4x, not to 700 mm/,
      ],
      [[good, '--lens', 'long', '--at-focal', '100'], /--at-focal: lens "long" .* not to 100 mm/],
      [[good, '--lens', 'long', '--aperture', '4'], /--aperture: lens "long" opens to f\/5.6; f\/4 is wider/],
      [
        [good, '--lens', 'long', '--at-focal', '560', '--aperture', '5.6'],
        /with its 1.4x opens to f\/7.84; f\/5.6 is wider/,
      ],
      [[good, '--day', '2026-02-30'], /--day: expected a date/],
      [['/dev/zero'], /it is a device, and a file or a pipe is expected/],
      [[folder], /it is a folder/],
      [[good, '--terrain', '/dev/zero'], /--terrain: .* a device/],
      [[good, '--terrain', join(folder, 'absent.tif')], /--terrain: .*cannot be read/],
      [[good, '--terrain', good], /--terrain: .*no TIFF/],
      [
        [
          good,
          '--terrain',
          model('projected.tif', {
            keys: [
              [1024, 1],
              [3072, 32632],
            ],
          }),
        ],
        /EPSG:4326.*EPSG:32632/,
      ],
    ];
    for (const [args, words] of refused) {
      const { status, out, err } = await runCommand(...args);
      expect(status, args.join(' ')).toBe(2);
      expect(out).toBe('');
      expect(err).toMatch(words);
      expect(err).toMatch(/^[^\n]+\n$/);
    }
  });

  test('[C6] a start of its own ends the same: figures with status 0, a refusal with status 2', () => {
    const path = file('survey.geojson', survey);
    const good = startCommand(path, '--at', '2026-06-21T17:00:00Z');
    expect([good.status, good.err]).toEqual([0, '']);
    expect(JSON.parse(good.out)).toEqual(evening);
    const bad = startCommand(path, '--wind', '27010P');
    expect([bad.status, bad.out]).toEqual([2, '']);
    expect(bad.err).toMatch(/^--wind: "27010P" is no wind[^\n]*\n$/);
  });

  test('[C50] a date that does not exist is a doubt, not the end', async () => {
    const odd = surveyText(features, { site: { elevation: 430 }, moments: { date: '2026-02-30' } });
    const { problems, spots } = await printed(file('odd.geojson', odd), '--at', '2026-06-21T17:00:00Z');
    expect(problems.map(({ reason }) => reason).join(' ')).toContain('2026-02-30');
    expect(spots).toHaveLength(2);
  });

  test.each(['1899-06-21T17:00:00Z', '2014-12-31T12:00:00Z', '2029-12-24T12:00:00Z', '2075-06-21T17:00:00Z'])(
    '[C51] an instant at the edge of the magnetic models or beyond writes no second line: %s',
    async (at) => {
      const said = vi.spyOn(console, 'error');
      const { problems, runways } = await printed(file('survey.geojson', survey), '--at', at);
      expect(said).not.toHaveBeenCalled();
      said.mockRestore();
      expect(problems.some(({ reason }) => reason.includes('World Magnetic Models'))).toBe(
        !at.startsWith('2029'),
      );
      // Some three degrees east here, in all of these years' nearest models.
      for (const { declination } of runways) expect(Math.abs(declination - 2.8)).toBeLessThan(1.5);
    },
  );

  test('[C52] prints the same, piece by piece, as one text at once', async () => {
    const path = file('survey.geojson', survey);
    const { out } = await runCommand(path, '--at', '2026-06-21T17:00:00Z', '--wind', '24015KT');
    expect(out).toBe(`${JSON.stringify(JSON.parse(out), null, 1)}\n`);
    const bare = await runCommand(file('bare.geojson', surveyText([])), '--at', '2026-06-21T17:00:00Z');
    expect(bare.out).toBe(`${JSON.stringify(JSON.parse(bare.out), null, 1)}\n`);
  });

  test('[C53] says how far it is to a terminal only, and wipes it away', async () => {
    const many = Array.from({ length: 24 }, (_, i) => spotFeature(`s${i}`, [8.5 + i / 1000, 47.39]));
    const path = file('many.geojson', surveyText([...features.slice(0, 1), ...many]));
    const told = async (isTTY: boolean) => {
      let err = '';
      const write = (text: string | Uint8Array) => ((err += String(text)), true);
      await command([path], Date.now(), { out: { write: () => true }, err: { write, isTTY } });
      return err;
    };
    expect(await told(false)).toBe('');
    const heard = (await told(true)).split('\r');
    expect(heard.slice(0, 3)).toEqual(['', '1 of 24 spots', '2 of 24 spots']);
    expect(heard.slice(-2)).toEqual(['24 of 24 spots', '\x1b[K']);
  });

  test('[C1081] also through a day, and while it looks for places to stand', async () => {
    const many = Array.from({ length: 20 }, (_, i) => spotFeature(`s${i}`, [8.5 + i / 1000, 47.39]));
    const path = file('many.geojson', surveyText([...features.slice(1, 2), ...many]));
    let err = '';
    const write = (text: string | Uint8Array) => ((err += String(text)), true);
    const args = [path, '--at', '2026-06-21T17:00:00Z', '--day', '2026-06-21'];
    const sweep = ['--sweep', '--side', '600', '--cell', '25', '--step', '14400'];
    const status = await command([...args, ...sweep], Date.now(), {
      out: { write: () => true },
      err: { write, isTTY: true },
    });
    expect(status).toBe(0);
    const heard = err.split('\r');
    expect(heard).toContain('512 of 576 cells');
    expect(heard).toContain('19 of 20 spots through the day');
    // A shorter word leaves nothing of a longer one behind it.
    expect(heard).toContain('1 of 20 spots\x1b[K');
    expect(heard.slice(-2)).toEqual(['20 of 20 spots', '\x1b[K']);
  });

  test('[C54] waits for a reader that is slower, and keeps the spots one at a time', async () => {
    const slow = Object.assign(new EventEmitter(), {
      most: 0,
      waiting: 0,
      write(text: string | Uint8Array) {
        slow.waiting += text.length;
        slow.most = Math.max(slow.most, slow.waiting);
        setImmediate(() => {
          slow.waiting = 0;
          slow.emit('drain');
        });
        return false;
      },
    });
    const path = file('survey.geojson', survey);
    await command([path], Date.now(), { out: slow, err: { write: () => true } });
    const { out } = await runCommand(path);
    expect(slow.most).toBeLessThan(out.length * 0.7);
  });
});
