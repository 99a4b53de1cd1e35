import { litSide } from '../../src/figures/light/lit-side';
import { Scratch } from '../../src/figures/scratch';
import { allSpotFigures } from '../../src/figures/spot-figures';
import { focalLengthsAlong } from '../../src/figures/spot/focal-lengths-along';
import { outlookOf } from '../../src/figures/outlook';
import type { ElevationGrid } from '../../src/figures/sight/terrain';
import { pathsOf, type PathFilter } from '../../src/figures/traffic/paths';
import { metric } from '../../src/map/units';
import type { Scene } from '../../src/map/overlays/scene';
import { readContents } from '../../src/survey/contents';
import type { Survey } from '../../src/survey/document';
import { field, instant } from './field';

/** 07:30 and 19:15 in summer time. */
export const instants = [instant - 6.5 * 3_600_000, instant + 5.25 * 3_600_000] as const;

/** A scene of a survey as the page would make it. */
export function sceneOf(
  survey: Survey = field,
  selected: string | null = null,
  wanted: PathFilter = (kind, _runway, end) => (kind === 'arrival' || kind === 'departure') && end !== 1,
  terrain: ElevationGrid | null = null,
  scratch: Scratch = new Scratch(),
): Scene {
  const contents = readContents(survey);
  const paths = pathsOf(contents, wanted, null);
  const spots = allSpotFigures(contents, paths, instants, terrain, scratch).map(([a, b], i) => {
    const spot = contents.spots[i];
    if (!spot || !a || !b) throw new Error('expected figures of both moments for each spot');
    return { spot, a, b };
  });
  const chosen = spots.find((s) => s.spot.id === selected);
  return {
    contents,
    paths,
    spots,
    closedSpots: new Set(),
    visited: null,
    focalLengths: chosen ? paths.map((path, i) => focalLengthsAlong(path, chosen.a.paths[i])) : null,
    usableTo: outlookOf(contents, terrain).reach.usableTo,
    grounded: outlookOf(contents, terrain),
    rings: null,
    litSides: contents.runways.map((runway) => ({
      runway: runway.id,
      a: litSide(runway, instants[0]),
      b: litSide(runway, instants[1]),
    })),
    instant: instants[0],
    selected: survey.features.find((f) => f.id === selected) ?? null,
    vertex: null,
    inspected: null,
    drawing: [],
    drawingRunway: false,
    dragging: false,
    zoom: 14,
    units: metric,
    clocks: contents.moments,
  };
}
