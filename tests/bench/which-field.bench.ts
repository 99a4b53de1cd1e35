import { readFileSync } from 'node:fs';
import { fieldDay, type FieldDay } from '../../src/figures/trip/field-day';
import { rankFields } from '../../src/figures/trip/rank-fields';
import { merge } from '../../src/merging/merge';
import { readContents } from '../../src/survey/contents';
import { openSurvey } from '../../src/survey/open';

/** Five hundred copies of the sample site: read and computed one after the other, as the worker does it, then ranked. */
export function whichField(): void {
  const text = readFileSync('sample-sites/tolverby.geojson', 'utf8');
  const count = 500;
  const days: FieldDay[] = [];
  const started = performance.now();
  for (let i = 0; i < count; i++) {
    const opened = openSurvey(text);
    if (!opened.ok) throw new Error(opened.reason);
    days.push(fieldDay(readContents(opened.survey), { date: '2026-06-20', wind: null, perHour: i % 40 }));
  }
  const computed = performance.now();
  const fields = days.map((day, i) => ({ day, way: (i * 37) % 300 }));
  for (let i = 0; i < 20; i++) rankFields(fields);
  const ranked = (performance.now() - computed) / 20;
  console.log(
    `which field: ${count} surveys on a day ${((computed - started) / 1000).toFixed(1)} s in the worker (${((computed - started) / count).toFixed(1)} ms each), ranked anew ${ranked.toFixed(1)} ms`,
  );
  const opened = openSurvey(text);
  if (!opened.ok) throw new Error(opened.reason);
  const mine = opened.survey;
  const many = (shift: number) => ({
    ...mine,
    features: Array.from({ length: 5000 }, (_, i) => {
      const from = mine.features[i % mine.features.length];
      if (!from) throw new Error('expected the sample site to have features');
      return {
        ...from,
        id: `f${i}`,
        properties: { ...from.properties, notes: `${i % 50 === 0 ? shift : 0}` },
      };
    }),
  });
  const [a, b] = [many(1), many(2)];
  const begun = performance.now();
  for (let i = 0; i < 5; i++) merge(a, b);
  console.log(`merge: 5,000 features each, ${((performance.now() - begun) / 5).toFixed(0)} ms`);
}
