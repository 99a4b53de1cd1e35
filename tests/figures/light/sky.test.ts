import { describe, expect, test } from 'vitest';
import { clearSky, flatLightAt, mistFactor, type SkyThere } from '../../../src/figures/light/sky';
import { skyAtOf } from '../../../src/figures/light/sky-at';
import { sceneExposure } from '../../../src/figures/optics/exposure';
import { hazeFactor, hazeOf, lightCeiling, lightFactor } from '../../../src/figures/score';
import { scoreWord } from '../../../src/figures/score-words';
import { readMetar } from '../../../src/figures/traffic/wind/metar';
import { readWeather } from '../../../src/figures/traffic/wind/read-weather';
import { readSkyGroups } from '../../../src/figures/traffic/wind/sky-groups';
import { weatherMember } from '../../../src/figures/traffic/wind/weather-member';
import { contentsOf } from '../../support/contents';

const sky = (direct: number, visibility = 10_000): SkyThere => ({ direct, visibility });
const overcast = sky(0, 3000);

describe('situations that photographers argue about', () => {
  /** A side-on aircraft in reach and in sight. */
  const worth = (range: number, altitude: number, angle: number, there: SkyThere) =>
    lightFactor(altitude, angle, true, there) * hazeFactor(hazeOf(range, 3), range, altitude, there);

  test('[F660] an overcast day at 3 km: fair at 144 m, poor at 800 m, whatever the side', () => {
    for (const angle of [0, 90, 175]) {
      expect(scoreWord(worth(144, 35, angle, overcast))).toBe('fair');
      expect(scoreWord(worth(800, 35, angle, overcast))).toBe('poor');
    }
    expect(scoreWord(worth(2500, 35, 20, overcast))).toBe('not worth waiting for');
  });

  test('[F661] a clear day with the sun behind the aircraft is worse than an overcast one; with it behind you far better', () => {
    expect(lightFactor(30, 170, false, clearSky)).toBeLessThan(lightFactor(30, 170, false, sky(0)));
    expect(lightFactor(30, 20, true, clearSky)).toBeGreaterThan(lightFactor(30, 20, true, sky(0)) + 0.25);
  });

  test('[F662] noon in June under cloud: no harsh light, no heat haze, so better than under a clear sky', () => {
    expect(worth(1500, 62, 30, sky(0))).toBeGreaterThan(worth(1500, 62, 30, clearSky));
  });

  test('[F663] the last sun under cloud is dim: flat light falls from 6 degrees to the horizon', () => {
    expect([6, 30, -0.833, 2.5835].map((h) => Number(flatLightAt(h).toFixed(6)))).toEqual([
      0.7, 0.7, 0.2, 0.45,
    ]);
    // Below the horizon clouds change nothing: it is twilight.
    expect(lightFactor(-3, 20, true, sky(0))).toBe(0.2);
    expect(lightCeiling(-7, sky(0))).toBe(0);
  });

  test('[F664] light cloud between: d of the one and 1 - d of the other', () => {
    expect(lightFactor(20, 150, null, sky(0.35))).toBeCloseTo(
      0.35 * lightFactor(20, 150, null, clearSky) + 0.65 * 0.7,
      12,
    );
  });
});

describe('[F665] mist, against WMO-No. 8: at the meteorological optical range 5 % of the contrast is left', () => {
  test.each([500, 1500, 3000, 5000])('visibility %d m', (visibility) => {
    // Beyond what the 10 km of a clear day take.
    const left = mistFactor(visibility, sky(1, visibility)) * Math.exp((-3 * visibility) / 10_000);
    expect(left).toBeCloseTo(0.05, 3);
  });
  test('from 10 km on nothing is taken', () => {
    expect(mistFactor(5000, sky(1, 10_000))).toBe(1);
    expect(mistFactor(5000, sky(1, 16_093))).toBe(1);
  });
});

describe('what reports say of the sky', () => {
  test.each([
    ['CAVOK', 1, 10_000],
    ['9999 FEW030', 1, 10_000],
    ['9999 SCT025', 0.8, 10_000],
    ['8000 FEW010 SCT025 BKN080', 0.35, 8000],
    ['3000 BR OVC004', 0, 3000],
    ['0300 FG VV001', 0, 300],
    // High layers count one step less.
    ['9999 OVC250', 0.35, 10_000],
    ['9999 FEW020 BKN220', 0.8, 10_000],
    ['9999 SCT200', 0.8, 10_000],
    ['10SM CLR', 1, 16_093.44],
    ['3/4SM R28L/2600FT TSRA OVC010CB', 0, 1207.008],
    ['1 1/2SM BR BKN008', 0.35, 2414.016],
    ['P6SM SKC', 1, 10_000],
    ['M1/4SM FG VV///', 0, 402.336],
    ['9999NDV NCD', 1, 10_000],
    ['0600 R12/1000U DZ FG SCT010 OVC020', 0, 600],
    ['//// //////', null, null],
    ['9999 BKN/// TEMPO 3000 OVC005', 0.35, 10_000],
    ['9999 NSC RMK OVC001', 1, 10_000],
  ] as const)('[F666] %s', (text, direct, visibility) => {
    const read = readSkyGroups(text.split(' '));
    expect(read.direct).toBe(direct);
    if (visibility === null) expect(read.visibility).toBeNull();
    else expect(read.visibility).toBeCloseTo(visibility, 6);
  });

  test('[F667] the published examples (FAA AIM key, ICAO Annex 3 A3-1) whole', () => {
    const now = Date.parse('2026-07-22T18:00:00Z');
    const of = (text: string) => {
      const read = readMetar(text, now);
      if (!read.ok) throw new Error(read.reason);
      return read.value.sky;
    };
    expect(
      of(
        'METAR KPIT 091955Z COR 22015G25KT 3/4SM R28L/2600FT TSRA OVC010CB 18/16 A2992 RMK SLP045 T01820159',
      ),
    ).toEqual({ direct: 0, visibility: 0.75 * 1609.344 });
    expect(
      of(
        'METAR YUDO 221630Z 24004MPS 0600 R12/1000U DZ FG SCT010 OVC020 17/16 Q1018 BECMG TL1700 0800 FG BECMG AT1800 9999 NSW',
      ),
    ).toEqual({ direct: 0, visibility: 600 });
  });

  test('[F668] a METAR for its hour, then the forecast by the group in force; TEMPO is only said', () => {
    const now = Date.parse('2026-11-15T18:10:00Z');
    const text =
      'METAR YUDO 151800Z 13005MPS 2000 BR OVC003 12/11 Q1012=TAF YUDO 151800Z 1518/1618 13005MPS 9000 BKN020 BECMG 1606/1608 SCT015CB TEMPO 1608/1612 17006G12MPS 1000 TSRA OVC010CB FM161230 15004MPS 9999 FEW020=';
    const read = readWeather(text, now);
    if (!read.ok) throw new Error(read.reason);
    const weather = weatherMember(text, read.value, null, now);
    const at = skyAtOf(contentsOf([], { weather, site: { timeZone: 'UTC' } }));
    const when = (time: string) => at(Date.parse(`2026-11-${time}:00Z`));
    expect(when('15T18:20')).toEqual({ direct: 0, visibility: 2000 });
    expect(when('15T19:30')).toEqual({ direct: 0.35, visibility: 9000 });
    // While it is becoming the old sky stands, then what the change leaves unsaid stays.
    expect(when('16T07:00')).toEqual({ direct: 0.35, visibility: 9000 });
    expect(when('16T09:00')).toEqual({ direct: 0.8, visibility: 9000 });
    expect(when('16T13:00')).toEqual({ direct: 1, visibility: 10_000 });
    // Beyond the forecast nobody knows: as without any word.
    expect(when('17T13:00')).toEqual(clearSky);
  });

  test('[F669] what was typed for a day goes before any report of it, on that day alone', () => {
    const weather = {
      winds: [{ speedKt: 5 }],
      skies: [{ from: '2026-06-20T00:00:00Z', to: '2026-06-23T00:00:00Z', direct: 0, visibility: 4000 }],
    };
    const days = [{ date: '2026-06-21', direct: 0.8, visibility: 20_000 }];
    const at = skyAtOf(contentsOf([], { weather, sky: days, site: { timeZone: 'Europe/Zurich' } }));
    expect(at(Date.parse('2026-06-21T10:00:00Z'))).toMatchObject({ direct: 0.8, visibility: 20_000 });
    // 23:30 in Zurich is still the 21st, half an hour later it is not.
    expect(at(Date.parse('2026-06-21T21:30:00Z'))).toMatchObject({ direct: 0.8 });
    expect(at(Date.parse('2026-06-21T22:30:00Z'))).toEqual({ direct: 0, visibility: 4000 });
  });
});

test('[F670] exposure at low sun: about 13.7 at 7 degrees, 15 from 20 on, 12 at sunset (ANSI PH2.7 rows)', () => {
  const ev = (altitude: number) => sceneExposure(altitude, 'front-lit', 'clear').ev100;
  expect(ev(7)).toBeGreaterThan(13.6);
  expect(ev(7)).toBeLessThan(13.8);
  expect([ev(20), ev(50), ev(-0.833)]).toEqual([15, 15, 12]);
});
