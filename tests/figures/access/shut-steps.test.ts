import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dayPlan, planRows } from '../../../src/figures/plan/day-plan';
import { inUse } from '../../../src/figures/traffic/in-use';
import { readContents } from '../../../src/survey/contents';
import { setAccess } from '../../../src/survey/edits/set-properties';
import { setRules } from '../../../src/survey/edits/set-rules';
import { dayOf } from '../../../src/time/local-time';
import { opened } from '../../support/contents';

/** The sample site without its spots' own hours, so that the field's hold. */
const sample = opened(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
const survey = readContents(sample).spots.reduce(
  (s, { id }) => setAccess(s, id, { hours: undefined }),
  sample,
);
const day = dayOf('2026-06-21', 'Europe/Warsaw');

function windows(rules: Record<string, string>) {
  const contents = readContents(setRules(survey, rules));
  const { arrivals, departures } = inUse(contents, 0);
  const spans = [{ ...day, arrivals, departures }];
  return dayPlan(contents, planRows(contents, spans, day, null), spans, day).windows;
}

describe("[F906] the plan keeps to the field's word", () => {
  it('cuts windows to the open hours', () => {
    const cut = windows({ hours: '10:00-18:00' });
    expect(cut.length).toBeGreaterThan(0);
    for (const { from, to } of cut) {
      expect(from).toBeGreaterThanOrEqual(Date.parse('2026-06-21T10:00+02:00'));
      expect(to).toBeLessThanOrEqual(Date.parse('2026-06-21T18:00+02:00'));
    }
    expect(cut.some(({ ends }) => ends === 'hours')).toBe(true);
  });

  it('proposes nothing where the field forbids photography', () => {
    expect(windows({ photography: 'forbidden' })).toEqual([]);
  });
});
