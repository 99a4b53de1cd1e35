import type { Contents } from '../survey/contents';
import type { Position } from '../survey/document';
import { standingEyeHeight } from '../survey/schema/standing-spot';
import { acosDeg } from '../figures/geometry/angles';
import { frameAt, along, mapped } from '../figures/geometry/earth';
import { outlookOf } from '../figures/outlook';
import { PathInView } from '../figures/path-in-view';
import { groundAt } from '../figures/sight/ground';
import { seasons } from '../figures/sight/spot-sight';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { Path } from '../figures/traffic/paths';
import { cellPosition, printedPosition, type Area } from './area';
import { LazySight } from './lazy-sight';

/** Needed focal lengths in mm that lines are drawn for, besides the ends of what the kit fits. */
const usualLines = [100, 200, 300, 400, 600] as const;
/** Aspects in degrees of what counts: seen from ahead, from the side, or from a little behind. */
const aspects = [30, 135] as const;

/** A line of equal needed focal length on the ground. */
export interface ReachLine {
  /** mm. */
  readonly focalLength: number;
  readonly lines: readonly (readonly Position[])[];
}

/** Least needed focal length in mm over a path's samples in sight of aspect 30 to 135 degrees, cell by cell; Infinity for none. */
export function leastFocals(
  contents: Contents,
  path: Path,
  area: Area,
  terrain: ElevationGrid | null,
  instant: number,
): Float64Array {
  const { framing, around, runways, fieldElevation, timeZone } = outlookOf(contents, terrain);
  const sight = around && new LazySight(around, [path], framing);
  const does = around ? seasons(around, timeZone, [instant])[0]?.does : undefined;
  const view = new PathInView();
  return Float64Array.from({ length: area.count ** 2 }, (_, index) => {
    const position = cellPosition(area, index);
    const ground = groundAt(position, runways, fieldElevation, around?.terrain ?? null).elevation;
    const eye = ground + standingEyeHeight;
    const frame = frameAt(position);
    view.look(path.samples, { frame, point: along(frame.origin, frame.up, eye) }, framing);
    if (sight && around && does) sight.stand(does, ...mapped(around.frame, position), eye);
    let least = Infinity;
    for (let i = 0; i < view.count; i++) {
      if ((view.leastFocal[i] as number) >= least) continue;
      const focal = view.focalAt(i);
      if (!(focal < least)) continue;
      const aspect = acosDeg(view.cosAspectAt(i));
      if (aspect < aspects[0] || aspect > aspects[1]) continue;
      if (sight && sight.at(0, i) === 0) continue;
      least = focal;
    }
    return least;
  });
}

/** The lines that are drawn for a kit: the usual ones, and the shortest and longest that it fits. */
export function linesFor({ kit }: Pick<Contents, 'kit'>, longest: number): number[] {
  const shortest = Math.min(...kit.lenses.map((lens) => lens.shortest));
  const ends = [shortest, longest].filter((mm) => Number.isFinite(mm) && mm > 0);
  return [...new Set([...usualLines, ...ends])].sort((a, b) => a - b);
}

/** Contours of the least needed focal length (d3-contour, marching squares with linear interpolation between cells). */
export async function reachLines(
  focals: Float64Array,
  area: Area,
  wanted: readonly number[],
): Promise<ReachLine[]> {
  const { contours } = await import('d3-contour');
  // Beyond any line: contours need a number.
  const most = 10 * Math.max(...wanted);
  const values = Array.from(focals, (mm) => Math.min(mm, most));
  const trace = contours().size([area.count, area.count]).smooth(true);
  const place = ([x = 0, y = 0]: number[]): Position =>
    printedPosition(area.frame, area.west + x * area.cell, area.south + y * area.cell);
  // d3's coordinates count from the corner of the first cell.
  const isInside = ([x = 0, y = 0]: number[]) => x > 0 && y > 0 && x < area.count && y < area.count;
  return wanted.map((focalLength) => ({
    focalLength,
    lines: trace
      .contour(values, focalLength)
      .coordinates.flatMap((rings) => rings.flatMap((ring) => pieces(ring, isInside)))
      .map((line) => line.map(place)),
  }));
}

/** A ring without what runs along the edge of the area, where no contour is. */
function pieces(ring: number[][], isInside: (at: number[]) => boolean): number[][][] {
  const out: number[][][] = [];
  let piece: number[][] = [];
  for (const at of ring) {
    if (isInside(at)) {
      piece.push(at);
      continue;
    }
    if (piece.length > 1) out.push(piece);
    piece = [];
  }
  if (piece.length > 1) out.push(piece);
  return out;
}
