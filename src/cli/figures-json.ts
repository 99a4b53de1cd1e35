import type { Contents } from '../survey/contents';
import type { Problem } from '../survey/problems';
import { figuresBySpot } from '../figures/figures-for';
import { settingsFor, type Settings } from '../figures/optics/settings';
import type { PathFromSpot, Sample, SpotFigures } from '../figures/types';
import type { ElevationGrid } from '../figures/sight/terrain';
import { isoInstant } from '../time/local-time';
import type { SettingsWanted } from './settings-wanted';

/** The settings of a sample of a spot; null when none are wanted. */
type SettingsOf = ((sample: Sample) => Settings) | null;

/**
 * The figures of a survey in the form in which the `figures` command prints them (design, section 5); each spot's are
 * worked out when it is its turn.
 */
export function figuresJsonBySpot(
  contents: Contents,
  openingProblems: readonly Problem[],
  at: number,
  wanted: SettingsWanted | null = null,
  terrain: ElevationGrid | null = null,
) {
  const figures = figuresBySpot(contents, at, undefined, terrain);
  const settingsAt = ({ sun }: SpotFigures): SettingsOf =>
    wanted &&
    ((sample) =>
      settingsFor(sample, sun.geometricAltitude, { ...contents, lens: wanted.lens }, wanted.pinned));
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
    spots: printedSpots(figures.spots, settingsAt),
  };
}

function* printedSpots(spots: Iterable<SpotFigures>, settingsAt: (spot: SpotFigures) => SettingsOf) {
  for (const spot of spots) yield spotJson(spot, settingsAt(spot));
}

/** The same with all spots. */
export function figuresJson(...given: Parameters<typeof figuresJsonBySpot>) {
  const { spots, ...figures } = figuresJsonBySpot(...given);
  return { ...figures, spots: [...spots] };
}

const spotJson = ({ id, name, sun, runways, paths }: SpotFigures, settingsOf: SettingsOf) => ({
  id,
  name,
  sun: { azimuth: sun.azimuth, altitude: sun.altitude },
  runways: runways.map((r) => ({
    id: r.id,
    centrelineDistance: r.centrelineDistance,
    side: r.side,
    station: r.station,
  })),
  paths: paths.map((path) => pathJson(path, settingsOf)),
});

const pathJson = (
  { ref, closest, best, visibleShare, glareShare, hidden }: PathFromSpot,
  settingsOf: SettingsOf,
) => ({
  path: ref.path,
  closest: sampleJson(closest, settingsOf),
  best: sampleJson(best, settingsOf),
  visibleShare,
  glareShare,
  hidden: hidden.map(({ from, to, by }) => ({ from, to, by })),
});

const sampleJson = (s: Sample, settingsOf: SettingsOf) => ({
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
  ...(settingsOf && { settings: settingsJson(settingsOf(s)) }),
});

const settingsJson = (s: Settings) => ({
  focalLength: s.focalLength,
  aperture: s.aperture,
  shutter: s.shutter,
  iso: s.iso,
  ev100: s.ev100,
  near: s.near,
  far: s.far,
  panRate: s.panRate,
  blurStill: s.blurStill,
  propellerArc: s.propellerArc,
});
