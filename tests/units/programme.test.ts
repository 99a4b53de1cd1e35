import { describe, expect, test } from 'vitest';
import { formatProgramme, parseProgramme } from '../../src/units/programme';

describe('a programme as text', () => {
  test('[F1043] times in the ways people write them, names as they stand', () => {
    const { entries, unread } = parseProgramme(
      'Saturday\n13:05 First pair\n1320 - Second, solo\n13.40–13:55  Third\n2026-06-21\n9:00; Fourth\n25:00 Never',
    );
    expect(entries).toEqual([
      { time: '13:05', name: 'First pair', date: null },
      { time: '13:20', name: 'Second, solo', date: null },
      { time: '13:40', name: 'Third', date: null },
      { time: '09:00', name: 'Fourth', date: '2026-06-21' },
    ]);
    expect(unread).toEqual(['Saturday', '25:00 Never']);
  });

  test('[F1044] what is written is read back', () => {
    const entries = [
      { time: '13:05', name: 'First', date: null },
      { time: '09:00', name: 'Second', date: '2026-06-21' },
      { time: '10:00', name: 'Third', date: '2026-06-21' },
    ];
    expect(parseProgramme(formatProgramme(entries))).toEqual({ entries, unread: [] });
  });
});
