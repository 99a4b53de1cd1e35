import { describe, expect, test } from 'vitest';
import { actLight, middleOfLine } from '../../../src/figures/display/act-light';
import { actsOf } from '../../../src/figures/display/programme-acts';
import { destination } from '../../../src/figures/geometry/earth';
import { contentsOf, feature, plainSubject } from '../../support/contents';

const middle = [8.5, 47.4] as const;
const zone = 'Europe/Zurich';
const saturday = '2026-09-19';
const sunday = '2026-09-20';
const at = (clock: string, date = saturday) => Date.parse(`${date}T${clock}:00+02:00`);

function display(programme: readonly object[], more: object = {}) {
  const line = [destination(middle, 270, 800), destination(middle, 90, 800)];
  const contents = contentsOf([feature('show', 'display-line', 'LineString', line, { programme, ...more })], {
    subjects: [plainSubject],
    site: { timeZone: zone },
  });
  const [found] = contents.displayLines;
  if (!found) throw new Error('expected a display line');
  return { found, acts: (date = saturday) => actsOf(found, date, zone, contents.subjects) };
}
const slots = (acts: ReturnType<typeof actsOf>) => acts.map(({ slot }) => slot && [slot.from, slot.to]);

describe('a programme that has to be flown', () => {
  test('[F1089] an entry lasts until it is said to end, until the next one, or ten minutes', () => {
    const { acts } = display([
      { time: '13:00', name: 'First' },
      { time: '13:06', to: '13:30', name: 'Second' },
      { time: '14:00', name: 'Third' },
    ]);
    expect(slots(acts())).toEqual([
      [at('13:00'), at('13:06')],
      [at('13:06'), at('13:30')],
      [at('14:00'), at('14:10')],
    ]);
  });

  test('[F1090] arguable: it slips by 20 minutes: all of that day does, the next day is as printed, and so is what is printed', () => {
    const programme = [
      { time: '13:00', name: 'First' },
      { time: '13:30', to: '13:50', name: 'Second' },
    ];
    const { acts } = display(programme, { late: { date: saturday, minutes: 20 } });
    expect(slots(acts())).toEqual([
      [at('13:20'), at('13:30')],
      [at('13:50'), at('14:10')],
    ]);
    expect(acts().map(({ late, entry }) => [late, entry.time])).toEqual([
      [20, '13:00'],
      [20, '13:30'],
    ]);
    expect(slots(acts(sunday))[0]).toEqual([at('13:00', sunday), at('13:10', sunday)]);
  });

  test('[F1091] arguable: without a time it is not guessed from its neighbours, only said to come between them', () => {
    const { acts } = display([
      { time: '13:00', name: 'First' },
      { name: 'Some time' },
      { time: '13:30', name: 'Second' },
      { name: 'Last' },
    ]);
    expect(acts().map(({ slot }) => slot === null)).toEqual([false, true, false, true]);
    expect(acts()[1]?.between.map((e) => e?.name)).toEqual(['First', 'Second']);
    expect(acts()[3]?.between.map((e) => e?.name ?? null)).toEqual(['Second', null]);
  });

  test('[F1092] arguable: two at the same time are both flown, each said to be beside the other; what follows on is not', () => {
    const { acts } = display([
      { time: '13:00', to: '13:20', name: 'Parachutes' },
      { time: '13:10', to: '13:20', name: 'Circling aircraft' },
      { time: '13:20', name: 'After' },
    ]);
    expect(acts().map(({ beside }) => beside.map(({ name }) => name))).toEqual([
      ['Circling aircraft'],
      ['Parachutes'],
      [],
    ]);
  });

  test('[F1093] arguable: a type that nobody knows stays one, and is not taken for the subject at hand', () => {
    const { acts } = display([
      { time: '13:00', name: 'Solo', type: 'Zorblatt 3' },
      { time: '13:10', name: 'Solo', type: 'C-130' },
      { time: '13:20', name: 'Alpha Jet' },
      { time: '13:25', name: 'Hercules' },
      { time: '13:30', name: 'First pair' },
    ]);
    const types = acts().map(({ type }) => (type.kind === 'known' ? type.subject.key : type));
    expect(types).toEqual([
      { kind: 'unknown', type: 'Zorblatt 3' },
      'C130',
      'AJET',
      // That is two types.
      { kind: 'unsaid' },
      { kind: 'unsaid' },
    ]);
  });

  test('[F1094] a day with a date of its own is that day, over midnight it ends on the next', () => {
    const { acts } = display([{ time: '23:50', to: '00:10', name: 'Fireworks', date: sunday }]);
    expect(acts()[0]?.date).toBe(sunday);
    expect(slots(acts())[0]).toEqual([at('23:50', sunday), at('00:10', '2026-09-21')]);
  });
});

describe('how an act is lit', () => {
  test('[F1095] from the left or the right of whoever looks at it, and until when', () => {
    const { found, acts } = display([{ time: '16:20', name: 'Solo jet' }]);
    const [act] = acts();
    if (!act) throw new Error('expected an act');
    const [south, north] = [180, 0].map((bearing) => destination(middle, bearing, 230));
    // In the afternoon's sun, 237 degrees: to the left behind whoever looks north, ahead to the right of who looks south.
    const seen = south && actLight(act, middleOfLine(found), south, zone);
    expect(seen?.azimuth).toBeGreaterThan(225);
    expect(seen?.lit).toBe('behind-you');
    // It is from the side once it has come 60 degrees round: at 240 (frontLitTo).
    expect(seen?.until).toBeGreaterThan(at('16:20'));
    expect(seen?.until).toBeLessThan(at('17:20'));
    const later =
      south &&
      actLight({ ...act, slot: { from: seen?.until ?? 0, to: 0 } }, middleOfLine(found), south, zone);
    expect(later?.lit).toBe('from-the-left');
    const other = north && actLight(act, middleOfLine(found), north, zone);
    expect(other?.lit).toBe('in-your-eyes');
  });
});
