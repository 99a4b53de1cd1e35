import { describe, expect, test } from 'vitest';
import { outlookOf } from '../../src/figures/outlook';
import { inspectPath } from '../../src/figures/spot/inspect-path';
import { headlineOf, spotSummary } from '../../src/figures/summary/spot-summary';
import { lightUntil } from '../../src/state/light-until';
import { Derived } from '../../src/state/derived.svelte';
import { View } from '../../src/state/view.svelte';
import type { Survey } from '../../src/survey/document';
import { field } from '../map/field';

function looking(moments: object) {
  const survey = {
    ...field,
    sunside: { ...(field['sunside'] as object), moments: { date: '2026-06-21', b: '19:15', ...moments } },
  } as unknown as Survey;
  const view = new View();
  const document = { survey, openingProblems: [] };
  return new Derived({ document, view, terrain: null, now: () => Date.UTC(2026, 5, 21) });
}

describe('[U420] until when the light stays as it is', () => {
  test.each(['07:30', '10:00', '16:40'])(
    'from %s: the sample itself, asked minute by minute, says the same',
    (a) => {
      const figures = looking({ a });
      for (const shown of figures.sights.spots) {
        const path = (spotSummary(shown.a, shown.b).leading ?? { a: shown.a.paths[0] }).a;
        const drawn = figures.sights.paths.find(({ ref }) => ref.path === path?.ref.path);
        if (!path || !drawn) throw new Error('expected a path');
        const outlook = outlookOf(figures.contents, null);
        const lightAt = (instant: number) => {
          const { light, glare, flankLit } = inspectPath(
            shown.spot,
            drawn,
            headlineOf(path).station,
            outlook,
            instant,
          );
          return [light, glare, flankLit].join();
        };
        const { instantA, span } = figures.day;
        let end: number | null = null;
        for (let at = instantA; at < span.to && end === null; at += 60_000)
          if (lightAt(at) !== lightAt(instantA)) end = at;
        const told = lightUntil(figures, shown.spot, path, instantA);
        // The sun of a row goes in straight lines between two nodes a day: a minute at most.
        expect(Math.abs((told ?? span.to) - (end ?? span.to)), shown.spot.name).toBeLessThanOrEqual(60_000);
        expect(told).not.toBe(instantA);
      }
    },
  );

  test('in the dark of the evening it stays so until midnight, and no end is told', () => {
    const figures = looking({ a: '23:30' });
    const [shown] = figures.sights.spots;
    const path = shown?.a.paths[0];
    if (!shown || !path) throw new Error('expected a path');
    expect(lightUntil(figures, shown.spot, path, figures.day.instantA)).toBeNull();
  });
});
