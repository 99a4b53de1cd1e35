import type { Contents } from '../../survey/contents';
import type { DisplayLine } from '../../survey/schema/flying';
import type { Position } from '../../survey/document';
import { frameAt, mapped } from '../geometry/earth';
import { actLight, middleOfLine, type ActLight } from './act-light';
import { actsOf, type Act } from './programme-acts';
import { publishedMinima, type PublishedMinimum } from './published-minima';

/** An entry of a programme and how it is lit for whoever stands at the crowd line. */
export interface ProgrammeLight {
  readonly act: Act;
  /** Null where the programme has no time for it, or nobody has drawn the crowd. */
  readonly light: ActLight | null;
}

export interface DisplayFigures {
  /** m from the display line to the nearest corner of a crowd line; null without one. */
  readonly crowdDistance: number | null;
  readonly minima: readonly PublishedMinimum[];
  readonly programme: readonly ProgrammeLight[];
}

type Field = Pick<Contents, 'crowdLines' | 'site' | 'subject' | 'subjects'>;

/** What follows from a display line and its programme. `date`: the day shown, for entries without one of their own. */
export function displayFigures(display: DisplayLine, field: Field, date: string): DisplayFigures {
  const crowd = nearestCrowd(display, field.crowdLines);
  return {
    crowdDistance: crowd?.distance ?? null,
    minima: publishedMinima(display.speed ?? field.subject.climbSpeed),
    programme: actsOf(display, date, field.site.timeZone, field.subjects).map((act) => ({
      act,
      light: crowd && actLight(act, middleOfLine(display), crowd.position, field.site.timeZone),
    })),
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
