import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { displaysJson } from '../../src/cli/displays-json';
import { figuresJson } from '../../src/cli/figures-json';
import { readContents } from '../../src/survey/contents';
import { saveSurvey } from '../../src/survey/save';
import { runCommand } from '../support/command';
import { opened } from '../support/contents';

const deck = 'Car park, top deck';
const survey = opened(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
const onlyTheDeck = survey.features.filter(
  ({ properties }) => properties?.['kind'] !== 'standing-spot' || properties['name'] === deck,
);
/** The sample site with other properties of its display line, and one spot. */
const shown = (display: object, features = onlyTheDeck) =>
  readContents({
    ...survey,
    features: features.map((feature) => {
      const kind = feature.properties?.['kind'];
      return kind === 'display-line'
        ? { ...feature, properties: { ...feature.properties, ...display } }
        : feature;
    }),
  });
const at = Date.parse('2026-06-21T16:30:00Z');
const pathOf = (contents: ReturnType<typeof shown>, part: string) => {
  const spot = figuresJson(contents, [], at, null).spots.find(({ name }) => name === deck);
  return spot?.paths.find(({ path }) => path.includes(part));
};

describe('formations that the command prints', () => {
  test('[F1117] all of them take a shorter lens than one; the one is the path as ever', () => {
    const path = pathOf(shown({ passes: ['level'], aircraft: 4, spacing: 60 }), 'd5k8wr/');
    const { formation, best, closest } = path ?? {};
    expect(formation).toMatchObject({ aircraft: 4, spacing: 60 });
    expect(formation?.best?.one).toBeCloseTo(best?.focalLength ?? NaN, 6);
    expect(formation?.closest?.one).toBeCloseTo(closest?.focalLength ?? NaN, 6);
    expect(formation?.best?.all).toBeLessThan((best?.focalLength ?? NaN) / 1.5);
  });

  test('[F1118] nobody has said how far apart: all of them is null, one is not; one alone has no such member', () => {
    const { formation } = pathOf(shown({ passes: ['level'], aircraft: 2 }), 'd5k8wr/') ?? {};
    expect(formation).toMatchObject({ aircraft: 2, spacing: null, best: { all: null } });
    expect(formation?.best?.one).toBeGreaterThan(0);
    expect(pathOf(shown({ passes: ['level'] }), 'd5k8wr/')).not.toHaveProperty('formation');
  });
});

describe('displays that the command prints', () => {
  const programme = [
    { time: '15:20', to: '15:40', name: 'Solo jet', type: 'F-16' },
    { time: '17:50', name: 'Old crate', type: 'Zorblatt 3' },
    { name: 'Fire engine' },
    { date: '2026-06-22', time: '15:20', name: 'Tomorrow' },
  ];
  const late = { date: '2026-06-21', minutes: 20 };
  const [display] = displaysJson(
    shown({ passes: ['level'], programme, late }, [...survey.features]),
    '2026-06-21',
    null,
  );

  test('[F1123] the acts of that day, as late as they run, lit from which side until when, best from where', () => {
    expect(display).toMatchObject({ id: 'd5k8wr', name: 'Open day display' });
    expect(display?.crowdDistance).toBeCloseTo(250, -1);
    expect(display?.acts.map(({ name, from, to }) => [name, from, to])).toEqual([
      ['Solo jet', '2026-06-21T13:40:00Z', '2026-06-21T14:00:00Z'],
      ['Old crate', '2026-06-21T16:10:00Z', '2026-06-21T16:20:00Z'],
      ['Fire engine', null, null],
    ]);
    const [jet] = display?.acts ?? [];
    expect(jet).toMatchObject({ late: 20, type: { is: 'known', given: null } });
    expect(jet?.type.subject).not.toBeNull();
    expect(Date.parse(jet?.litUntil ?? '')).toBeGreaterThan(Date.parse(jet?.to ?? ''));
    expect(jet?.best?.path).toMatch(/^d5k8wr\//);
    expect(jet?.best?.focalLength).toBeGreaterThan(0);
  });

  test('[F1120] what nobody knows is null: the size of an unknown type, the light of an act without a time', () => {
    const [, crate, engine] = display?.acts ?? [];
    expect(crate).toMatchObject({ type: { is: 'unknown', given: 'Zorblatt 3', subject: null }, best: null });
    expect(crate?.lit).not.toBeNull();
    expect(engine).toMatchObject({ type: { is: 'unsaid' }, lit: null, litUntil: null, best: null });
  });

  test('[F1121] stand behind --day in the answer of the command', async () => {
    const path = join(mkdtempSync(join(tmpdir(), 'sunside-')), 'deck.geojson');
    writeFileSync(path, saveSurvey({ ...survey, features: onlyTheDeck }));
    const args = [path, '--at', '2026-06-21T16:30:00Z', '--day', '2026-06-21'];
    const { status, out } = await runCommand(...args);
    expect(status).toBe(0);
    const { displays } = JSON.parse(out) as { displays: { acts: { name: string }[] }[] };
    expect(displays[0]?.acts.map(({ name }) => name)).toContain('Jet, solo');
  });
});
