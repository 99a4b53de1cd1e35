import type { Position } from '../../../survey/document';
import type { CrowdLine, DisplayLine, DisplayPass } from '../../../survey/schema/flying';
import type { Subject } from '../../../survey/schema/subject';
import { RAD } from '../../geometry/angles';
import { frameAt, groundLine, mapped } from '../../geometry/earth';
import { displayBank, displayClimb, displayHeight, displayRun, displayTurn } from './practice';
import { flightAttitude } from '../nose-attitude';
import { longestFlown } from '../runway-geometry';
import type { PathSamples } from '../samples';
import { turnRadius } from '../turn-physics';
import type { Plane } from './on-track';
import { passSamples } from './passing';
import { trackOf, type Track } from './track';

/** A display line as it is flown: from one of its ends, the crowd to one side. */
interface DisplayAxis {
  readonly plane: Plane;
  /** m from end to end. */
  readonly length: number;
  /** 1 with the crowd on the left of the flight, -1 on the right; null where nobody has drawn the crowd. */
  readonly crowd: 1 | -1 | null;
}

/** Null for a line without length, or far too long to be one. */
function displayAxis(
  { line }: DisplayLine,
  direction: 'forward' | 'backward',
  crowdLines: readonly CrowdLine[],
): DisplayAxis | null {
  const ends = [line[0], line[line.length - 1]] as [Position, Position];
  const [from, to] = direction === 'forward' ? ends : [ends[1], ends[0]];
  const { distance: length, azimuth } = groundLine(from, to);
  if (azimuth === null || length < 1 || length > longestFlown) return null;
  const frame = frameAt(from);
  const [east, north] = [Math.sin(azimuth * RAD), Math.cos(azimuth * RAD)];
  const plane = { frame, x: 0, y: 0, east, north };
  return { plane, length, crowd: crowdSide(plane, length, crowdLines) };
}

/** The side of the crowd line that is nearest to the display line's middle. */
function crowdSide(
  { frame, east, north }: Plane,
  length: number,
  lines: readonly CrowdLine[],
): 1 | -1 | null {
  let nearest: { apart: number; left: number } | null = null;
  for (const position of lines.flatMap(({ line }) => line)) {
    const [x, y] = mapped(frame, position);
    const [ahead, left] = [x * east + y * north, y * east - x * north];
    const apart = Math.hypot(ahead - length / 2, left);
    if (!nearest || apart < nearest.apart) nearest = { apart, left };
  }
  return nearest === null || nearest.left === 0 ? null : nearest.left > 0 ? 1 : -1;
}

/** m beyond the middle of a turning pass that is flown straight on. */
const straightOn = 1200;

/** The track of a pass; null where it turns and nobody knows on which side the crowd is. */
function trackOfPass(pass: DisplayPass, { length, crowd }: DisplayAxis, radius: number): Track | null {
  const begin = { u: -displayRun, v: 0, du: 1, dv: 0 };
  if (pass === 'level' || pass === 'climbing') return trackOf(begin, [{ ahead: length + 2 * displayRun }]);
  if (crowd === null) return null;
  const away = -crowd;
  switch (pass) {
    case 'turning-away':
      return trackOf(begin, [
        { ahead: displayRun + length / 2 },
        { turn: away * displayTurn.away, radius },
        { ahead: straightOn },
      ]);
    case 'underside': {
      // An arc that touches the line at its middle, its centre beyond it: all of it keeps the line's distance.
      const half = displayTurn.underside / 2;
      const [sin, cos] = [Math.sin(half * RAD), Math.cos(half * RAD)];
      return trackOf(
        {
          u: length / 2 - radius * sin - straightOn * cos,
          v: away * (radius * (1 - cos) + straightOn * sin),
          du: cos,
          dv: crowd * sin,
        },
        [{ ahead: straightOn }, { turn: away * displayTurn.underside, radius }, { ahead: straightOn }],
      );
    }
    case 'topside': {
      // Off the line, round the crowd and back on to it: between two bends away, one towards the crowd.
      const half = displayTurn.topside / 2;
      const off = 4 * radius * Math.sin(half * RAD);
      return trackOf(begin, [
        { ahead: Math.max(0, displayRun + length / 2 - off / 2) },
        { turn: away * half, radius },
        { turn: crowd * displayTurn.topside, radius },
        { turn: away * half, radius },
        { ahead: Math.max(0, displayRun + length / 2 - off / 2) },
      ]);
    }
  }
}

/**
 * A pass along a display line; null where it cannot be told. Banked as its speed and radius ask. `field`: m above mean
 * sea level that heights count from.
 */
export function displaySamples(
  display: DisplayLine,
  pass: DisplayPass,
  direction: 'forward' | 'backward',
  crowdLines: readonly CrowdLine[],
  subject: Subject,
  field: number,
): PathSamples | null {
  const axis = displayAxis(display, direction, crowdLines);
  if (!axis) return null;
  const speed = display.speed ?? subject.climbSpeed;
  const track = trackOfPass(pass, axis, turnRadius(speed, displayBank));
  if (!track) return null;
  const level = field + (display.height ?? displayHeight) + subject.height / 2;
  const middle = displayRun + axis.length / 2;
  const climbs = pass === 'climbing' ? displayClimb.slope : 0;
  return passSamples(axis.plane, track, field, {
    heightAt: (way) => level + Math.min(displayClimb.most, climbs * Math.max(0, way - middle)),
    speedAt: () => speed,
    attitudeAt: (slope) => flightAttitude(subject, slope, speed),
  });
}

/** As people say it. */
export const passWords: Readonly<Record<DisplayPass, string>> = {
  level: 'level pass',
  climbing: 'climbing pass',
  'turning-away': 'pass turning away',
  topside: 'topside pass',
  underside: 'underside pass',
};
