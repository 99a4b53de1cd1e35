import { describe, expect, it } from 'vitest';
import { whatItTeaches } from '../../../src/figures/log/what-it-teaches';
import { logTable } from '../../../src/exports/log-table';
import { readContents } from '../../../src/survey/contents';
import { addLogEntries, type NewLogEntry } from '../../../src/survey/edits/add-log-entries';
import { opened, surveyText } from '../../support/contents';
import { taughtWords } from '../../../src/ui/log/words';

const entry = (time: string, kept: number | null, more: object = {}): NewLogEntry => ({
  position: [8.5, 47.4],
  properties: { time, spot: 'mound', camera: 'One', ...(kept === null ? {} : { kept }), ...more },
});
const survey = opened(surveyText([], { site: { timeZone: 'Europe/Zurich' } }));
const contentsWith = (...entries: readonly NewLogEntry[]) => readContents(addLogEntries(survey, entries));

describe('[L50] what a log teaches of a spot', () => {
  it('days count as visits, and keepers say when it is best: the middle half of their hours, in local time', () => {
    const contents = contentsWith(
      entry('2026-03-01T15:40:00Z', 4),
      entry('2026-03-01T15:42:00Z', null),
      entry('2026-03-02T16:00:00Z', 3),
      entry('2026-03-05T16:20:00Z', 5),
      entry('2026-03-09T17:00:00Z', 3),
      entry('2026-07-09T05:00:00Z', 1),
    );
    const taught = whatItTeaches('mound', contents);
    // Type 7 quartiles of 16:40, 17:00, 17:20, 18:00 are 16:55 and 17:30; told to ten minutes outwards.
    expect(taught).toEqual({ visits: 5, best: { from: 16 * 60 + 50, to: 17 * 60 + 30, month: 3 } });
    expect(taught && taughtWords(taught, { clock: (text) => text })).toBe(
      '5 visits, best 16:50 to 17:30 in Mar.',
    );
  });

  it('two keepers are no rule, unrated passes are no keepers, and another spot’s are not this one’s', () => {
    const contents = contentsWith(
      entry('2026-03-01T15:40:00Z', 5),
      entry('2026-03-02T15:40:00Z', 5),
      entry('2026-03-03T15:40:00Z', null),
    );
    expect(whatItTeaches('mound', contents)).toEqual({ visits: 3, best: null });
    expect(whatItTeaches('fence', contents)).toBeNull();
  });

  it('keepers of every season name no month', () => {
    const contents = contentsWith(...['01', '03', '05', '07'].map((m) => entry(`2026-${m}-02T12:00:00Z`, 4)));
    expect(whatItTeaches('mound', contents)?.best?.month).toBeNull();
  });
});

describe('[L51] kept in the survey', () => {
  it('what is there already is not doubled: the same folder twice adds nothing', () => {
    const once = addLogEntries(survey, [entry('2026-03-01T15:40:00Z', 4)]);
    expect(addLogEntries(once, [entry('2026-03-01T15:40:00Z', 4)])).toBe(once);
    expect(addLogEntries(once, [entry('2026-03-01T15:40:00Z', 4, { camera: 'Two' })]).features).toHaveLength(
      2,
    );
  });

  it('is read back as it was kept, without a problem', () => {
    const contents = contentsWith(
      entry('2026-03-01T15:40:00Z', 4, {
        settings: { focalLength: 300, fNumber: 7.1 },
        predicted: { light: 'front-lit', focalLength: 480 },
      }),
    );
    expect(contents.problems.filter(({ id }) => id !== null)).toEqual([]);
    expect(contents.logEntries[0]).toMatchObject({
      time: '2026-03-01T15:40:00Z',
      spot: 'mound',
      path: null,
      kept: 4,
      settings: { focalLength: 300, fNumber: 7.1, iso: null },
      predicted: { light: 'front-lit', focalLength: 480 },
    });
  });

  it('a member that makes no sense is a doubt, and the rest is read', () => {
    const contents = contentsWith(entry('2026-03-01T15:40:00Z', 9, { settings: 'sunny 16' }));
    expect(contents.logEntries[0]).toMatchObject({ kept: null, spot: 'mound' });
    expect(contents.problems.map(({ reason }) => reason).join()).toMatch(/kept.*settings/);
  });

  it('goes out as a table; what looks like a formula is text', () => {
    const { logEntries } = contentsWith(
      entry('2026-03-02T15:40:00Z', 4),
      entry('2026-03-01T15:40:00Z', 2, { note: '=1+1', settings: { focalLength: 300 } }),
    );
    const lines = logTable(logEntries).split('\r\n');
    expect(lines[0]).toMatch(/^\ufeffTime \(UTC\),Spot,Path/);
    expect(lines[1]).toBe(`2026-03-01T15:40:00Z,mound,,,One,1,300,,,,,,,,,,,2,'=1+1`);
    expect(lines[2]).toMatch(/^2026-03-02/);
  });
});
