import { compassPoint } from '../../figures/geometry/compass';
import { destination, groundLine } from '../../figures/geometry/earth';
import type { Position } from '../../survey/document';
import { Memo } from '../../survey/memo';
import type { Runway } from '../../survey/schema/runway';
import { lightColour } from '../../../styles/ramps';
import { metresPerPixel } from '../screen';
import { line, point, type OverlayFeature } from './features';

/** Pixels between the pavement's edge and the middle of the strip of each moment: A nearer, B further out, as in the rings. */
const stripAt = { a: 9, b: 17 } as const;
/** Pixels from the outermost strip to the middle of its label. */
const labelBeyond = 12;
/** Where along the runway the label stands, as a share of the length: away from crossings and touchdown. */
const labelAlong = 0.2;

interface Lit {
  readonly letter: 'a' | 'b';
  readonly side: string;
  readonly time: string;
}

const kept = new Memo<OverlayFeature[]>();

/**
 * A strip along a runway on the side that is lit at A, and one further out for B: where to look for a place to stand.
 * Sides by the compass, null where none is lit; times of day at the airfield, "07:30".
 */
export const litStrips = (
  runway: Runway,
  sideA: string | null,
  sideB: string | null,
  timeA: string,
  timeB: string,
  zoom: number,
): OverlayFeature[] =>
  kept.get([runway, sideA, sideB, timeA, timeB, zoom], () => {
    const a: Lit[] = sideA === null ? [] : [{ letter: 'a', side: sideA, time: timeA }];
    const b: Lit[] = sideB === null ? [] : [{ letter: 'b', side: sideB, time: timeB }];
    const groups = sideA === sideB ? [[...a, ...b]] : [a, b];
    return groups.flatMap((group) => strips(runway, group, zoom));
  });

/** The strips of one side, the outermost last, with one label for them. */
function strips(runway: Runway, lit: readonly Lit[], zoom: number): OverlayFeature[] {
  const [start, end] = runway.line;
  const outermost = lit[lit.length - 1];
  const { azimuth, distance } = groundLine(start, end);
  if (!outermost || azimuth === null) return [];
  const out = azimuth + (compassPoint(azimuth + 90) === outermost.side ? 90 : -90);
  const perPixel = metresPerPixel(start[1], zoom);
  const away = (pixels: number) => runway.width / 2 + pixels * perPixel;
  const beside = (position: Position, pixels: number) => destination(position, out, away(pixels));
  const [west, course] = azimuth < 180 ? [start, azimuth] : [end, groundLine(end, start).azimuth ?? 0];
  const label = point(
    beside(destination(west, course, distance * labelAlong), stripAt[outermost.letter] + labelBeyond),
    {
      part: 'strip-label',
      text: `lit at ${lit.map(({ letter, time }) => `${letter.toUpperCase()} ${time}`).join(', ')}`,
      // Along the runway, and never upside down.
      turn: course - 90,
      runway: runway.id,
    },
  );
  const lines = lit.map(({ letter }) =>
    line([beside(start, stripAt[letter]), beside(end, stripAt[letter])], {
      part: 'strip',
      colour: lightColour(0),
      runway: runway.id,
    }),
  );
  return [...lines, label];
}
