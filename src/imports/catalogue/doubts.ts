import { bearing, metres } from '../../units/format';
import type { Airfield, AirfieldToStart, CatalogueEnd, CatalogueRunway, RunwayFlag } from './types';

export interface LocatedRunway extends CatalogueRunway {
  readonly ends: readonly [CatalogueEnd, CatalogueEnd];
}

/** Both ends are known and are two places: there is a line to draw. */
export function isLocated(runway: CatalogueRunway): runway is LocatedRunway {
  const [a, b] = runway.ends;
  return a !== null && b !== null && !runway.flags.some((flag) => flag.kind === 'zero-length');
}

export const runwayName = ({ ends: [a, b] }: LocatedRunway) => `${a.designator}/${b.designator}`;

/** What is odd about a runway that is drawn, in plain words with what to do about it. */
export function runwayDoubts(runway: LocatedRunway, { elevation }: Pick<Airfield, 'elevation'>): string[] {
  return [
    ...runway.flags.map((flag) => flagDoubt(flag, runway)),
    ...thresholdDoubt(runway),
    ...widthDoubt(runway),
    ...elevationDoubt(runway, elevation),
  ].filter((doubt) => doubt !== '');
}

function flagDoubt(flag: RunwayFlag, { length, ends: [a, b] }: LocatedRunway): string {
  const displaced = a.displaced + b.displaced;
  switch (flag.kind) {
    case 'length-off':
      return `The data give a length of ${metres(length)}, but the two ends lie ${metres(flag.measured)} apart. Check both ends on the map.`;
    case 'at-thresholds':
      return `The two ends lie ${metres(flag.measured)} apart; with ${metres(displaced)} of displaced thresholds that makes the published ${metres(length)}. The points seem to be the landing thresholds: move the ends out to the ends of the pavement.`;
    case 'far-away':
      return `An end of this runway lies ${metres(flag.away)} from the airfield's own position. Check where the runway is.`;
    case 'ends-swapped':
      return `The ends seem to be swapped: from end ${a.designator} to end ${b.designator} the line points to ${bearing(flag.magnetic)} magnetic, against its number. Check which end is which.`;
    case 'zero-length':
    case 'designator-off':
      // The first is not drawn; the second the figures say, anew after every edit.
      return '';
  }
}

/** Thresholds that leave less than half of the runway for landing are more often wrong units than true. */
function thresholdDoubt({ length, ends: [a, b] }: LocatedRunway): string[] {
  if (length === null || a.displaced + b.displaced <= length / 2) return [];
  return [
    `The displaced thresholds (${metres(a.displaced)} at end ${a.designator}, ${metres(b.displaced)} at end ${b.designator}) take more than half of the ${metres(length)}. Check them.`,
  ];
}

/** A width in m that a survey takes; null when it is not known or cannot be one. */
export const usableWidth = ({ width }: CatalogueRunway): number | null =>
  width !== null && width >= 1 && width <= 500 ? width : null;

function widthDoubt(runway: LocatedRunway): string[] {
  if (runway.width === null || usableWidth(runway) !== null) return [];
  return [`The data give a width of ${metres(runway.width)}, which is left out. Type it if you know it.`];
}

/** The words follow what the figures do with a missing elevation. */
function elevationDoubt({ ends: [a, b] }: LocatedRunway, field: number): string[] {
  if (a.elevation !== null && b.elevation !== null) return [];
  if (a.elevation === null && b.elevation === null)
    return [
      `The data give no elevation for either end; the airfield's ${metres(field)} stand in. Type them if you know them.`,
    ];
  const [missing, other] = a.elevation === null ? [a, b] : [b, a];
  return [
    `The data give no elevation for end ${missing.designator}; that of end ${other.designator} stands in. Type it if you know it.`,
  ];
}

/** What the data know of runways that cannot be drawn from them. */
export function missingRunwayDoubts({ runways }: Pick<AirfieldToStart, 'runways'>): string[] {
  if (runways === null)
    return [
      'The list of runways could not be loaded. Draw them by their two ends, or start again with a network.',
    ];
  if (runways.length === 0) return ['The data have no runway here. Draw it by its two ends.'];
  const missing = runways.filter((runway) => !isLocated(runway)).map(missingDoubt);
  return [...new Set(missing)];
}

function missingDoubt(runway: CatalogueRunway): string {
  const [a, b] = runway.ends;
  const what = `${runway.length === null ? '' : ` of ${metres(runway.length)}`}${runway.surface === '' ? '' : ` (${runway.surface})`}`;
  if (a && b)
    return `The data put both ends of runway ${a.designator}/${b.designator}${what} at one point. Draw it by its two ends.`;
  const end = a ?? b;
  if (end) return `The data locate only end ${end.designator} of a runway${what}. Draw it by its two ends.`;
  return `The data name a runway${what} but not where it lies. Draw it by its two ends.`;
}
