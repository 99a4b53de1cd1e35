import type { Contents } from '../survey/contents';
import type { Problem } from '../survey/problems';
import { figuresFor } from '../figures/figures-for';
import type { PathFromSpot, Sample, SpotFigures } from '../figures/types';
import { isoInstant } from '../time/local-time';

/** The figures of a survey in the form in which the `figures` command prints them (design, section 5). */
export function figuresJson(contents: Contents, openingProblems: readonly Problem[], at: number) {
  const figures = figuresFor(contents, at);
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
    spots: figures.spots.map(spotJson),
  };
}

const spotJson = ({ id, name, sun, runways, paths }: SpotFigures) => ({
  id,
  name,
  sun: { azimuth: sun.azimuth, altitude: sun.altitude },
  runways: runways.map((r) => ({
    id: r.id,
    centrelineDistance: r.centrelineDistance,
    side: r.side,
    station: r.station,
  })),
  paths: paths.map(pathJson),
});

const pathJson = ({ ref, closest, best, visibleShare, glareShare }: PathFromSpot) => ({
  path: ref.path,
  closest: sampleJson(closest),
  best: sampleJson(best),
  visibleShare,
  glareShare,
});

const sampleJson = (s: Sample) => ({
  station: s.station,
  height: s.height,
  groundRange: s.groundRange,
  slantRange: s.slantRange,
  bearing: s.bearing,
  elevation: s.elevation,
  aspect: s.aspect,
  focalLength: s.focalLength,
  focalLength35: s.focalLength35,
  lightAngle: s.lightAngle,
  phaseAngle: s.phaseAngle,
  flankLit: s.flankLit,
  light: s.light,
  glare: s.glare,
  score: s.score,
});
