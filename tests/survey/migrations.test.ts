import { describe, expect, test } from 'vitest';
import { surveyVersion } from '../../src/survey/document';
import type { JsonObject } from '../../src/survey/json';
import { migrated, migrations, type Migration } from '../../src/survey/migrations';

const marking = (from: number): Migration => ({
  from,
  migrate: (document) => ({ ...document, ran: [...((document['ran'] as number[] | undefined) ?? []), from] }),
});
const start: JsonObject = { type: 'FeatureCollection' };

describe('migrations', () => {
  test('[S60] numbered 1, 2, 3 without gaps, one for each version before this one', () => {
    expect(migrations.map((m) => m.from)).toEqual(Array.from({ length: surveyVersion - 1 }, (_, i) => i + 1));
  });

  test('[S61] run one after the other, from the version of the file on', () => {
    const steps = [marking(1), marking(2), marking(3)];
    expect(migrated(start, 1, steps, 4)).toEqual({ ...start, ran: [1, 2, 3] });
    expect(migrated(start, 3, steps, 4)).toEqual({ ...start, ran: [3] });
    expect(migrated(start, 4, steps, 4)).toBe(start);
    expect(migrated(start, surveyVersion)).toBe(start);
  });

  test('[S62] a gap is a programming error that names both sides', () => {
    expect(() => migrated(start, 1, [marking(1), marking(3)], 4)).toThrow(
      'expected a migration from version 2, got 3',
    );
    expect(() => migrated(start, 1, [marking(1)], 4)).toThrow(
      'expected a migration from version 2, got none',
    );
  });
});
