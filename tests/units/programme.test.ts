import { describe, expect, test } from 'vitest';
import { formatProgramme, parseProgramme } from '../../src/units/programme';

/** As it is read where nothing else is said. */
const plain = { to: null, type: '', date: null };

describe('a programme as text', () => {
  test('[F1043] times in the ways people write them, names as they stand', () => {
    const { entries, unread } = parseProgramme(
      'Saturday\n13:05 First pair\n1320 - Second, solo\n13.40–13:55  Third\n2026-06-21\n9:00; Fourth\n25:00 Never',
    );
    expect(entries).toEqual([
      { ...plain, time: '13:05', name: 'First pair' },
      { ...plain, time: '13:20', name: 'Second, solo' },
      { ...plain, time: '13:40', to: '13:55', name: 'Third' },
      { ...plain, time: '09:00', name: 'Fourth', date: '2026-06-21' },
    ]);
    expect(unread).toEqual(['Saturday', '25:00 Never']);
  });

  test('[F1088] a type in brackets, and no time where the programme has none; a heading is no entry', () => {
    expect(parseProgramme('14:20 Solo display (F-16)\ntbc Helicopter [EC35]\n-- Closing').entries).toEqual([
      { ...plain, time: '14:20', name: 'Solo display', type: 'F-16' },
      { ...plain, time: null, name: 'Helicopter', type: 'EC35' },
      { ...plain, time: null, name: 'Closing' },
    ]);
    expect(parseProgramme('Afternoon (from 13:00)').unread).toEqual(['Afternoon (from 13:00)']);
  });

  test('[F1044] what is written is read back', () => {
    const entries = [
      { ...plain, time: '13:05', name: 'First' },
      { ...plain, time: null, name: 'Some time', type: 'C-130' },
      { ...plain, time: '09:00', to: '09:20', name: 'Second', type: 'F-16', date: '2026-06-21' },
      { ...plain, time: '10:00', name: 'Third', date: '2026-06-21' },
    ];
    expect(parseProgramme(formatProgramme(entries))).toEqual({ entries, unread: [] });
  });
});
