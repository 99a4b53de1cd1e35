import { describe, expect, test } from 'vitest';
import { readWeather } from '../../../../src/figures/traffic/wind/read-weather';
import { weatherMember } from '../../../../src/figures/traffic/wind/weather-member';
import { windAt } from '../../../../src/figures/traffic/wind/wind-at';

const now = Date.parse('2026-11-28T13:00:00Z');
const read = (text: string, at = now) => {
  const answer = readWeather(text, at);
  return answer.ok ? answer.value : answer.reason;
};
const member = (text: string, magnetic: number | null = null, at = now) => {
  const answer = readWeather(text, at);
  if (!answer.ok) throw new Error(answer.reason);
  return weatherMember(text, answer.value, magnetic, at);
};

describe('winds as people type them', () => {
  test.each([
    ['240/15', 240, 15, null],
    ['240 15G25', 240, 15, 25],
    ['240°/15 kt', 240, 15, null],
    ['270 at 15 kt gusting 25', 270, 15, 25],
    ['w 10', 270, 10, null],
    ['NNE/12', 22.5, 12, null],
    ['0/12', 360, 12, null],
    ['variable 3', null, 3, null],
    ['calm', null, 0, null],
    ['24015G25KT', 240, 15, 25],
    [' vrb03kt ', null, 3, null],
  ])('[F217] %s', (text, from, speedKt, gustKt) => {
    expect(read(text)).toMatchObject({ typed: { from, speedKt, gustKt } });
  });

  test('[F218] in metres a second and kilometres an hour', () => {
    const speed = (text: string) => (read(text) as { typed: { speedKt: number } }).typed.speedKt;
    expect(speed('240/10 m/s')).toBeCloseTo(36_000 / 1852, 9);
    expect(speed('240 20 km/h')).toBeCloseTo(20_000 / 1852, 9);
  });

  test.each([
    ['', /is no wind/],
    ['hello', /is no wind/],
    ['24015', /is no wind/],
    ['361/15', /no direction/],
    ['XY 15', /no direction/],
    ['240/15G12', /not above the mean/],
    ['240/150', /more than 100 kt/],
    ['P99KT', /stronger than the report can tell/],
  ])('[F219] %j is refused with a reason', (text, words) => {
    expect(read(text)).toMatch(words);
  });

  test('[F220] a magnetic direction is turned to true, a report is left as it is', () => {
    expect(member('240/15', 4.5).winds[0]).toMatchObject({ direction: 244.5 });
    expect(member('358/15', 4).winds[0]).toMatchObject({ direction: 2 });
    const report = member('METAR EPXX 281250Z 24015KT 200V280 CAVOK', 4.5);
    expect(report).toMatchObject({ magnetic: false, remarks: [expect.stringMatching(/true directions/)] });
    expect(report.winds[0]).toMatchObject({ direction: 240, variesFrom: 200, variesTo: 280 });
  });
});

const taf =
  'TAF EPXX 281100Z 2812/2918 24015KT 9999 PROB30 TEMPO 2814/2816 30025G40KT BECMG 2820/2822 07012KT FM290630 VRB02KT';

describe('forecasts', () => {
  test('[F221] the wind of any instant: what holds, what comes beside it, nothing outside', () => {
    const weather = member(taf);
    const at = (instant: string) => windAt(weather, Date.parse(instant));
    expect(at('2026-11-28T11:59:59Z')).toBe(null);
    expect(at('2026-11-28T12:00:00Z')).toMatchObject({ wind: { from: 240, speedKt: 15 }, others: [] });
    expect(at('2026-11-28T15:00:00Z')).toMatchObject({
      wind: { from: 240 },
      others: [{ likelihood: 'chance', probability: 30, wind: { from: 300, speedKt: 25, gustKt: 40 } }],
    });
    // While the wind is becoming another, the old one is still there.
    expect(at('2026-11-28T21:00:00Z')).toMatchObject({
      wind: { from: 240 },
      others: [{ likelihood: 'becoming', wind: { from: 70, speedKt: 12 } }],
    });
    expect(at('2026-11-28T22:00:00Z')).toMatchObject({ wind: { from: 70 }, others: [] });
    expect(at('2026-11-29T06:30:00Z')).toMatchObject({ wind: { from: null, speedKt: 2 } });
    expect(at('2026-11-29T18:00:00Z')).toBe(null);
  });

  test('[F222] a change without a wind keeps the one before; a wind that cannot be read holds nowhere', () => {
    const kept = member('TAF EPXX 281100Z 2812/2824 24015KT CAVOK BECMG 2814/2816 4000 BR');
    expect(windAt(kept, Date.parse('2026-11-28T20:00:00Z'))).toMatchObject({
      wind: { from: 240 },
      others: [],
    });
    const broken = member('TAF EPXX 281100Z 2812/2824 P99KT FM282000 24010KT');
    expect(broken.remarks).toEqual([expect.stringMatching(/cannot be used: "P99KT"/)]);
    expect(windAt(broken, Date.parse('2026-11-28T13:00:00Z'))).toBe(null);
    expect(windAt(broken, Date.parse('2026-11-28T21:00:00Z'))).toMatchObject({ wind: { from: 240 } });
    const misread = member('TAF EPXX 281100Z 2812/2824 210103G130KT');
    expect(misread.remarks).toEqual([expect.stringMatching(/misreads 210103G130KT/)]);
    expect(misread.winds[0]).toMatchObject({ direction: 210, speedKt: 103, gustKt: 130 });
  });

  test('[F223] a TAF of last week is said to be over, an old METAR to be old', () => {
    const lastWeek = member(
      'TAF EPXX 211100Z 2112/2218 24015KT 9999',
      null,
      Date.parse('2026-11-29T18:00:00Z'),
    );
    expect(lastWeek.forecastTo).toBe('2026-11-22T18:00:00Z');
    expect(lastWeek.remarks).toEqual([expect.stringMatching(/^This forecast ended 7 days ago/)]);
    expect(member('METAR EPXX 280500Z 24015KT CAVOK').remarks).toEqual([
      expect.stringMatching(/^This observation is 8 hours old/),
    ]);
    expect(member(taf).remarks).toEqual([]);
  });

  test('[F224] several reports at once: the newest of each kind; a METAR goes before the TAF while it is new', () => {
    const both = member(`METAR EPXX 281250Z 26010KT CAVOK=\nMETAR EPXX 281220Z 25010KT CAVOK=\n${taf}=`);
    expect(both.remarks).toEqual([expect.stringMatching(/the newest is used/)]);
    expect(windAt(both, Date.parse('2026-11-28T13:30:00Z'))).toMatchObject({ wind: { from: 260 } });
    expect(windAt(both, Date.parse('2026-11-28T14:00:00Z'))).toMatchObject({ wind: { from: 240 } });
    const half = read(`EPXX 281250Z 26010KT CAVOK\n${taf.replace('24015KT', '/////KT')}`);
    expect(half).toMatchObject({ metar: { wind: { from: 260 } } });
    expect(read('EPXX 281250Z NIL\nTAF EPXX 281100Z NIL')).toMatch(/no wind in it; .*empty or cancelled/);
    expect(read('TAF EPXX 281100Z')).toMatch(/no TAF can be read/);
  });
});
