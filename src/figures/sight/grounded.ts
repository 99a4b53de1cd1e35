import type { Contents } from '../../survey/contents';
import { Memo } from '../../survey/memo';
import type { EndIndex, Runway } from '../../survey/schema/runway';
import { siteFrame } from './site-frame';
import { terrainAt, terrainIn, type ElevationGrid, type Terrain } from './terrain';

type Field = Pick<Contents, 'site' | 'runways'>;

/** The ground's heights about a survey's reference; null without terrain. */
export const terrainOf = ({ site }: Pick<Contents, 'site'>, grid: ElevationGrid | null): Terrain | null =>
  grid && terrainIn(grid, siteFrame(site.reference));

const kept = new Memo<Runway>();

const onTerrain = (runway: Runway, terrain: Terrain): Runway =>
  kept.get([runway, terrain], () => standingOn(runway, terrain));

function standingOn(runway: Runway, terrain: Terrain): Runway {
  const [a, b] = runway.ends;
  if (a.elevation !== null && b.elevation !== null) return runway;
  const heightOf = (end: EndIndex) => runway.ends[end].elevation ?? terrainAt(terrain, runway.line[end]);
  return {
    ...runway,
    ends: [
      { ...a, elevation: heightOf(0) },
      { ...b, elevation: heightOf(1) },
    ],
  };
}

/**
 * The survey with what the terrain says where it says nothing itself. The ladder of heights, for a runway's end: its own
 * stated one, else the terrain's, else the other end's, else the field's (`endElevations`). For the field: its stated
 * elevation, else the highest runway end's, else the terrain's at the reference, else 0 (`fieldElevation`), which
 * `problemsOf` says where it matters. For any other place: its own, else the terrain's, else the nearest runway's, else
 * the field's (`groundUnder`). The same objects as long as survey and terrain stay.
 */
export function grounded<F extends Field>(contents: F, grid: ElevationGrid | null): F {
  const terrain = terrainOf(contents, grid);
  if (!terrain) return contents;
  const runways = contents.runways.map((runway) => onTerrain(runway, terrain));
  const known = runways.some(({ ends }) => ends.some(({ elevation }) => elevation !== null));
  const elevation = contents.site.elevation ?? (known ? null : terrainAt(terrain, contents.site.reference));
  const same = runways.every((runway, i) => runway === contents.runways[i]);
  if (same && elevation === contents.site.elevation) return contents;
  return { ...contents, runways, site: { ...contents.site, elevation } };
}
