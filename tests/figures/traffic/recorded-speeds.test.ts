import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { recordedSpeeds } from '../../../src/figures/traffic/recorded-speeds';
import { nothingPinned, settingsFor } from '../../../src/figures/optics/settings';
import { outlookOf } from '../../../src/figures/outlook';
import { inspectPath } from '../../../src/figures/spot/inspect-path';
import { contentsOf, feature, plainKit, plainSubject, spotFeature } from '../../support/contents';
import { pathNamed } from '../../support/flown';

const start = [8.5, 47.4] as const;
/** A record of one point a second at 70 m/s, eastwards. */
const seconds = Array.from({ length: 41 }, (_, i) => i);
const line = seconds.map((s) => destination(start, 90, 70 * s));
const clock = seconds.map((s) => Date.parse('2026-06-21T10:00:00Z') + 1000 * s);

describe('speeds of a recorded path', () => {
  test('[F510] are ground speeds between its points', () => {
    for (const speed of recordedSpeeds(line, clock)) expect(speed).toBeCloseTo(70, 1);
  });

  test('[F511] a clock of whole seconds and one place far off spoil none', () => {
    // Points 0.7 s apart, whose clock drops the fraction: legs alone say 49 m/s, or no time at all.
    const quick = Array.from({ length: 60 }, (_, i) => destination(start, 90, 49 * i));
    const whole = quick.map((_, i) => (clock[0] as number) + 1000 * Math.floor(0.7 * i));
    for (const speed of recordedSpeeds(quick, whole)) expect(Math.abs(speed - 70)).toBeLessThan(4);
    const stray = line.map((place, i) => (i === 20 ? destination(place, 0, 90) : place));
    const speeds = recordedSpeeds(stray, clock);
    for (const i of [5, 10, 30, 35]) expect(speeds[i]).toBeCloseTo(70, 1);
    for (const speed of speeds) expect(Math.abs(speed - 70)).toBeLessThan(30);
  });

  test('[F512] follow an aircraft that slows down, and one that stands', () => {
    const places = [0, 60, 110, 150, 180, 200, 210, 210.6, 211].map((m) => destination(start, 90, m));
    const times = [0, 10, 20, 30, 40, 50, 60, 70, 200].map((s) => s * 1000);
    const speeds = [...recordedSpeeds(places, times)];
    expect(speeds.slice(0, 6).map((v) => Math.round(v * 10) / 10)).toEqual([6, 5, 4, 3, 2, 1]);
    expect(speeds[7]).toBeLessThan(0.1);
  });

  test('[F513] are unknown without times, where no time passes, and beyond all that flies', () => {
    expect([...recordedSpeeds(line, [])].every(Number.isNaN)).toBe(true);
    expect(
      [
        ...recordedSpeeds(
          line,
          clock.map(() => 0),
        ),
      ].every(Number.isNaN),
    ).toBe(true);
    expect(
      [
        ...recordedSpeeds(
          line,
          clock.map((t) => t / 100),
        ),
      ].every(Number.isNaN),
    ).toBe(true);
  });
});

describe('what follows from the speed of a path', () => {
  const spot = spotFeature('s', destination(destination(start, 90, 1400), 0, 300), {
    ground: 0,
    eyeHeight: 1.7,
  });
  const times = clock.map((t) => new Date(t).toISOString());
  const seen = (properties: object) => {
    const flown = { heights: line.map(() => 100), ...properties };
    const contents = contentsOf([feature('f', 'flight-path', 'LineString', line, flown), spot], {
      site: { elevation: 0 },
      subjects: [{ ...plainSubject, propulsion: 'propeller', rpm: 1200, blades: 6 }],
      kit: plainKit,
    });
    const [standing] = contents.spots;
    const [, lens] = contents.kit.lenses;
    if (!standing || !lens) throw new Error('expected a spot and a lens');
    const path = pathNamed(contents, 'f');
    const sample = inspectPath(
      standing,
      path,
      1400,
      outlookOf(contents, null),
      Date.parse('2026-06-21T10:00:00Z'),
    );
    return { sample, settings: settingsFor(sample, 40, { ...contents, lens }, nothingPinned) };
  };

  test('[F514] a recorded one is as fast as its times say, not as the subject is', () => {
    const { sample, settings } = seen({ source: 'recorded', times });
    expect(sample.speed).toBeCloseTo(70, 1);
    // Abeam at 316 m: 70 / 316 rad/s.
    expect(settings.panRate).toBeCloseTo(((70 / sample.slantRange) * 180) / Math.PI, 1);
    expect(seen({ source: 'drawn' }).sample.speed).toBe(plainSubject.approachSpeed);
  });

  test('[F515] without times nothing that hangs on the speed is told; the blades turn all the same', () => {
    const { sample, settings } = seen({ source: 'recorded' });
    expect(sample.speed).toBeNull();
    expect(settings).toMatchObject({
      panRate: null,
      blurStill: null,
      blurPanned: null,
      slowest: null,
      secondsAcross: null,
    });
    expect(settings.shutterFrom).toBe('blades');
    expect(settings.propellerArc).toBeCloseTo(60, 6);
  });
});
