import { groundLine, mapped, placed, positionOf } from '../../src/figures/geometry/earth';
import { siteFrame } from '../../src/figures/sight/site-frame';
import { surveyFromAirfield } from '../../src/imports/catalogue/survey-from-airfield';
import { readContents, type Contents } from '../../src/survey/contents';
import type { Position } from '../../src/survey/document';
import { addFeature } from '../../src/survey/edits/add-feature';
import { everyAirfield, realCatalogue } from './catalogue';

const fields = everyAirfield(await realCatalogue());

/** m from the longest runway's centreline to the lane on either side of it. */
const laneAt = 260;

/**
 * A real field's runways with ground made round the longest: a public lane along each side, a private road and a pond beyond
 * the southern one, a public footpath across the approach 400 m out, and the outline 180 m round the runway.
 */
export function madeGround(icao: string, subject: string): Contents {
  const field = fields.find((each) => each.icao === icao);
  if (!field) throw new Error(`expected ${icao} in the catalogue`);
  let id = 0;
  const { survey } = surveyFromAirfield(field, () => `id${id++}`, 'UTC');
  const bare = readContents(survey);
  const [longest] = bare.runways.toSorted(
    (a, b) => groundLine(...b.line).distance - groundLine(...a.line).distance,
  );
  if (!longest) throw new Error('expected a runway');
  const frame = siteFrame(bare.site.reference);
  // From the western end eastwards, and to the right of that: south.
  const [a, b] = longest.line.map((p) => mapped(frame, p)).sort(([x], [u]) => x - u) as [number, number][];
  if (!a || !b) throw new Error('expected two ends');
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [e, n] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const at = (along: number, south: number): Position =>
    positionOf(placed(frame, a[0] + along * e + south * n, a[1] + along * n - south * e, 0));
  const way = (name: string, use: string, access: string, line: readonly Position[]) =>
    ({ name, use, access, line }) as const;
  const ways = [
    way('South Lane', 'road', 'public', [at(-1500, laneAt), at(length + 1500, laneAt)]),
    way('North Lane', 'road', 'public', [at(-1500, -laneAt), at(length + 1500, -laneAt)]),
    way('Works Road', 'road', 'forbidden', [at(-1500, 420), at(length + 1500, 420)]),
    way('Field Path', 'path', 'public', [at(-400, -900), at(-400, 900)]),
  ];
  const ring = [at(200, 280), at(900, 280), at(900, 400), at(200, 400), at(200, 280)];
  const outline = [
    at(-180, -180),
    at(length + 180, -180),
    at(length + 180, 180),
    at(-180, 180),
    at(-180, -180),
  ];
  let made = survey;
  for (const { line, ...properties } of ways)
    made = addFeature(
      made,
      properties.name,
      'ground-use',
      { type: 'LineString', coordinates: line },
      properties,
    );
  for (const [name, use, coordinates] of [
    ['Pond', 'water', ring],
    ['Field', 'aerodrome', outline],
  ] as const)
    made = addFeature(
      made,
      name,
      'ground-use',
      { type: 'Polygon', coordinates: [coordinates] },
      { name, use },
    );
  const all = readContents(made);
  const wanted = all.subjects.find(({ key }) => key === subject);
  if (!wanted) throw new Error(`expected ${subject}`);
  return { ...all, subject: wanted };
}
