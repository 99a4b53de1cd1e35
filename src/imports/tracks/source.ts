import { groundLine } from '../../figures/geometry/earth';
import { printOf } from '../../survey/brought-in';
import type { Position } from '../../survey/document';
import { isoInstant } from '../../time/local-time';
import { metres } from '../../units/format';
import { Tally } from '../bring-in/tally';
import {
  noQuestions,
  type Answers,
  type Candidate,
  type Proposal,
  type ReadSource,
  type Surroundings,
} from '../bring-in/types';
import { practice } from '../practice';
import { aboveSeaLevel, inMetres } from './altitude';
import { runwayElevation } from './on-runways';
import { partsOfTrack } from './parts';
import type { Track, TrackPoint, TracksRead, Waypoint } from './track';

/** Heights of a flight path: the design's bounds of the field. */
const [lowest, highest] = [-1000, 30_000];

/** Recorded flights as flight paths, waypoints as standing spots. */
export class TracksSource implements ReadSource {
  readonly #read: TracksRead;

  constructor(read: TracksRead) {
    this.#read = read;
  }

  propose(around: Surroundings, answers: Answers): Proposal {
    const { tracks, waypoints, leftOut, remarks } = this.#read;
    const tally = new Tally();
    tally.addAll(leftOut);
    const said: string[] = [];
    const flights = tracks.flatMap((track) => flightsOf(track, around, answers, tally, said));
    const spots = waypoints.flatMap((waypoint) => spotOf(waypoint, around, answers, tally));
    return {
      candidates: [...flights, ...spots],
      leftOut: tally.list,
      remarks: [...remarks, ...new Set(said)],
      credits: [],
      site: {},
      asks: {
        ...noQuestions,
        radius: true,
        altitude: tracks.some(({ points }) => points.some((p) => p.altitude !== null)),
        altitudeUnit: tracks.some(
          ({ unit, points }) => unit === null && points.some((p) => p.altitude !== null),
        ),
      },
      placeName: '',
      middle: waypoints[0]?.position ?? lowestPoint(tracks),
    };
  }
}

/** Where a flight is lowest, it is nearest to an airfield. */
function lowestPoint(tracks: readonly Track[]): Position | null {
  let best: TrackPoint | null = null;
  for (const { points } of tracks)
    for (const point of points)
      if (best === null || (point.altitude ?? Infinity) < (best.altitude ?? Infinity)) best = point;
  return best?.position ?? null;
}

function flightsOf(
  track: Track,
  around: Surroundings,
  answers: Answers,
  tally: Tally,
  said: string[],
): Candidate[] {
  const inside = (p: TrackPoint) =>
    around.reference === null || groundLine(around.reference, p.position).distance <= answers.radius;
  const onRunway = runwayElevation(around);
  const first = track.points[0];
  const key = printOf([
    track.name,
    first ? [...first.position] : null,
    first?.time ?? null,
    track.points.length,
  ]);
  if (!track.points.some((p) => p.altitude !== null)) {
    tally.add('flights', 'they have no altitudes; a flight path needs one for each point');
    return [];
  }
  const unit = track.unit ?? answers.altitudeUnit;
  const parts = partsOfTrack(track, tally).flatMap((part) => runsInside(part, inside, answers.radius, tally));
  const heights = parts.map((part) =>
    part.map(({ altitude }) => (altitude === null ? null : aboveSeaLevel(inMetres(altitude, unit), answers))),
  );
  const shift = answers.tieToRunway ? tieOf(parts, heights, onRunway, around.subjectHeight) : null;
  if (answers.tieToRunway && shift === null)
    said.push(
      `${track.name || 'A flight'} has no altitude on a runway of known elevation: it is not tied to one.`,
    );
  return parts.flatMap((part, i): Candidate[] => {
    const known = (heights[i] ?? []).map((h) => (h === null ? null : h + (shift ?? 0)));
    const filled = withoutGaps(part, known, (p) => {
      const ground = onRunway(p);
      return ground === null ? null : ground + around.subjectHeight / 2;
    });
    if (!filled) {
      tally.add('flights', 'a part of them has no altitude at all');
      return [];
    }
    if (filled.some((h) => h < lowest || h > highest)) {
      tally.add('flights', `their altitudes are outside ${metres(lowest)} to ${metres(highest)}`);
      return [];
    }
    const times = part.flatMap(({ time }) => (time === null ? [] : [isoInstant(time)]));
    const timed = times.length === part.length;
    if (!timed && times.length > 0)
      said.push(
        `${track.name || 'A flight'} has points without a time: it comes in without times, and its speed stays unknown.`,
      );
    return [
      {
        source: `track ${key}${i === 0 ? '' : `#${i + 1}`}`,
        kind: 'flight-path',
        group: 'flight paths',
        shape: { type: 'LineString', coordinates: part.map((p) => p.position) },
        properties: {
          name: nameOf(track, part, i, parts.length),
          heights: filled.map((h) => Math.round(h * 10) / 10),
          ...(timed ? { times } : {}),
          source: 'recorded',
          altitude: {
            meaning: answers.altitudeMeaning,
            ...(answers.altitudeMeaning === 'pressure' ? { qnh: answers.qnh } : {}),
            ...(answers.altitudeMeaning === 'ellipsoid' ? { geoid: answers.geoid } : {}),
            ...(shift === null ? {} : { tiedBy: Math.round(shift * 10) / 10 }),
          },
        },
      },
    ];
  });
}

/** The stretches of a part that lie near the airfield. */
function runsInside(
  part: readonly TrackPoint[],
  inside: (p: TrackPoint) => boolean,
  radius: number,
  tally: Tally,
): (readonly TrackPoint[])[] {
  const runs: TrackPoint[][] = [];
  let run: TrackPoint[] = [];
  let away = 0;
  for (const point of part) {
    if (inside(point)) run.push(point);
    else {
      away++;
      if (run.length > 0) runs.push(run);
      run = [];
    }
  }
  if (run.length > 0) runs.push(run);
  if (away > 0) tally.add('points', `farther than ${metres(radius)} from the airfield`, away);
  return runs.filter((points) => {
    const long = lengthOf(points) >= practice.shortestPart;
    if (!long)
      tally.add('parts of flights', `shorter than ${metres(practice.shortestPart)} between two gaps`);
    return long;
  });
}

function lengthOf(points: readonly TrackPoint[]): number {
  let sum = 0;
  for (let i = 1; i < points.length; i++)
    sum += groundLine((points[i - 1] as TrackPoint).position, (points[i] as TrackPoint).position).distance;
  return sum;
}

/**
 * m to add so that, where the flight is nearest to a runway under it, its wheels are on it: no point on a runway lies
 * below the pavement then. Null where no point is on one.
 */
function tieOf(
  parts: readonly (readonly TrackPoint[])[],
  heights: readonly (readonly (number | null)[])[],
  onRunway: (position: Position) => number | null,
  subjectHeight: number,
): number | null {
  const shifts = parts.flatMap((part, i) =>
    part.flatMap(({ position }, j) => {
      const height = heights[i]?.[j] ?? null;
      const ground = height === null ? null : onRunway(position);
      return height === null || ground === null ? [] : [ground + subjectHeight / 2 - height];
    }),
  );
  return shifts.length === 0 ? null : shifts.reduce((a, b) => Math.max(a, b));
}

/** Missing heights: on a runway its own, else on the straight line between the known ones, or the nearest known. */
function withoutGaps(
  part: readonly TrackPoint[],
  known: readonly (number | null)[],
  ground: (position: Position) => number | null,
): number[] | null {
  const heights = known.map((h, i) => h ?? ground((part[i] as TrackPoint).position));
  const at = heights.flatMap((h, i) => (h === null ? [] : [i]));
  if (at.length === 0) return null;
  let next = 0;
  return heights.map((h, i) => {
    if (h !== null) return h;
    while (next < at.length && (at[next] as number) < i) next++;
    const [before, after] = [at[next - 1], at[next]];
    const value = (j: number) => heights[j] as number;
    if (before === undefined || after === undefined) return value((before ?? after) as number);
    return value(before) + ((value(after) - value(before)) * (i - before)) / (after - before);
  });
}

function nameOf({ name }: Track, part: readonly TrackPoint[], i: number, parts: number): string {
  const start = part[0]?.time ?? null;
  const own = name || (start === null ? 'Recorded flight' : `Flight ${isoInstant(start).slice(0, 16)}Z`);
  return `${own.slice(0, 100)}${parts > 1 ? `, part ${i + 1}` : ''}`;
}

function spotOf(
  { name, notes, position }: Waypoint,
  { reference }: Surroundings,
  { radius }: Answers,
  tally: Tally,
): Candidate[] {
  if (reference && groundLine(reference, position).distance > radius) {
    tally.add('waypoints', `farther than ${metres(radius)} from the airfield`);
    return [];
  }
  return [
    {
      source: `waypoint ${printOf([name, position])}`,
      kind: 'standing-spot',
      group: 'standing spots',
      shape: { type: 'Point', coordinates: position },
      properties: { name, ...(notes === '' ? {} : { notes }), access: { status: 'unknown' } },
    },
  ];
}
