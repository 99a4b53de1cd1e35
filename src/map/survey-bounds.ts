import type { Contents } from '../survey/contents';
import type { Position } from '../survey/document';
import type { Bounds } from './map-surface';

/** The corners of all that is drawn in a survey, without its flight paths' ends; null when nothing is. East may run past 180. */
export function surveyBounds(contents: Contents): Bounds | null {
  const { runways, spots, aprons, taxiRoutes, obstacles, noGoAreas, flightPaths, site } = contents;
  const { displayLines, crowdLines, helipads, winchRuns } = contents;
  const positions: readonly Position[] = [
    ...runways.flatMap((r) => r.line),
    ...spots.map((s) => s.position),
    ...[...aprons, ...noGoAreas, ...obstacles].flatMap((area) => area.rings.flat()),
    ...[...taxiRoutes, ...obstacles, ...flightPaths, ...displayLines, ...crowdLines, ...winchRuns].flatMap(
      (way) => way.line,
    ),
    ...helipads.map((pad) => pad.position),
  ];
  if (positions.length === 0) return null;
  const [middle] = site.reference;
  const lngs = positions.map(([lng]) => lng + 360 * Math.round((middle - lng) / 360));
  const lats = positions.map(([, lat]) => lat);
  return [
    [least(lngs), least(lats)],
    [-least(lngs.map((x) => -x)), -least(lats.map((x) => -x))],
  ];
}

/** A loop, because a survey may have more positions than a call may have arguments. */
const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), Infinity);
