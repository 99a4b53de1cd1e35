import { metresPerPixel, degreesPerPixel } from './screen';
import type { Contents } from '../survey/contents';
import type { Position } from '../survey/document';
import type { Bounds } from './map-surface';

/** m round runways and spots within which what else stands there belongs to the picture. */
const about = 1000;

/**
 * The corners of the airfield: runways, spots, aprons and taxi routes, and what is drawn near them. A recorded track of
 * many km, or a wood on the horizon, would make specks of them: such things count only where nothing else is drawn.
 * Null for an empty survey. East may run past 180.
 */
export function surveyBounds(contents: Contents): Bounds | null {
  const { runways, spots, aprons, taxiRoutes, obstacles, noGoAreas, flightPaths, site } = contents;
  const { displayLines, crowdLines, helipads, winchRuns } = contents;
  const [middle] = site.reference;
  const field = cornersOf(
    [
      ...runways.flatMap((r) => r.line),
      ...spots.map((s) => s.position),
      ...aprons.flatMap((area) => area.rings.flat()),
      ...[...taxiRoutes, ...displayLines, ...crowdLines, ...winchRuns].flatMap((way) => way.line),
      ...helipads.map((pad) => pad.position),
    ],
    middle,
  );
  const others = [
    ...[...noGoAreas, ...obstacles].flatMap((area) => area.rings.flat()),
    ...obstacles.flatMap((way) => way.line),
  ];
  if (!field) return cornersOf([...others, ...flightPaths.flatMap((way) => way.line)], middle);
  const [[west, south], [east, north]] = field;
  const high = about / metresPerDegree(0);
  const wide = about / metresPerDegree((south + north) / 2);
  const isNear = ([lng, lat]: Position) => {
    const x = beside(lng, middle);
    return x > west - wide && x < east + wide && lat > south - high && lat < north + high;
  };
  return cornersOf([[west, south], [east, north], ...others.filter(isNear)], middle);
}

/** m that a degree of longitude takes at a latitude, good enough for a picture; at the equator one of latitude as well. */
const metresPerDegree = (lat: number): number => metresPerPixel(lat, 0) / degreesPerPixel(0);

/** A longitude as the one beside another: within half the world. */
const beside = (lng: number, other: number): number => lng + 360 * Math.round((other - lng) / 360);

function cornersOf(positions: readonly Position[], middle: number): Bounds | null {
  if (positions.length === 0) return null;
  const lngs = positions.map(([lng]) => beside(lng, middle));
  const lats = positions.map(([, lat]) => lat);
  return [
    [least(lngs), least(lats)],
    [-least(lngs.map((x) => -x)), -least(lats.map((x) => -x))],
  ];
}

/** A loop, because a survey may have more positions than a call may have arguments. */
const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), Infinity);
