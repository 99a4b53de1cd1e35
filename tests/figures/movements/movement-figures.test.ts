import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { movementsText } from '../../../src/exports/movements';
import { destination } from '../../../src/figures/geometry/earth';
import { dueOn } from '../../../src/figures/movements/due-on';
import { MovementLooks } from '../../../src/figures/movements/movement-figures';
import { nearestClass } from '../../../src/figures/movements/nearest-class';
import { inUse } from '../../../src/figures/traffic/in-use';
import { readContents } from '../../../src/survey/contents';
import { addMovements, changeMovement, deleteMovements } from '../../../src/survey/edits/movements';
import { saveSurvey } from '../../../src/survey/save';
import {
  contentsOf,
  opened,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
  surveyText,
} from '../../support/contents';

const zone = 'Europe/Zurich';
const start = [8.5, 47.4] as const;
/** A runway from west to east, with a spot 150 m to each side of it. */
const main = runwayFeature('main', start, destination(start, 90, 2500), [
  { designator: '09' },
  { designator: '27' },
]);
const beside = (id: string, bearing: number) =>
  spotFeature(id, destination(destination(start, 90, 400), bearing, 150));
const small = {
  ...plainSubject,
  key: 'C172',
  length: 8.3,
  span: 11,
  height: 2.7,
  groundRun: 300,
  landingRun: 200,
};
const sunside = {
  site: { elevation: 430, timeZone: zone },
  kit: plainKit,
  subjects: [plainSubject, small],
  flow: {
    configurations: [
      { name: 'In use', arrivals: [{ runway: 'main', end: 0 }], departures: [{ runway: 'main', end: 0 }] },
    ],
  },
};
const movement = (more: object) => ({ id: 'm', time: '10:00', use: 'arrival', ...more });
function figures(
  movements: readonly object[],
  more: object = {},
  features = [main, beside('north', 0), beside('south', 180)],
) {
  const contents = contentsOf(features, { ...sunside, ...more, movements });
  const looks = new MovementLooks(contents, inUse(contents, 0), null);
  return dueOn(contents.movements, '2026-06-21', zone).map((due) => looks.figures(due.movement, due.instant));
}

describe('movements with their figures', () => {
  test('[I115] what is due on a date, every day among it, in the order of time by the clock of the airfield', () => {
    const all = figures([
      movement({ id: 'late', time: '19:00' }),
      movement({ id: 'early', time: '06:30', date: '2026-06-21' }),
      movement({ id: 'other', date: '2026-06-22' }),
    ]);
    expect(all.map((f) => [f.movement.id, new Date(f.instant).toISOString()])).toEqual([
      ['early', '2026-06-21T04:30:00.000Z'],
      ['late', '2026-06-21T17:00:00.000Z'],
    ]);
  });

  test('[I116] the end: as listed, else by the wind of that moment, else as chosen', () => {
    const [chosen] = figures([movement({})]);
    expect(chosen).toMatchObject({ ends: ['09'], endFrom: 'in-use' });
    const [listed] = figures([movement({ runway: '27' })]);
    expect(listed).toMatchObject({ ends: ['27'], endFrom: 'given' });
    const [odd] = figures([movement({ runway: '18' })]);
    expect(odd).toMatchObject({ ends: ['09'], endFrom: 'in-use' });
    const winds = [
      { direction: 270, speedKt: 15, to: '2026-06-21T10:00:00Z' },
      { direction: 90, speedKt: 15, from: '2026-06-21T10:00:00Z' },
    ];
    const two = [movement({ id: 'a', time: '11:00' }), movement({ id: 'b', time: '13:00' })];
    const byWind = figures(two, { flow: {}, weather: { winds, follow: true } });
    expect(byWind.map((f) => [f.ends, f.endFrom])).toEqual([
      [['27'], 'wind'],
      [['09'], 'wind'],
    ]);
    const notFollowed = figures(two, { weather: { winds } });
    expect(notFollowed.map((f) => [f.ends, f.endFrom])).toEqual([
      [['09'], 'in-use'],
      [['09'], 'in-use'],
    ]);
  });

  test('[I117] the best spot is on the lit side: south of the runway at noon, with lens and light; nothing at night', () => {
    const [noon, night] = figures([movement({ time: '13:30' }), movement({ id: 'n', time: '23:30' })]);
    expect(noon?.best?.spot.id).toBe('south');
    expect(noon?.best?.lens?.verdict).toBe('fits');
    expect(noon?.best?.reading.focalLength).toBeGreaterThan(70);
    expect(night).toMatchObject({ best: null });
    const forbidden = spotFeature('south', destination(destination(start, 90, 400), 180, 150), {
      access: { status: 'forbidden' },
    });
    const [without] = figures([movement({ time: '13:30' })], {}, [main, beside('north', 0), forbidden]);
    expect(without?.best?.spot.id).toBe('north');
  });

  test('[I118] the subject: by type, by the class chosen for it, else the current one, said to be unknown', () => {
    const [typed, asked, unknown] = figures([
      movement({ id: 'a', time: '10:00', type: 'c172' }),
      movement({ id: 'b', time: '10:01', type: 'P28A', subject: 'C172' }),
      movement({ id: 'c', time: '10:02', type: 'ZZZZ' }),
    ]);
    expect([typed?.subject.key, typed?.known]).toEqual(['C172', true]);
    expect([asked?.subject.key, asked?.known]).toEqual(['C172', true]);
    expect([unknown?.subject.key, unknown?.known]).toEqual(['plain', false]);
    // The smaller aircraft needs the longer lens.
    expect(typed?.best?.reading.focalLength ?? 0).toBeGreaterThan(
      unknown?.best?.reading.focalLength ?? Infinity,
    );
    const starter = contentsOf([]).subjects;
    expect(['B77L', 'A319', 'C56X', 'DH8C', 'EC45', 'P32R'].map((t) => nearestClass(t, starter))).toEqual([
      'any-wide-body',
      'any-narrow-body',
      'any-business-jet',
      'any-turboprop-twin',
      'any-helicopter',
      'any-light-single',
    ]);
    expect(nearestClass('B77L', [])).toBe(null);
    // Nobody can tell: no light single in silence.
    expect(nearestClass('ZZZZ', starter)).toBe(null);
  });

  test('[I119] the table of movements: read back by a library, times local, formulas disarmed', () => {
    const text = movementsText(
      figures([
        movement({ time: '13:30', type: 'C172', flight: '=1+1', place: 'Bern, "old"', starred: true }),
        movement({ id: 'n', time: '23:30' }),
      ]),
      zone,
    );
    const { data } = Papa.parse<Record<string, string>>(text.replace('\ufeff', '').trim(), { header: true });
    expect(data).toHaveLength(2);
    expect(data[0]).toMatchObject({
      Date: '2026-06-21',
      Time: '13:30',
      'Arrival or departure': 'arrival',
      Flight: "'=1+1",
      'From or to': 'Bern, "old"',
      'Ends expected': '09',
      Wanted: 'yes',
      Spot: 'south',
      Verdict: expect.stringMatching(/fits|too-short/) as string,
    });
    expect(data[1]).toMatchObject({ Spot: '', Light: '' });
  });

  test('[I120] kept in the survey: added once, changed, deleted; what does not fit is set aside with its path', () => {
    const empty = opened(surveyText([]));
    const one = {
      date: null,
      time: '14:25',
      use: 'arrival',
      type: 'A320',
      subject: null,
      flight: '',
      place: '',
      runway: '',
      starred: false,
    } as const;
    const added = addMovements(empty, [], [one, { ...one, type: 'a320' }, { ...one, time: '15:00' }]);
    const { movements } = readContents(opened(saveSurvey(added)));
    expect(movements.map((m) => m.time)).toEqual(['14:25', '15:00']);
    expect(JSON.stringify(added.sunside['movements'])).not.toMatch(/null|""|false/);
    expect(addMovements(added, movements, [one])).toBe(added);
    const id = movements[0]?.id ?? '';
    expect(readContents(changeMovement(added, id, { starred: true })).movements[0]?.starred).toBe(true);
    expect(readContents(deleteMovements(added, new Set([id]))).movements.map((m) => m.time)).toEqual([
      '15:00',
    ]);
    expect(deleteMovements(added, new Set(movements.map((m) => m.id))).sunside).toEqual(empty.sunside);
    const odd = readContents(
      opened(
        surveyText([], {
          movements: [
            { id: 'a', time: '25:00', use: 'arrival' },
            7,
            { id: 'b', time: '10:00', use: 'departure', mine: 1 },
          ],
        }),
      ),
    );
    expect(odd.movements.map((m) => m.id)).toEqual(['b']);
    expect(odd.problems.map((p) => [p.used, p.reason.split(':')[0]])).toEqual([
      [false, 'sunside.movements.0.time'],
      [false, 'sunside.movements.1'],
    ]);
  });
});
