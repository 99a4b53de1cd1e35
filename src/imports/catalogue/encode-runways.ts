import { flagKinds, locatedEnds, perDegree, placesPerDegree, type RunwaysFile } from './columns';
import { toDigits } from './digits';
import { byFrequency, dictionary, differences, endedLines, feet } from './encode-parts';
import { impliedDesignator } from './implied-designator';
import type { Airfield, CatalogueEnd, CatalogueRunway, RunwayFlag } from './types';

type Row = Pick<Airfield, 'position' | 'elevation'> & { readonly runways: readonly CatalogueRunway[] };

const micro = (deg: number) => Math.round(deg * perDegree);
const microPlace = (deg: number) => Math.round(deg * placesPerDegree) * (perDegree / placesPerDegree);

function figureOf(flag: RunwayFlag): number {
  switch (flag.kind) {
    case 'zero-length':
      return 0;
    case 'length-off':
    case 'at-thresholds':
      return Math.round(flag.measured);
    case 'far-away':
      return Math.round(flag.away);
    case 'ends-swapped':
    case 'designator-off':
      return Math.round(flag.magnetic);
  }
}

/** An equals sign where the other end's designator already says it. */
const designatorLine = (end: CatalogueEnd, other: CatalogueEnd | null) =>
  other !== null && end.designator === impliedDesignator(other.designator) ? '=' : end.designator;

const fiftiesOf = (length: number) => Math.round(length / 50);

/** From the airfield to an end in millionths of a degree; with the other end's, where that one came first. */
function offset(axis: 0 | 1, airfield: Row, end: CatalogueEnd, other: CatalogueEnd | null): number {
  const from = (e: CatalogueEnd) => micro(e.position[axis]) - microPlace(airfield.position[axis]);
  return from(end) + (other ? from(other) : 0);
}

export function runwayColumns(airfields: readonly Row[]): Omit<RunwaysFile, 'format' | 'builtBy'> {
  const runways = airfields.flatMap((a) => a.runways.map((r) => ({ ...r, airfield: a })));
  const lengths = runways.map((r) => feet(r.length ?? 0));
  const surfaces = dictionary(runways.map((r) => r.surface));
  const widths = byFrequency(
    runways.filter((r) => r.ends[0] ?? r.ends[1]).map((r) => (r.width === null ? 0 : feet(r.width))),
  );
  const ends = runways.flatMap((r) =>
    r.ends.flatMap((end, i) =>
      end ? [{ end, other: i === 1 ? r.ends[0] : null, airfield: r.airfield }] : [],
    ),
  );
  const flags = runways.flatMap((r, i) => r.flags.map((flag) => ({ i, flag })));
  return {
    surfaces: surfaces.words,
    widths: widths.words,
    runways: {
      fifties: toDigits(lengths.map(fiftiesOf)),
      feet: toDigits(lengths.map((length) => length - 50 * fiftiesOf(length))),
      // Of a runway that is not located only the length is of use to who draws it.
      width: toDigits(widths.places),
      surface: toDigits(surfaces.places),
      located: toDigits(
        runways.map((r) =>
          locatedEnds.findIndex(([a, b]) => a === (r.ends[0] !== null) && b === (r.ends[1] !== null)),
        ),
      ),
    },
    ends: {
      designators: endedLines(ends.map(({ end, other }) => designatorLine(end, other))),
      lat: ends.map(({ end, other, airfield }) => offset(1, airfield, end, other)),
      lng: ends.map(({ end, other, airfield }) => offset(0, airfield, end, other)),
      elevation: ends.map(({ end, airfield }) =>
        end.elevation === null ? null : feet(end.elevation) - feet(airfield.elevation),
      ),
      displaced: ends.map(({ end }) => feet(end.displaced)),
    },
    flags: {
      runways: differences(flags.map(({ i }) => i)),
      kind: toDigits(flags.map(({ flag }) => flagKinds.indexOf(flag.kind))),
      figure: flags.map(({ flag }) => figureOf(flag)),
    },
  };
}
