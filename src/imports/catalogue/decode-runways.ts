import { flagKinds, locatedEnds, runwaysFileSchema, type RunwaysFile } from './columns';
import { outside, tooFar, unequal } from './consistent';
import { fromDigits } from './digits';
import { runwayAt, type RunwayColumns } from './runway-at';
import type { ByAirfield, Catalogue, CatalogueRunway, Fields, Loaded, Numbers } from './types';
import { at, begins, damaged, fitting, lines, ofAnotherBuild, secondOf, triples } from './unpack';

const what = 'The list of runways';

/** The runways that go with a catalogue (already parsed JSON), or why they cannot be used. Never throws. */
export function decodeRunways(
  json: unknown,
  { fields }: Pick<Catalogue, 'fields'>,
): Loaded<ByAirfield<CatalogueRunway>> {
  const file = fitting(what, runwaysFileSchema, json);
  if (!file.ok) return file;
  const other = ofAnotherBuild(what, file.value, fields);
  if (other) return other;
  const columns = columnsOf(file.value, fields);
  const wrong = typeof columns === 'string' ? columns : fault(columns);
  if (typeof columns === 'string' || wrong !== null) return damaged(what, wrong ?? '');
  return {
    ok: true,
    value: (index) => {
      const first = at(fields.firstRunway, index);
      return Array.from({ length: at(fields.firstRunway, index + 1) - first }, (_, i) =>
        runwayAt(columns, index, first + i),
      );
    },
  };
}

/** Entries of `begins` -> for each place of the other column, `most` at most, the entry it belongs to. */
function owners(first: Numbers, most: number): Uint32Array {
  const out = new Uint32Array(Math.min(most, first[first.length - 1] ?? 0));
  for (let i = 0; i + 1 < first.length; i++) out.fill(i, first[i], first[i + 1]);
  return out;
}

/** How many ends the data locate, by place in `locatedEnds`. */
const endsLocated = locatedEnds.map((ends) => ends.filter(Boolean).length);

function columnsOf(file: RunwaysFile, fields: Fields): RunwayColumns | string {
  const runways = fields.firstRunway[fields.firstRunway.length - 1] ?? 0;
  const fifties = fromDigits(file.runways.fifties, runways);
  const feet = fromDigits(file.runways.feet, runways);
  const surface = fromDigits(file.runways.surface, runways);
  const located = fromDigits(file.runways.located, runways);
  if (!fifties || !feet || !surface || !located)
    return `the digits of length, surface or located are not those of ${runways} runways`;
  const flagKind = fromDigits(file.flags.kind, file.flags.figure.length);
  if (!flagKind) return `the digits of flags are not those of ${file.flags.figure.length} flags`;
  const odd = outside('located', located, locatedEnds.length - 1);
  if (odd !== null) return odd;
  const width = widthsOf(file, located);
  if (typeof width === 'string') return width;
  const { ends } = file;
  const firstEnd = begins(located.map((l) => endsLocated[l] ?? 0));
  const airfieldOf = owners(fields.firstRunway, runways);
  const runwayOf = owners(firstEnd, ends.lat.length);
  /** What was added to a second end is taken away: see `columns.ts`. */
  const from = (column: readonly number[], airfields: Numbers): number[] =>
    column.map((d, e) => {
      const r = runwayOf[e] ?? 0;
      const own = e > (firstEnd[r] ?? 0) ? d - (column[e - 1] ?? 0) : d;
      return own + (airfields[airfieldOf[r] ?? 0] ?? 0);
    });
  return {
    file,
    fields,
    length: fifties.map((n, r) => 50 * n + (feet[r] ?? 0)),
    width,
    surface,
    located,
    firstEnd,
    designators: lines(ends.designators),
    endLat: from(ends.lat, fields.lat),
    endLng: from(ends.lng, fields.lng),
    flags: triples(file.flags.runways, flagKind, file.flags.figure),
  };
}

/** Of each runway in feet, 0 where no end is located; or what is wrong with them. */
function widthsOf({ widths, runways }: RunwaysFile, located: Float64Array): Float64Array | string {
  const there = located.filter((l) => l > 0).length;
  const places = fromDigits(runways.width, there);
  if (!places) return `the digits of width are not those of ${there} runways`;
  const wrong = outside('width', places, widths.length - 1);
  if (wrong !== null) return wrong;
  let next = 0;
  return located.map((l) => (l > 0 ? (widths[places[next++] ?? 0] ?? 0) : 0));
}

/** What is wrong with the columns, or null: found here at once, not when a person asks for a runway. */
function fault(columns: RunwayColumns): string | null {
  const { file } = columns;
  const runways = columns.length.length;
  const ends = columns.designators.length;
  return (
    unequal('ends', ends, [
      ['lat', file.ends.lat],
      ['lng', file.ends.lng],
      ['elevation', file.ends.elevation],
      ['displaced', file.ends.displaced],
    ]) ??
    unequal('flags', file.flags.figure.length, [['runways', file.flags.runways]]) ??
    (columns.firstEnd[runways] === ends ? null : 'ends and runways do not add up') ??
    outside('surface', columns.surface, file.surfaces.length - 1) ??
    tooFar('ends.lat', columns.endLat, 90) ??
    tooFar('ends.lng', columns.endLng, 180) ??
    outside('flags', [...columns.flags.keys()], runways - 1) ??
    outside('flags', secondOf(columns.flags), flagKinds.length - 1)
  );
}
