import { describe, expect, test } from 'vitest';
import { readMetar } from '../../../../src/figures/traffic/wind/metar';
import { readWindGroup } from '../../../../src/figures/traffic/wind/wind-group';

const now = Date.parse('2026-11-25T12:00:00Z');
const refusal = (group: string) => {
  const read = readWindGroup(group);
  return read.ok ? read.value : read.reason;
};
const metar = (text: string) => {
  const read = readMetar(text, now);
  return read.ok ? read.value : read.reason;
};

describe('wind groups by their strict grammar', () => {
  test.each([
    ['P99KT', /stronger than the report can tell/],
    ['270P99KT', /stronger than the report can tell/],
    ['24060GP99KT', /stronger than the report can tell/],
    ['P49MPS', /stronger than the report can tell/],
    ['ABV99KT', /stronger than the report can tell/],
    ['/////KT', /was not measured/],
    ['///15KT', /was not measured/],
    ['240//KT', /was not measured/],
    ['37015KT', /above 360/],
    ['00015KT', /a north wind is 360/],
    ['24015G15KT', /gusts that are not above/],
    ['2401KT', /no wind group/],
    ['240015KT', /no wind group/],
    ['24015', /no wind group/],
    ['24015G25', /no wind group/],
    ['24015KTS', /no wind group/],
    ['24015G25KT 9999', /no wind group/],
    ['', /no wind group/],
    ['NaN', /no wind group/],
  ])('[F200] %s is refused', (group, words) => {
    expect(refusal(group)).toMatch(words);
  });

  test('[F201] a direction with no speed is a calm, and a calm has no direction', () => {
    expect(refusal('24000KT')).toEqual({ from: null, speedKt: 0, gustKt: null, varies: null });
    expect(refusal('36010KT')).toMatchObject({ from: 360 });
  });
});

describe('METARs that the library misreads or cannot read', () => {
  test.each([
    ['210103G130KT', { from: 210, speedKt: 103, gustKt: 130 }],
    ['24010KMH', { from: 240, gustKt: null }],
  ])('[F202] %s: the group goes, and the misreading is said', (group, wind) => {
    const read = metar(`METAR EPXX 251150Z ${group} 9999 SCT030 12/08 Q1018`);
    expect(read).toMatchObject({ wind, remarks: [expect.stringContaining(`misreads ${group}`)] });
  });

  test.each([
    ['EPXX 251150Z P99KT 9999', /stronger than the report can tell/],
    ['EPXX 251150Z AUTO /////KT ////', /was not measured/],
    ['EPXX 251150Z NIL', /no wind in it/],
    ['METAR EPXX 251150Z', /no wind in it/],
    ['EPXX 251150Z CAVOK 12/08 Q1018', /no wind group after its time: "CAVOK"/],
    ['EPXX 251150Z 24015 KT CAVOK', /no wind group after its time: "24015"/],
    ['EPXX 321150Z 24015KT', /of a day 32/],
    ['EPXX 252450Z 24015KT', /no METAR can be read/],
    ['TAF EPXX 251130Z 2512/2612 24015KT', /a forecast/],
    ['hello there', /no METAR can be read/],
    ['', /no METAR can be read/],
  ])('[F203] %s is refused with a reason', (text, words) => {
    expect(metar(text)).toMatch(words);
  });

  test('[F204] small letters, line breaks, AUTO, SPECI and the sign at the end', () => {
    const wind = { from: 240, speedKt: 15, gustKt: 25, varies: [200, 280] };
    expect(metar('speci epxx 251150z auto 24015g25kt\n 200v280 9999 =')).toMatchObject({ wind, remarks: [] });
    expect(metar('EPXX 251150Z COR 24015G25KT 200V280 CAVOK')).toMatchObject({ wind });
  });

  test('[F205] a report is the last of its day and time: of last month, if need be, never of tomorrow', () => {
    const seen = (group: string) => (metar(`EPXX ${group} 24015KT CAVOK`) as { observed: number }).observed;
    expect(seen('251150Z')).toBe(Date.parse('2026-11-25T11:50:00Z'));
    // Half an hour ahead is a clock that is slow; two hours ahead is another month.
    expect(seen('251230Z')).toBe(Date.parse('2026-11-25T12:30:00Z'));
    expect(seen('251400Z')).toBe(Date.parse('2026-10-25T14:00:00Z'));
    expect(seen('311200Z')).toBe(Date.parse('2026-10-31T12:00:00Z'));
  });
});
