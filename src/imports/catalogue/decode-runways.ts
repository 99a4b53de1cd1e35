import { flagKinds, locatedEnds, runwaysFileSchema, type RunwaysFile } from './columns';
import { outside, tooFar, unequal } from './consistent';
import { runwayAt, type RunwayColumns } from './runway-at';
import type { ByAirfield, Catalogue, CatalogueRunway, Fields, Loaded } from './types';
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
  const wrong = fault(columns);
  if (wrong !== null) return damaged(what, wrong);
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

/** Entries of `begins` -> for each place of the other column, the entry it belongs to. */
function owners(first: readonly number[], most: number): number[] {
  const out: number[] = [];
  for (let i = 0; i + 1 < first.length; i++) {
    const end = Math.min(first[i + 1] ?? 0, most);
    while (out.length < end) out.push(i);
  }
  return out;
}

function columnsOf(file: RunwaysFile, fields: Fields): RunwayColumns {
  const { ends } = file;
  const firstEnd = begins(file.runways.located.map((l) => (locatedEnds[l] ?? []).filter(Boolean).length));
  const airfieldOf = owners(fields.firstRunway, file.runways.located.length);
  const endAirfield = owners(firstEnd, ends.lat.length).map((r) => airfieldOf[r] ?? 0);
  return {
    file,
    fields,
    firstEnd,
    designators: lines(ends.designators, ends.lat),
    endLat: ends.lat.map((d, e) => d + (fields.lat[endAirfield[e] ?? 0] ?? 0)),
    endLng: ends.lng.map((d, e) => d + (fields.lng[endAirfield[e] ?? 0] ?? 0)),
    flags: triples(file.flags),
  };
}

/** What is wrong with the columns, or null: found here at once, not when a person asks for a runway. */
function fault(columns: RunwayColumns): string | null {
  const { file, fields } = columns;
  const runways = file.runways.length.length;
  const ends = columns.designators.length;
  return (
    unequal('runways', runways, [
      ['width', file.runways.width],
      ['surface', file.runways.surface],
      ['located', file.runways.located],
    ]) ??
    unequal('ends', ends, [
      ['lat', file.ends.lat],
      ['lng', file.ends.lng],
      ['elevation', file.ends.elevation],
      ['displaced', file.ends.displaced],
    ]) ??
    (fields.firstRunway.at(-1) === runways ? null : 'runways and airfields do not add up') ??
    (columns.firstEnd.at(-1) === ends ? null : 'ends and runways do not add up') ??
    outside('surface', file.runways.surface, file.surfaces.length - 1) ??
    outside('located', file.runways.located, locatedEnds.length - 1) ??
    tooFar('ends.lat', columns.endLat, 90) ??
    tooFar('ends.lng', columns.endLng, 180) ??
    outside('flags', [...columns.flags.keys()], runways - 1) ??
    outside('flags', secondOf(columns.flags), flagKinds.length - 1)
  );
}
