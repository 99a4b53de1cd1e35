import type { Contents } from '../survey/contents';
import type { ElevationGrid } from '../figures/sight/terrain';
import { siteFrame } from '../figures/sight/site-frame';
import type { Path } from '../figures/traffic/paths';
import { areaAbout, cellPosition, type Area } from './area';
import { chosenPaths, type PathsAsked } from './chosen-paths';
import { instantsWithin, lightHours, type Hours } from './instants';
import { coarsestCell, finestCell, mostCells, mostSide, usualCell, usualStep } from './practice';

/** What somebody asks; null for what is usual. */
export interface SweepAsked extends PathsAsked {
  /** m to a side of the area, and of a cell. */
  readonly side: number | null;
  readonly cell: number | null;
  readonly hours: Hours | null;
  /** s from instant to instant. */
  readonly step: number | null;
}

/** A question that can be answered. */
export interface SweepPlan {
  readonly area: Area;
  readonly instants: readonly number[];
  /** s. */
  readonly step: number;
  readonly paths: readonly Path[];
}

export type Planned =
  | { readonly ok: true; readonly plan: SweepPlan }
  /** `about`: which of the things asked is wrong; `cell`: a coarser one that would do. */
  | {
      readonly ok: false;
      readonly about: 'runways' | 'lenses' | 'side' | 'cell' | 'hours' | 'paths' | 'pole' | 'antimeridian';
      readonly reason: string;
      readonly cell?: number;
    };

const refused = (about: Extract<Planned, { ok: false }>['about'], reason: string): Planned => ({
  ok: false,
  about,
  reason,
});

/** Degrees from a pole within which east and north lose their meaning over such an area. */
const nearPole = 1;
const perThousand = (n: number): string => `${Math.round(n)}`.replace(/\B(?=(\d{3})+$)/g, ',');

/** Area, instants and paths of a question, or what is wrong with it and the mend. `terrain`: what states no height lies on it. */
export function planSweep(contents: Contents, asked: SweepAsked, terrain: ElevationGrid | null): Planned {
  if (contents.runways.length === 0)
    return refused(
      'runways',
      'the survey has no runway; draw one first, then there is something to stand at',
    );
  if (contents.kit.lenses.length === 0)
    return refused('lenses', 'the kit has no lens; add one, for what is in reach hangs on it');
  const { paths, missing } = chosenPaths(contents, asked, terrain);
  if (missing.length > 0)
    return refused('paths', `the survey has no path "${missing[0]}"; they are named as under "paths"`);
  if (paths.length === 0)
    return refused('paths', 'no arrival or departure is in use; open an end, or name the paths');
  const { side, cell } = asked;
  if (side !== null && !(side > 0 && side <= mostSide) && !tooFine(side, cell))
    return refused('side', `the side must be above 0 and at most ${perThousand(mostSide)} m, got ${side}`);
  const ids = new Set(paths.map(({ ref }) => ref.runway));
  const chosen = contents.runways.filter(({ id }) => ids.has(id));
  const frame = siteFrame(contents.site.reference);
  const about = chosen.length > 0 ? chosen : contents.runways;
  const fine = tooFine(side ?? areaAbout(about, frame, usualCell, null).side, cell);
  if (fine) return fine;
  if (cell !== null && !(cell >= finestCell && cell <= coarsestCell))
    return refused('cell', `the cell must be ${finestCell} to ${coarsestCell} m, got ${cell}`);
  const area = areaAbout(about, frame, cell ?? usualCell, side);
  if (Math.abs(contents.site.reference[1]) > 90 - nearPole)
    return refused(
      'pole',
      `the field lies within ${nearPole} degree of a pole, where east and north turn from cell to cell; places there cannot be shown`,
    );
  const corners = [0, area.count - 1, area.count * (area.count - 1), area.count * area.count - 1].map((i) =>
    cellPosition(area, i),
  );
  const lngs = corners.map(([lng]) => lng);
  if (Math.max(...lngs) - Math.min(...lngs) > 180)
    return refused(
      'antimeridian',
      'the area lies over the antimeridian; choose a smaller side or paths of another runway, so that it stays on one side',
    );
  const hours = asked.hours ?? lightHours(contents, asked.at);
  const step = asked.step ?? usualStep;
  if (!(step >= 1)) return refused('hours', `the step must be at least 1 s, got ${step}`);
  const count = (hours.to - hours.from) / 1000 / step;
  if (!(count > 0))
    return refused('hours', 'there is no instant between the two times; the second must be later');
  if (count > mostInstants)
    return refused(
      'hours',
      `that would be ${perThousand(count)} instants; at most ${mostInstants}: choose a longer step`,
    );
  return {
    ok: true,
    plan: { area, instants: instantsWithin(hours, step), step, paths },
  };
}

const mostInstants = 400;
/** Bytes kept a cell, and cells a second on one core: for saying what a question would take. */
const bytesEach = 64;
const cellsEachSecond = 15_000;

/** Why a cell is too fine for a side, what it would take, and one that would do; null when it is not. */
function tooFine(side: number, cell: number | null): Extract<Planned, { ok: false }> | null {
  if (cell === null || !(cell > 0) || !(side > 0)) return null;
  const cells = (side / cell) ** 2;
  if (cells <= mostCells) return null;
  // What is offered must not be refused in its turn.
  const offered = Math.min(side, mostSide);
  const coarser = Math.max(finestCell, Math.ceil(offered / Math.sqrt(mostCells)));
  const minutes = Math.max(1, Math.round(cells / cellsEachSecond / 60));
  const time = minutes < 120 ? `${minutes} minutes` : `${perThousand(minutes / 60)} hours`;
  const within = side > mostSide ? `, over ${perThousand(mostSide)} m at most,` : '';
  return {
    ok: false,
    about: 'cell',
    reason: `${perThousand(side)} m at ${cell} m are ${perThousand(cells)} cells: some ${time} and ${perThousand((cells * bytesEach) / 1e6)} MB; a cell of ${coarser} m${within} will do`,
    cell: coarser,
  };
}
