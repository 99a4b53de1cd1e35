import { feetToMetres } from '../../units/length';
import { flagKinds, locatedEnds, perDegree, type RunwaysFile } from './columns';
import { impliedDesignator } from './implied-designator';
import type { CatalogueEnd, CatalogueRunway, Fields, Numbers, RunwayFlag } from './types';
import { at, type Triple } from './unpack';

/** The file's columns made readable by place, and what they are differences from. */
export interface RunwayColumns {
  readonly file: RunwaysFile;
  readonly fields: Fields;
  /** Feet, 0 for none. */
  readonly length: Numbers;
  readonly width: Numbers;
  /** Places in the file's surfaces, and in `locatedEnds`. */
  readonly surface: Numbers;
  readonly located: Numbers;
  readonly firstEnd: Numbers;
  readonly designators: readonly string[];
  /** Millionths of a degree. */
  readonly endLat: Numbers;
  readonly endLng: Numbers;
  /** By place of the runway. */
  readonly flags: ReadonlyMap<number, readonly Triple[]>;
}

/** One runway made from its columns: `r` is its place among all, `airfield` that of its airfield. */
export function runwayAt(columns: RunwayColumns, airfield: number, r: number): CatalogueRunway {
  const { length, width, surface, located } = columns;
  const first = at(columns.firstEnd, r);
  const [a, b] = at(locatedEnds, at(located, r));
  const end0 = a ? endAt(columns, airfield, first, null) : null;
  const end1 = b ? endAt(columns, airfield, first + (a ? 1 : 0), end0) : null;
  return {
    length: feetToMetres(at(length, r)) || null,
    width: feetToMetres(at(width, r)) || null,
    surface: at(columns.file.surfaces, at(surface, r)),
    ends: [end0, end1],
    flags: (columns.flags.get(r) ?? []).map(([, kind, figure]) => flagOf(at(flagKinds, kind), figure)),
  };
}

function endAt(
  columns: RunwayColumns,
  airfield: number,
  e: number,
  other: CatalogueEnd | null,
): CatalogueEnd {
  const { elevation, displaced } = columns.file.ends;
  const word = at(columns.designators, e);
  const above = at(elevation, e);
  return {
    designator: word === '=' && other !== null ? (impliedDesignator(other.designator) ?? '') : word,
    position: [at(columns.endLng, e) / perDegree, at(columns.endLat, e) / perDegree],
    elevation: above === null ? null : feetToMetres(at(columns.fields.elevation, airfield) + above),
    displaced: feetToMetres(at(displaced, e)),
  };
}

function flagOf(kind: RunwayFlag['kind'], figure: number): RunwayFlag {
  switch (kind) {
    case 'zero-length':
      return { kind };
    case 'length-off':
    case 'at-thresholds':
      return { kind, measured: figure };
    case 'far-away':
      return { kind, away: figure };
    case 'ends-swapped':
    case 'designator-off':
      return { kind, magnetic: figure };
  }
}
