import { RAD } from '../../figures/geometry/angles';
import { frameAt, groundLine, mapped } from '../../figures/geometry/earth';
import type { Position } from '../../survey/document';
import type { Surroundings } from '../bring-in/types';

/** m beside a runway's centreline within which an aircraft is on it: half of a wide one, and the recorder's error. */
const beside = 60;

/** The elevation (m above mean sea level) of the runway that a position is on; null beside every one, or not known. */
export function runwayElevation({ runways, elevation }: Surroundings): (position: Position) => number | null {
  const lines = runways.map(({ line, elevations: [a, b] }) => {
    const { azimuth, distance } = groundLine(...line);
    const radians = (azimuth ?? 0) * RAD;
    return {
      frame: frameAt(line[0]),
      east: Math.sin(radians),
      north: Math.cos(radians),
      length: distance,
      from: a ?? b ?? elevation,
      to: b ?? a ?? elevation,
    };
  });
  return (position) => {
    for (const { frame, east, north, length, from, to } of lines) {
      const { distance } = groundLine(frame.position, position);
      if (distance > length + beside || from === null || to === null) continue;
      const [x, y] = mapped(frame, position);
      const station = x * east + y * north;
      if (station < 0 || station > length || Math.abs(x * north - y * east) > beside) continue;
      return from + ((to - from) * station) / length;
    }
    return null;
  };
}
