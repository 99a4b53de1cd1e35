import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { outlookOf } from '../../../src/figures/outlook';
import { spotFigures } from '../../../src/figures/spot-figures';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { fieldDay, type FieldAsked } from '../../../src/figures/trip/field-day';
import { rankFields } from '../../../src/figures/trip/rank-fields';
import { readContents, type Contents } from '../../../src/survey/contents';
import { opened } from '../../support/contents';

const text = readFileSync('sample-sites/tolverby.geojson', 'utf8');
const tolverby = readContents(opened(text));
const saturday: FieldAsked = { date: '2026-06-20', wind: null, perHour: null };
/** A field with nothing private: neither list nor log of movements. */
const silent: Contents = { ...tolverby, movements: [], logEntries: [] };
const named = (name: string, contents: Contents): Contents => ({
  ...contents,
  site: { ...contents.site, name },
});

describe('[F760] a field on a day', () => {
  const found = fieldDay(silent, { ...saturday, perHour: 12 });

  it('counts the minutes in which some path that is flown is fair, without glare: each step by the figures', () => {
    const [flow] = found.flows;
    const paths = pathsOf(
      silent,
      (kind, runway, end) => {
        const r = silent.runways.find(({ id }) => id === runway);
        return (
          kind !== 'circuit' && end !== null && flow?.ends.includes(r?.ends[end].designator ?? '') === true
        );
      },
      null,
    ).filter(({ ref }) => ref.kind === 'arrival' || ref.kind === 'departure' || ref.kind === 'flight-path');
    let minutes = 0;
    for (const { spot: id, from, to } of found.stays) {
      const spot = silent.spots.find((s) => s.id === id);
      if (!spot) throw new Error('expected a spot of the survey');
      for (let t = from + 150_000; t < to; t += 300_000) {
        const [figures] = spotFigures(spot, paths, outlookOf(silent, null), [t]);
        if (figures?.paths.some(({ best }) => !best.glare && best.score.total >= 0.6)) minutes += 5;
      }
    }
    // The rows interpolate the sun: an edge may fall a step to either side.
    expect(Math.abs(found.goodMinutes - minutes)).toBeLessThanOrEqual(10);
    expect(found.goodMinutes).toBeGreaterThan(120);
  });

  it('is good minutes x movements per hour / 60', () => {
    expect(found.goodPasses).toBeCloseTo((found.goodMinutes * 12) / 60, 9);
    expect(fieldDay(silent, saturday).goodPasses).toBeNull();
  });

  it('follows a typed wind, whatever the survey has in use', () => {
    const [west, east] = [250, 70].map((from) =>
      fieldDay(silent, { ...saturday, wind: { from, speedKt: 15, gustKt: null, varies: null } }),
    );
    expect([west?.flowFrom, west?.flows[0]?.ends, east?.flows[0]?.ends]).toEqual([
      'typed-wind',
      ['25'],
      ['07'],
    ]);
    expect(west?.stays.map(({ path }) => path).join()).not.toContain('07');
  });
});

describe('[F761] which field: what practitioners would argue about', () => {
  const airport = named('Airport', silent);
  /** One spot and a landing now and then, but good light all day long: nothing is in its way. */
  const strip = named('Strip', silent);
  const forbidden = named('Forbidden', {
    ...silent,
    rules: { ...silent.rules, photography: 'forbidden' },
  });
  const compare = (...fields: readonly (readonly [Contents, number | null, number?])[]) => {
    const { ranked, unranked } = rankFields(
      fields.map(([contents, perHour, way]) => ({
        day: fieldDay(contents, { ...saturday, perHour }),
        way: way ?? null,
      })),
    );
    return [ranked.map(({ day }) => day.name), unranked.map(({ day }) => day.name)];
  };

  it('a quiet strip has as many good minutes as the airport: without figures neither is put before the other', () => {
    expect(compare([strip, null], [airport, null])).toEqual([[], ['Strip', 'Airport']]);
    // Nor does one figure alone make an order.
    expect(compare([strip, 2], [airport, null])).toEqual([[], ['Strip', 'Airport']]);
  });

  it('with figures the airport comes first by what flies, not by the light', () => {
    expect(compare([strip, 2], [airport, 30])).toEqual([['Airport', 'Strip'], []]);
  });

  it('where photography is forbidden no traffic helps, known or not: it stands last, and says why', () => {
    expect(compare([forbidden, null], [strip, 2], [airport, null])).toEqual([
      ['Strip', 'Forbidden'],
      ['Airport'],
    ]);
    const day = fieldDay(forbidden, { ...saturday, perHour: 40 });
    expect([day.against, day.goodMinutes, day.goodPasses, day.stays]).toEqual([
      'photography-forbidden',
      0,
      0,
      [],
    ]);
  });

  it('as many passes: the shorter way first', () => {
    expect(compare([strip, 5, 90], [airport, 5, 20])).toEqual([['Airport', 'Strip'], []]);
  });
});

describe('[F762] what is known of the traffic', () => {
  const movement = (time: string) => ({ ...tolverby.movements[0], date: null, time });
  const list = (...times: readonly string[]) =>
    ({ ...silent, movements: times.map(movement) }) as unknown as Contents;

  it('a typed figure goes before the list; a list of two says nothing', () => {
    expect(fieldDay(list('09:00', '10:00', '11:00'), { ...saturday, perHour: 7 }).traffic).toEqual({
      perHour: 7,
      from: 'typed',
    });
    expect(fieldDay(list('09:00', '10:00'), saturday).traffic).toBeNull();
  });

  it('six in three hours are two an hour; three within ten minutes are three, not eighteen', () => {
    const six = list('09:00', '09:30', '10:00', '10:30', '11:00', '12:00');
    expect(fieldDay(six, saturday).traffic).toEqual({ perHour: 2, from: 'list' });
    expect(fieldDay(list('09:00', '09:05', '09:10'), saturday).traffic?.perHour).toBe(3);
  });
});
