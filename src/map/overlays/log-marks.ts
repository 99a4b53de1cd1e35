import type { Path } from '../../figures/traffic/paths';
import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { point, type OverlayFeature } from './features';
import { pathLine, sampleAtStation } from './path-line';

/** What the log has of the selected spot: that something was photographed here, and where on their paths aircraft were measured. */
export function logMarks(
  spot: StandingSpot | null,
  entries: Contents['logEntries'],
  paths: readonly Path[],
): readonly OverlayFeature[] {
  const here = spot ? entries.filter((entry) => entry.spot === spot.id) : [];
  if (!spot || here.length === 0) return [];
  const measured = here.flatMap(({ path: name, measured }) => {
    const path = paths.find(({ ref }) => ref.path === name);
    const station = measured?.station ?? null;
    if (!path || station === null) return [];
    const { positions } = pathLine(path);
    const there = positions[sampleAtStation(path, station)];
    return there ? [point(there, { part: 'log-mark' })] : [];
  });
  return [point(spot.position, { part: 'log-spot' }), ...measured];
}
