import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Survey } from '../../../src/survey/document';
import { addFeature, type NewShape } from '../../../src/survey/edits/add-feature';
import { deleteFeature } from '../../../src/survey/edits/delete-feature';
import { duplicateFeature } from '../../../src/survey/edits/duplicate-feature';
import { reshapeFeature } from '../../../src/survey/edits/reshape-feature';
import { setCurrent, setEndsInUse, setMoments, setSite } from '../../../src/survey/edits/set-members';
import { setAccess, setProperties, setRunwayEnd } from '../../../src/survey/edits/set-properties';
import { shiftShape } from '../../../src/survey/edits/shift-shape';
import { shapeOf, withoutVertex, withVertexAdded, withVertexAt } from '../../../src/survey/edits/vertices';
import { deepFreeze } from '../../../src/survey/freeze';
import type { Kind } from '../../../src/survey/kinds';
import { perform, pop, redo, replace, startHistory, undo } from '../../../src/survey/history';
import { readContents } from '../../../src/survey/contents';
import { saveSurvey } from '../../../src/survey/save';
import { opened } from '../../support/contents';
import { kinds, position, surveyValue } from '../../support/random-survey';

type Edit = (survey: Survey, fresh: string) => Survey;

const lngLat = position.map(([lng = 0, lat = 0]) => [lng, lat] as const);
const idOf = (survey: Survey, n: number) =>
  survey.features[n % Math.max(1, survey.features.length)]?.id ?? 'none';
const index = fc.nat(20);

/** Gives the shape that an edit of vertices would, or the survey as it is where the feature has none. */
const reshaped = (survey: Survey, n: number, change: (shape: NewShape) => NewShape): Survey => {
  const feature = survey.features[n % Math.max(1, survey.features.length)];
  const shape = feature && shapeOf(feature);
  return shape ? reshapeFeature(survey, feature.id, change(shape)) : survey;
};

const shapes: fc.Arbitrary<NewShape> = fc.oneof(
  lngLat.map((coordinates) => ({ type: 'Point', coordinates }) as const),
  fc
    .array(lngLat, { minLength: 2, maxLength: 4 })
    .map((coordinates) => ({ type: 'LineString', coordinates }) as const),
  fc
    .array(lngLat, { minLength: 3, maxLength: 5 })
    .map((ring) => ({ type: 'Polygon', coordinates: [[...ring, ring[0] ?? [0, 0]]] }) as const),
);

const edits: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(fc.constantFrom<Kind>(...kinds), shapes).map(
    ([kind, shape]): Edit =>
      (s, fresh) =>
        addFeature(s, fresh, kind, shape, { name: fresh }),
  ),
  index.map(
    (n): Edit =>
      (s) =>
        deleteFeature(s, idOf(s, n)),
  ),
  index.map((n): Edit => (s, fresh) => {
    const feature = s.features[n % Math.max(1, s.features.length)];
    const shape = feature && shapeOf(feature);
    return shape
      ? duplicateFeature(
          s,
          feature.id,
          fresh,
          shiftShape(shape, ([x, y]) => [x + 0.1, y]),
        )
      : s;
  }),
  fc.tuple(index, index, lngLat).map(
    ([n, i, to]): Edit =>
      (s) =>
        reshaped(s, n, (shape) => withVertexAt(shape, { ring: 0, index: i % 3 }, to)),
  ),
  fc.tuple(index, index, lngLat).map(
    ([n, i, to]): Edit =>
      (s) =>
        reshaped(s, n, (shape) => withVertexAdded(shape, { ring: 0, index: i % 3 }, to)),
  ),
  fc.tuple(index, index).map(
    ([n, i]): Edit =>
      (s) =>
        reshaped(s, n, (shape) => withoutVertex(shape, { ring: 0, index: i % 3 })),
  ),
  fc.tuple(index, fc.string(), fc.option(fc.double({ noNaN: true }), { nil: undefined })).map(
    ([n, name, eyeHeight]): Edit =>
      (s) =>
        setProperties(s, idOf(s, n), { name, eyeHeight }),
  ),
  fc.tuple(index, fc.string()).map(
    ([n, contact]): Edit =>
      (s) =>
        setAccess(s, idOf(s, n), { contact }),
  ),
  fc.tuple(index, fc.constantFrom(0, 1), fc.integer({ min: 1, max: 36 })).map(
    ([n, end, d]): Edit =>
      (s) =>
        setRunwayEnd(s, idOf(s, n), end, { designator: String(d) }),
  ),
  fc.string().map(
    (name): Edit =>
      (s) =>
        setSite(s, { name }),
  ),
  fc.constantFrom('06:00', '21:45').map(
    (a): Edit =>
      (s) =>
        setMoments(s, { a }),
  ),
  fc.string().map(
    (subject): Edit =>
      (s) =>
        setCurrent(s, { subject }),
  ),
  fc.tuple(index, fc.nat(2)).map(
    ([n, i]): Edit =>
      (s) =>
        setEndsInUse(s, i, { arrivals: [{ runway: idOf(s, n), end: 1 }], departures: [] }),
  ),
);

type Action =
  | { readonly do: 'perform' | 'drag' | 'cancelled drag'; readonly edit: Edit }
  | { readonly do: 'undo' | 'redo'; readonly edit: null };
const actions: fc.Arbitrary<Action> = fc.oneof(
  { arbitrary: edits.map((edit) => ({ do: 'perform', edit }) as const), weight: 6 },
  { arbitrary: edits.map((edit) => ({ do: 'drag', edit }) as const), weight: 2 },
  { arbitrary: edits.map((edit) => ({ do: 'cancelled drag', edit }) as const), weight: 2 },
  {
    arbitrary: fc.constantFrom('undo' as const, 'redo' as const).map((back) => ({ do: back, edit: null })),
    weight: 2,
  },
);

describe('random edits', () => {
  test('[S50] undo all gives the start, redo all the end; nothing is ever mutated', () => {
    fc.assert(
      fc.property(surveyValue, fc.array(actions, { minLength: 1, maxLength: 25 }), (value, list) => {
        const start = deepFreeze(opened(JSON.stringify(value)));
        const before = saveSurvey(start);
        let history = startHistory(start);
        let fresh = 0;
        const edited = (edit: Edit) => deepFreeze(edit(history.present, `new${fresh++}`));
        for (const action of list) {
          if (action.edit === null) history = action.do === 'undo' ? undo(history) : redo(history);
          else if (action.do === 'perform') history = perform(history, 'edit', edited(action.edit));
          else if (action.do === 'drag') {
            history = perform(history, 'drag', { ...history.present });
            history = replace(history, edited(action.edit));
          } else {
            const untouched = history;
            history = replace(perform(history, 'drag', { ...history.present }), edited(action.edit));
            history = pop(history);
            expect(history.present).toBe(untouched.present);
            expect(history.future).toEqual(untouched.future);
          }
        }
        const end = saveSurvey(history.present);
        const steps = history.past.length;
        let back = history;
        for (let i = 0; i < steps; i++) back = undo(back);
        expect(back.present).toBe(start);
        expect(saveSurvey(start)).toBe(before);
        for (let i = 0; i < steps; i++) back = redo(back);
        expect(saveSurvey(back.present)).toBe(end);
        // What was edited can be read, saved and opened again.
        readContents(history.present);
        expect(saveSurvey(opened(end))).toBe(end);
        expect(new Set(history.present.features.map((f) => f.id)).size).toBe(history.present.features.length);
      }),
      { seed: 500, numRuns: 250 },
    );
  });

  test('[S51] an edit shares every feature that it leaves alone', () => {
    fc.assert(
      fc.property(surveyValue, edits, (value, edit) => {
        const start = deepFreeze(opened(JSON.stringify(value)));
        const after = edit(start, 'new');
        const changed = after.features.filter((f) => !start.features.includes(f));
        expect(changed.length).toBeLessThanOrEqual(1);
      }),
      { seed: 51, numRuns: 300 },
    );
  });
});
