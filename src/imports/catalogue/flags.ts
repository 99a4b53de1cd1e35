import { angleBetween, wrap360 } from '../../figures/geometry/angles';
import { designatorsApart, suggestedDesignator } from '../../figures/geometry/designator';
import { groundLine } from '../../figures/geometry/earth';
import { declination } from '../../figures/geometry/magnetic';
import type { CatalogueEnd, CatalogueRunway, RunwayFlag } from './types';
import type { Position } from '../../survey/document';

/** A runway as published. `headings`: degrees from true north as the data state them, one an end, null for unknown. */
type RunwayRow = Pick<CatalogueRunway, 'length' | 'ends'> & {
  readonly headings: readonly [number | null, number | null];
};

/** How far data may disagree before the runway is flagged. Common practice, no source. */
const shortestLine = 1; // m
const lengthShare = 0.1;
const farAway = 10_000; // m
const opposite = 150; // degrees
const numbersApart = 1; // tens of degrees
/** Displaced thresholds explain a missing length when they make it up to this share of the runway. */
const thresholdShare = 0.02;
/** Where runways may be numbered by true bearing (northern Canada, the polar regions). From memory. */
const trueNorthLatitude = 60; // degrees

/**
 * What contradicts itself in one runway's rows. `airfield`: its position, `elevation` in m above mean sea level;
 * `instant`: the day for which magnetic bearings are taken.
 */
export function flagsOf(
  row: RunwayRow,
  airfield: Position,
  elevation: number,
  instant: number,
): RunwayFlag[] {
  const flags: RunwayFlag[] = [];
  const known = row.ends.filter((end) => end !== null);
  const away = Math.max(0, ...known.map((end) => groundLine(airfield, end.position).distance));
  if (away > farAway) flags.push({ kind: 'far-away', away });
  const [a, b] = row.ends;
  if (!a || !b) return flags;
  const { distance, azimuth } = groundLine(a.position, b.position);
  if (azimuth === null || distance < shortestLine) return [...flags, { kind: 'zero-length' }];
  const length = lengthFlag(row.length, distance, a.displaced + b.displaced);
  if (length) flags.push(length);
  const direction = directionFlag(row, [a, b], azimuth, declination(a.position, elevation, instant));
  if (direction) flags.push(direction);
  return flags;
}

function lengthFlag(published: number | null, measured: number, displaced: number): RunwayFlag | null {
  if (published === null) return null;
  const explained =
    displaced > 2 * thresholdShare * published &&
    Math.abs(measured + displaced - published) < thresholdShare * published;
  if (explained && Math.abs(measured - published) > displaced / 2) return { kind: 'at-thresholds', measured };
  return Math.abs(measured - published) > lengthShare * published ? { kind: 'length-off', measured } : null;
}

function directionFlag(
  row: RunwayRow,
  ends: readonly [CatalogueEnd, CatalogueEnd],
  azimuth: number,
  declinationDeg: number,
): RunwayFlag | null {
  const magnetic = wrap360(azimuth - declinationDeg);
  const apart = (bearing: number) => {
    const found = [bearing, bearing + 180].map((b, i) =>
      designatorsApart(suggestedDesignator(b), ends[i as 0 | 1].designator),
    );
    return found.every((d) => d !== null) ? Math.max(...found) : null;
  };
  const off = apart(magnetic);
  if (off === null || off <= numbersApart) return null;
  const heading = row.headings[0];
  if (heading !== null && angleBetween(heading, azimuth) > opposite && off * 10 > opposite)
    return { kind: 'ends-swapped', magnetic };
  const offTrue = apart(azimuth) ?? off;
  if (numberedByTrueNorth(ends[0]) && offTrue <= numbersApart) return null;
  return { kind: 'designator-off', magnetic };
}

/** A "T" after the number says so (16T); elsewhere only the latitude makes it likely. */
const numberedByTrueNorth = (end: CatalogueEnd) =>
  /^\d{1,2}[LCR]?T$/.test(end.designator) || Math.abs(end.position[1]) >= trueNorthLatitude;
