import type { Contents } from '../../survey/contents';
import type { DisplayLine, ProgrammeEntry } from '../../survey/schema/flying';
import type { Position } from '../../survey/document';
import { instantOf } from '../../time/local-time';
import { acosDeg, RAD } from '../geometry/angles';
import { frameAt, groundLine, mapped } from '../geometry/earth';
import { sunAt } from '../light/sun';
import { frontLitTo, sideLitTo, topLitFrom } from '../practice';
import { publishedMinima, type PublishedMinimum } from './published-minima';

/** Where the sun stands for an entry of a programme, from the crowd line looking at the middle of the display line. */
export interface ProgrammeLight {
  readonly entry: ProgrammeEntry;
  /** Degrees; altitude apparent, azimuth from true north. */
  readonly altitude: number;
  readonly azimuth: number;
  /** Null where nobody has drawn the crowd, or the time does not exist on that day. */
  readonly light: 'dark' | 'overhead' | 'behind-you' | 'from-the-side' | 'in-your-eyes' | null;
}

export interface DisplayFigures {
  /** m from the display line to the nearest corner of a crowd line; null without one. */
  readonly crowdDistance: number | null;
  readonly minima: readonly PublishedMinimum[];
  readonly programme: readonly ProgrammeLight[];
}

type Field = Pick<Contents, 'crowdLines' | 'site' | 'subject'>;

/** What follows from a display line and its programme. `date`: the day shown, for entries without one of their own. */
export function displayFigures(display: DisplayLine, field: Field, date: string): DisplayFigures {
  const crowd = nearestCrowd(display, field.crowdLines);
  return {
    crowdDistance: crowd?.distance ?? null,
    minima: publishedMinima(display.speed ?? field.subject.climbSpeed),
    programme: display.programme.map((entry) => {
      const instant = instantOf(entry.date ?? date, entry.time, field.site.timeZone);
      return lightOf(entry, instant, display, crowd?.position ?? null);
    }),
  };
}

const ends = ({ line }: DisplayLine) => [line[0], line[line.length - 1]] as [Position, Position];

/** The crowd's corner that is nearest to a display line, and how near it is. */
function nearestCrowd(display: DisplayLine, lines: Field['crowdLines']) {
  const [from, to] = ends(display);
  const frame = frameAt(from);
  const [x, y] = mapped(frame, to);
  const length = Math.hypot(x, y);
  let nearest: { readonly position: Position; readonly distance: number } | null = null;
  for (const position of lines.flatMap(({ line }) => line)) {
    const [px, py] = mapped(frame, position);
    const t = length > 0 ? Math.max(0, Math.min(1, (px * x + py * y) / (length * length))) : 0;
    const distance = Math.hypot(px - t * x, py - t * y);
    if (!nearest || distance < nearest.distance) nearest = { position, distance };
  }
  return nearest;
}

function lightOf(
  entry: ProgrammeEntry,
  instant: number,
  display: DisplayLine,
  crowd: Position | null,
): ProgrammeLight {
  const [from, to] = ends(display);
  const middle: Position = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const { altitude, azimuth } = sunAt(middle, instant);
  const there = { entry, altitude, azimuth };
  if (!crowd) return { ...there, light: null };
  if (altitude < 0) return { ...there, light: 'dark' };
  if (altitude >= topLitFrom) return { ...there, light: 'overhead' };
  const toEye = groundLine(middle, crowd).azimuth;
  if (toEye === null) return { ...there, light: null };
  const apart = acosDeg(Math.cos((azimuth - toEye) * RAD));
  return {
    ...there,
    light: apart <= frontLitTo ? 'behind-you' : apart <= sideLitTo ? 'from-the-side' : 'in-your-eyes',
  };
}
