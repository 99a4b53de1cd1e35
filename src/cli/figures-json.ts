import type { Contents } from '../survey/contents';
import type { Problem } from '../survey/problems';
import { figuresBySpot } from '../figures/figures-for';
import type { PathFromSpot, SpotFigures, Sun } from '../figures/types';
import type { ElevationGrid } from '../figures/sight/terrain';
import { isoInstant } from '../time/local-time';
import { formationJson, type FormationOf } from './formation-json';
import { sampleJson, type SampleJson, type SampleWishes } from './sample-json';

const nothing: SampleWishes = { settings: null, lenses: false };

/**
 * The figures of a survey in the form in which the `figures` command prints them (design, section 5); each spot's are
 * worked out when it is its turn.
 */
export function figuresJsonBySpot(
  contents: Contents,
  openingProblems: readonly Problem[],
  at: number,
  terrain: ElevationGrid | null,
  wishes: SampleWishes = nothing,
) {
  const figures = figuresBySpot(contents, at, terrain);
  const sample = sampleJson(contents, wishes);
  return {
    at: isoInstant(at),
    used: { subject: contents.subject.key, body: contents.body.key },
    problems: [...openingProblems, ...figures.problems].map(({ id, reason, used }) => ({ id, reason, used })),
    runways: figures.runways.map(({ id, length, trueBearing, declination, ends }) => ({
      id,
      length,
      trueBearing,
      declination,
      ends,
    })),
    spots: printedSpots(figures.spots, sample, formationJson(contents, at, terrain)),
  };
}

function* printedSpots(spots: Iterable<SpotFigures>, sample: SampleJson, formation: FormationOf) {
  for (const spot of spots) yield spotJson(spot, sample, formation);
}

/** The same with all spots. */
export function figuresJson(...given: Parameters<typeof figuresJsonBySpot>) {
  const { spots, ...figures } = figuresJsonBySpot(...given);
  return { ...figures, spots: [...spots] };
}

const spotJson = (
  { id, name, sun, sky, runways, paths }: SpotFigures,
  sample: SampleJson,
  formation: FormationOf,
) => ({
  id,
  name,
  sun: { azimuth: sun.azimuth, altitude: sun.altitude },
  sky: { direct: sky.direct, visibility: sky.visibility },
  runways: runways.map((r) => ({
    id: r.id,
    centrelineDistance: r.centrelineDistance,
    side: r.side,
    station: r.station,
  })),
  paths: paths.map((path) => ({ ...pathJson(path, sun, sample), ...formation(id, path) })),
});

const pathJson = (
  { ref, closest, best, pass, visibleShare, glareShare, hidden }: PathFromSpot,
  sun: Sun,
  sample: SampleJson,
) => ({
  path: ref.path,
  closest: sample(closest, sun),
  best: sample(best, sun),
  pass: pass && sample(pass, sun),
  visibleShare,
  glareShare,
  hidden: hidden.map(({ from, to, by }) => ({ from, to, by })),
});
