import { arrivalProfile } from '../../figures/traffic/arrival';
import type { Path } from '../../figures/traffic/paths';
import { endGeometry } from '../../figures/traffic/runway-geometry';
import { destination } from '../../figures/geometry/earth';
import { touchdownBand } from '../../figures/practice';
import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import { Memo } from '../../survey/memo';
import { focalSteps, outOfReachColour } from '../../../styles/ramps';
import { flownBands } from './flown-bands';
import { line, overlay, polygon, type Overlay, type OverlayFeature } from './features';
import { labelOf } from './label';
import { pathLine } from './path-line';

/** What of a path no spot changes. */
const keptBands = new Memo<OverlayFeature[]>();
const keptWays = new Memo<OverlayFeature>();

/**
 * The paths that are drawn: coloured by the focal length in mm that they need from the selected spot, one list a path
 * as `derived.focalLengths` has them (NaN where it is hidden), or plain ink while no spot is selected. `usableTo`: mm, the longest that counts.
 * `elevation`: of the field, m above mean sea level.
 */
export function pathsOverlay(
  runways: Contents['runways'],
  subject: Contents['subject'],
  elevation: number,
  paths: readonly Path[],
  focalLengths: readonly Float64Array[] | null,
  usableTo: number,
): Overlay {
  const bands = paths.flatMap((path) =>
    keptBands.get([path, runways, subject, elevation], () => touchdownOf(runways, subject, elevation, path)),
  );
  const lines = paths.flatMap((path, i) => {
    // A parked aircraft goes nowhere: its apron is on the map already.
    if (path.samples.count < 2) return [];
    const focal = focalLengths?.[i];
    const whole = keptWays.get([path, !focal], () => way(path, !focal));
    return [whole, ...(focal ? coloured(path, focal, usableTo) : [])];
  });
  return overlay([...bands, ...flownBands(runways, elevation, paths), ...lines]);
}

/** The path as a whole: it carries the name and the direction, and is all there is while no spot is selected. */
function way(path: Path, plain: boolean): OverlayFeature {
  const { positions, kept } = pathLine(path);
  const along = kept.map((i) => positions[i] as Position);
  return line(along, { part: 'way', plain, path: path.ref.path, name: labelOf(path.name) });
}

const beyondAll = focalSteps.length;
const hidden = beyondAll + 1;

/** Which step of the ramp a focal length in mm falls on; as `focalColour`, without a search a sample. */
function stepOf(focal: number, usableTo: number): number {
  if (Number.isNaN(focal)) return hidden;
  if (focal > usableTo) return beyondAll;
  let step = 0;
  while (step < beyondAll - 1 && focal > (focalSteps[step]?.to ?? Infinity)) step++;
  return step;
}

/** One line for each stretch of one colour. Plain loops: this runs at every pointer move. */
function coloured(path: Path, focal: Float64Array, usableTo: number): OverlayFeature[] {
  const { positions, kept } = pathLine(path);
  const last = positions.length - 1;
  const features: OverlayFeature[] = [];
  let from = 0;
  let next = 1;
  for (let i = 1; i <= last; i++) {
    const step = stepOf(focal[from] as number, usableTo);
    if (i < last && stepOf(focal[i] as number, usableTo) === step) continue;
    const along = [positions[from] as Position];
    while ((kept[next] ?? last) < i) along.push(positions[kept[next++] as number] as Position);
    along.push(positions[i] as Position);
    features.push(
      line(along, {
        part: step === hidden ? 'path-hidden' : 'path',
        colour: focalSteps[step]?.colour ?? outOfReachColour,
        reach: step < beyondAll,
        path: path.ref.path,
      }),
    );
    from = i;
  }
  return features;
}

/** Where the wheels of a jet meet the runway: from the glide line's ground contact on. */
function touchdownOf(
  runways: Contents['runways'],
  subject: Contents['subject'],
  elevation: number,
  { ref }: Path,
): OverlayFeature[] {
  if (ref.kind !== 'arrival' || ref.end === null || subject.propulsion !== 'jet') return [];
  const runway = runways.find((r) => r.id === ref.runway);
  const geometry = runway && endGeometry(runway, ref.end, elevation);
  if (!runway || !geometry) return [];
  const { contact, end } = arrivalProfile(geometry, subject);
  const from = geometry.displaced - contact;
  const to = Math.min(from + touchdownBand, geometry.displaced - end);
  const corner = (along: number, across: number): Position =>
    destination(
      destination(runway.line[ref.end ?? 0], geometry.bearing, along),
      geometry.bearing + 90,
      across,
    );
  const half = runway.width / 2;
  const ring = [
    corner(from, -half),
    corner(to, -half),
    corner(to, half),
    corner(from, half),
    corner(from, -half),
  ];
  return [polygon([ring], { part: 'touchdown', path: ref.path })];
}
