import { describe, expect, test } from 'vitest';
import { listLayout, readList, type ListLayout } from '../../../src/imports/movements/read-list';
import { typeHeard } from '../../../src/figures/movements/type-heard';
import { readTypedMovement } from '../../../src/imports/movements/typed-movement';

const day = '2026-06-21';
function read(text: string, change: Partial<ListLayout> = {}, present = [] as never[]) {
  const layout = listLayout(text, day);
  if (!layout) throw new Error('expected a list');
  return readList({ ...layout, ...change }, 'Europe/Warsaw', day, ['EPTO', 'TOLVERBY'], present);
}
const short = (reading: ReturnType<typeof read>) =>
  reading.movements.map((m) => [m.date, m.time, m.use, m.type, m.flight, m.place, m.runway].join(' '));

describe('movements typed in a line', () => {
  test.each([
    ['1425 a chinook ZZ123 Oskin', '14:25 arrival H47 ZZ123 Oskin '],
    // Several are called so: the words stay, and which one it is stays to be chosen.
    ['1425 a hercules ZZ123 Oskin', '14:25 arrival HERCULES ZZ123 Oskin '],
    ['0905 d Dash 8 ZZ7 r25', '09:05 departure DASH 8 ZZ7  25'],
    ['0905 a 737 ZZ7', '09:05 arrival 737 ZZ7  '],
    ['0905 a Oskin', '09:05 arrival   Oskin '],
  ])('[I130] everyday names of types: %s', (line, words) => {
    const typed = readTypedMovement(line, day, typeHeard);
    if (!typed.ok) throw new Error(typed.reason);
    const { time, use, type, flight, place, runway } = typed.movement;
    expect([time, use, type, flight, place, runway].join(' ')).toBe(words);
  });

  test.each([
    ['1425 a A320', '14:25 arrival A320   '],
    ['14:25 dep b738 ZZ123 Oskin r7', '14:25 departure B738 ZZ123 Oskin 07'],
    ['2:25pm landing C172 SP-ABC rwy25', '14:25 arrival C172 SP-ABC  25'],
    ['0005 d AT76 New Pallin', '00:05 departure AT76  New Pallin '],
    ['0905 a r25L *', '09:05 arrival    25L'],
  ])('[I108] %s', (line, words) => {
    const typed = readTypedMovement(line, day);
    if (!typed.ok) throw new Error(typed.reason);
    const { time, use, type, flight, place, runway, date, starred } = typed.movement;
    expect([time, use, type, flight, place, runway].join(' ')).toBe(words);
    expect([date, starred]).toEqual([day, line.endsWith('*')]);
  });

  test.each([
    ['', /is no time of day/],
    ['2561 a A320', /is no time of day/],
    ['a A320', /is no time of day/],
    ['1425 A320', /neither arrival nor departure/],
  ])('[I109] %j is refused with a reason', (line, words) => {
    const typed = readTypedMovement(line, day);
    expect(typed.ok ? '' : typed.reason).toMatch(words);
  });
});

describe('lists of movements', () => {
  test('[I110] columns by their names, in any order; which it is by the airfield in from or to', () => {
    const reading = read(
      [
        'Flight,Type,From,To,Time (local),Rwy',
        'ZZ123,A320,Oskin,EPTO,14:25,25',
        'ZZ124,A320,EPTO,Oskin,15:10,',
        'ZZ125,A320,Oskin,Pallin,16:10,',
      ].join('\n'),
    );
    expect(short(reading)).toEqual([
      '2026-06-21 14:25 arrival A320 ZZ123 Oskin 25',
      '2026-06-21 15:10 departure A320 ZZ124 Oskin ',
    ]);
    expect(reading.left).toEqual([{ row: 4, reason: 'it says neither arrival nor departure' }]);
    expect(read('Time,Type\n14:25,A320', { use: 'arrival' }).movements).toHaveLength(1);
  });

  test('[I111] a list without names, lined up with blanks or tabs: columns by what stands in them', () => {
    const lines = ['14:25   arr   A320   ZZ123   Oskin', '14:40   dep   B738   ZZ77    New Pallin'];
    expect(short(read(lines.join('\n')))).toEqual([
      '2026-06-21 14:25 arrival A320 ZZ123 Oskin ',
      '2026-06-21 14:40 departure B738 ZZ77 New Pallin ',
    ]);
    expect(short(read(lines.join('\n').replaceAll(/ {2,}/g, '\t')))).toHaveLength(2);
  });

  test('[I112] dates and zones: with an offset, in UTC, local; days before months or after', () => {
    const table = (...rows: readonly string[]) => ['time;a/d;type', ...rows].join('\n');
    expect(short(read(table('2026-06-21T22:30Z;a;A320')))).toEqual(['2026-06-22 00:30 arrival A320   ']);
    expect(short(read(table('2026-06-21 22:30;a;A320')))).toEqual(['2026-06-21 22:30 arrival A320   ']);
    expect(short(read(table('2026-06-21 22:30;a;A320'), { clock: 'utc' }))).toEqual([
      '2026-06-22 00:30 arrival A320   ',
    ]);
    expect(short(read(table('03/04/2026 10:00;a;A320')))).toEqual(['2026-04-03 10:00 arrival A320   ']);
    expect(short(read(table('03/04/2026 10:00;a;A320'), { order: 'mdy' }))).toEqual([
      '2026-03-04 10:00 arrival A320   ',
    ]);
    const apart = 'date,time utc,a/d,type\n2026-12-21,23:30,d,A320';
    expect(short(read(apart))).toEqual(['2026-12-22 00:30 departure A320   ']);
  });

  test('[I113] a list that passes midnight goes on with the next day, and says so; one out of order does not', () => {
    const rows = ['23:50 a A320', '23:40 a B738', '00:10 d A320', '00:05 d B738', '06:00 a AT76'];
    const text = rows.map((r) => r.replaceAll(' ', ',')).join('\n');
    const reading = read(text);
    expect(reading.movements.map((m) => `${m.date} ${m.time}`)).toEqual([
      '2026-06-21 23:50',
      '2026-06-21 23:40',
      '2026-06-22 00:10',
      '2026-06-22 00:05',
      '2026-06-22 06:00',
    ]);
    expect(reading.remarks).toEqual(['The list passes midnight at row 3: it goes on with 2026-06-22.']);
    const daily = read(text, { date: null });
    expect(daily.movements.every((m) => m.date === null)).toBe(true);
    expect(daily.remarks).toEqual(['Movements without a date are due every day.']);
  });

  test('[I114] rows that make no sense are listed, those that do are kept, doubles are left out and said', () => {
    const reading = read(
      'time,a/d,type\nsoon,a,A320\n14:25,a,A320\n14:25,arrival,a320\n14:25,x,A320\n2026-13-01 10:00,a,A320',
    );
    expect(short(reading)).toEqual(['2026-06-21 14:25 arrival A320   ']);
    expect(reading.left.map((l) => `${l.row} ${l.reason}`)).toEqual([
      '2 "soon" is no time of day',
      '5 it says neither arrival nor departure',
      '6 "2026-13-01 10:00" is no time of day',
    ]);
    expect(reading.remarks).toEqual(['1 that are there already, or twice in the list, are left out.']);
    const again = read('14:25,a,A320', {}, reading.movements.map((m) => ({ ...m, id: 'x' })) as never[]);
    expect(again.movements).toEqual([]);
    expect(listLayout('  \n ', day)).toBe(null);
    expect(read('a,b\nc,d').movements).toEqual([]);
  });

  test('[F710] a list copied from a page: titles above the headings, blank lines and columns of no use are passed over, and it is said', () => {
    const page = [
      'Saturday at Tolverby',
      'all times local',
      '',
      'Gate\tTime\tStatus\tType\tFrom\tRemarks',
      'B4\t10:05\ton time\tA320\tBern\t',
      '',
      'A1\t10:40\tlate\tDash 8\tOslo\tcode share',
    ].join('\n');
    const reading = read(page);
    expect(reading.movements.map(({ time, type, place, use }) => [time, type, place, use])).toEqual([
      ['10:05', 'A320', 'Bern', 'arrival'],
      ['10:40', 'DASH 8', 'Oslo', 'arrival'],
    ]);
    expect(reading.left).toEqual([]);
    expect(reading.remarks).toContain('2 lines above the headings are passed over.');
  });

  test('[F711] a title that is no heading does not take the first movement with it', () => {
    const reading = read('Departures of the day\n14:10,dep,B738,Rome\n15:30,dep,C172,Bern');
    expect(reading.movements.map(({ time, type }) => [time, type])).toEqual([
      ['14:10', 'B738'],
      ['15:30', 'C172'],
    ]);
    expect(reading.left.map(({ row }) => row)).toEqual([1]);
  });

  test('[I121] lines as they are typed one by one: star and zone kept, one that does not fit is said', () => {
    const reading = read('1425 a A320 ZZ123 Oskin r25 *\n\n1510Z dep B738\n1600 A320\nnothing at all');
    expect(short(reading)).toEqual([
      '2026-06-21 14:25 arrival A320 ZZ123 Oskin 25',
      '2026-06-21 17:10 departure B738   ',
    ]);
    expect(reading.movements.map((m) => m.starred)).toEqual([true, false]);
    expect(reading.left.map((l) => `${l.row} ${l.reason}`)).toEqual([
      '4 it says neither arrival nor departure',
      '5 "nothing at all" is no time of day',
    ]);
    expect(short(read('1425 a A320\n1600 B738 ZZ1', { use: 'departure' }))).toEqual([
      '2026-06-21 14:25 arrival A320   ',
      '2026-06-21 16:00 departure B738 ZZ1  ',
    ]);
  });

  test('[I122] a list with only From holds arrivals, with only To departures, and that is said', () => {
    const from = read('Time,Type,From\n14:25,A320,Oskin\n15:00,A320,EPTO');
    // The airfield itself in From is a departure all the same.
    expect(from.movements.map((m) => m.use)).toEqual(['arrival', 'departure']);
    expect(from.remarks).toEqual(['The list tells only where from: its rows are taken as arrivals.']);
    const to = read('Time,Type,To\n14:25,A320,Oskin');
    expect([to.movements[0]?.use, to.movements[0]?.place]).toEqual(['departure', 'Oskin']);
    expect(to.remarks).toEqual(['The list tells only where to: its rows are taken as departures.']);
    expect(read('Time,Type,Place\n14:25,A320,Oskin').movements).toEqual([]);
    expect(read('Time,Type,From\n14:25,A320,Oskin', { use: null }).left).toHaveLength(1);
  });
});
