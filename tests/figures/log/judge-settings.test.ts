import { describe, expect, it } from 'vitest';
import { judgeSettings, type UsedSettings } from '../../../src/figures/log/judge-settings';
import { keepersBy } from '../../../src/figures/log/keepers';
import { measuredPairs } from '../../../src/figures/log/measured-pairs';
import { predictPass } from '../../../src/figures/log/predict';
import { nothingPinned } from '../../../src/figures/optics/settings';
import type { Sample } from '../../../src/figures/types';
import {
  contentsOf,
  feature,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
} from '../../support/contents';

const propeller = { ...plainSubject, key: 'prop', propulsion: 'propeller', rpm: 1200, blades: 4 };
const entry = (id: string, properties: object) =>
  feature(id, 'log-entry', 'Point', [8.51, 47.396], { spot: 'mound', ...properties });
const entries = [
  entry('a', {
    time: '2026-06-21T16:10:00Z',
    kept: 4,
    predicted: { light: 'front-lit' },
    settings: { focalLength: 200 },
  }),
  entry('b', {
    time: '2026-06-21T16:40:00Z',
    kept: 2,
    predicted: { light: 'front-lit' },
    settings: { focalLength: 560 },
  }),
  entry('c', {
    time: '2026-06-21T08:10:00Z',
    kept: 3,
    predicted: { light: 'back-lit' },
    settings: { focalLength: 900 },
    measured: { way: 'side-on', slantRange: 610, slantRangeError: 15, pathRange: 600, pathHeight: 80 },
  }),
  entry('d', {
    time: '2026-06-21T08:20:00Z',
    measured: { way: 'coming', slantRange: 900, slantRangeError: 20, pathRange: 900 },
  }),
];
const contents = contentsOf(
  [
    runwayFeature('rwy', [8.5, 47.4], [8.535, 47.4], [{ designator: '09' }, { designator: '27' }]),
    spotFeature('mound', [8.51, 47.396]),
    ...entries,
  ],
  { site: { elevation: 430, timeZone: 'Europe/Zurich' }, subjects: [plainSubject, propeller], kit: plainKit },
);
const sampleOf = (subject: string): Sample => {
  const pass = { spot: 'mound', path: 'rwy/27/arrival', subject };
  const [sample] = predictPass(pass, [Date.parse('2026-06-21T16:00:00Z')], contents, null);
  if (!sample) throw new Error('expected a sample');
  return sample;
};
const judge = (used: Partial<UsedSettings>, key = 'plain', sky = 1) => {
  const subject = contents.subjects.find((s) => s.key === key);
  if (!subject) throw new Error(`expected the subject ${key}`);
  return judgeSettings(
    { focalLength: 300, fNumber: null, exposure: null, ...used },
    sampleOf(key),
    40,
    { subject, body: contents.body, lenses: contents.kit.lenses },
    { ...nothingPinned, sky },
  );
};

describe('[L65] what practitioners would argue about: the settings that were used', () => {
  it('f/16 in good light where f/7.1 covers nose to tail: it would have sufficed', () => {
    expect(judge({ fNumber: 16, exposure: 1 / 500 })).toEqual([{ kind: 'closed', used: 16, enough: 7.1 }]);
  });

  it('f/8 is no different from f/7.1, and wider is nobody’s fault while nose to tail is sharp', () => {
    expect(judge({ fNumber: 8, exposure: 1 / 500 })).toEqual([]);
    expect(judge({ fNumber: 6.3, exposure: 1 / 500 })).toEqual([]);
  });

  it('slow panning of a jet blurs, of a propeller it is what one wants: too fast freezes the blades', () => {
    expect(judge({ fNumber: 7.1, exposure: 1 / 2 }).map(({ kind }) => kind)).toContain('blurred');
    expect(judge({ fNumber: 7.1, exposure: 1 / 2000 }, 'prop').map(({ kind }) => kind)).toContain('frozen');
  });

  it('without a lens that has the focal length, or what the camera did not write, nothing is said', () => {
    expect(judge({ focalLength: 1200, fNumber: 32, exposure: 1 / 15 })).toEqual([]);
    expect(judge({ focalLength: null, fNumber: 32 })).toEqual([]);
    expect(judge({})).toEqual([]);
  });
});

describe('[L66] what was worth keeping', () => {
  it('by spot, hour of the airfield’s clock, light and lens; what is not known is counted nowhere', () => {
    expect(keepersBy('spot', contents)).toEqual([{ key: 'mound', passes: 4, keepers: 2 }]);
    expect(keepersBy('hour', contents)).toEqual([
      { key: '10', passes: 2, keepers: 1 },
      { key: '18', passes: 2, keepers: 1 },
    ]);
    expect(keepersBy('light', contents).map(({ key }) => key)).toEqual(['front-lit', 'back-lit']);
    expect(keepersBy('lens', contents)).toEqual([
      { key: 'Zoom', passes: 1, keepers: 1 },
      { key: 'Long', passes: 1, keepers: 0 },
    ]);
  });

  it('only side-on frames judge the path', () => {
    expect(measuredPairs('range', contents.logEntries)).toEqual([
      { id: 'c', predicted: 600, measured: 610, error: 15 },
    ]);
    expect(measuredPairs('height', contents.logEntries)).toEqual([]);
  });
});
