import type { Contents } from '../survey/contents';
import { Memo } from '../survey/memo';
import type { Runway } from '../survey/schema/runway';
import type { SkyAt } from './light/sky';
import { skyAtOf } from './light/sky-at';
import { framingOf, type Framing } from './optics/framing';
import { reachOf, type Reach } from './optics/reach';
import { grounded, terrainOf } from './sight/grounded';
import { siteFrame } from './sight/site-frame';
import { raisingEdges, surroundings, type Surroundings } from './sight/surroundings';
import type { ElevationGrid } from './sight/terrain';
import { fieldElevation } from './traffic/paths';

/** What a spot is looked at with, and the runways round it: the same for every spot of a survey. */
export interface Outlook {
  readonly runways: readonly Runway[];
  /** m above mean sea level. */
  readonly fieldElevation: number;
  readonly framing: Framing;
  readonly reach: Reach;
  /** What can stand in the way; null on open ground. */
  readonly around: Surroundings | null;
  /** IANA zone whose months leaves follow. */
  readonly timeZone: string;
  /** The sky at each instant. */
  readonly skyAt: SkyAt;
}

/** What heights are reckoned from, and what stands on it. */
function fieldOf(contents: Contents, terrain: ElevationGrid | null) {
  const { runways, site } = grounded(contents, terrain);
  const ground = terrainOf(contents, terrain);
  return {
    runways,
    site,
    elevation: fieldElevation({ runways, site }),
    frame: siteFrame(site.reference),
    ground,
  };
}

/** What stands round the field, obstacle by obstacle: `outlookOf`, asked then, finds it remembered. */
export function* raisingSurroundings(contents: Contents, terrain: ElevationGrid | null): Generator<void> {
  const { runways, elevation, frame, ground } = fieldOf(contents, terrain);
  yield* raisingEdges(contents.obstacles, runways, elevation, frame, ground);
}

/** One a subject is asked for by turns: movements look at each with its own. */
const kept = new Memo<Outlook>();

/**
 * `terrain`: the ground's heights, null where only the runways' are known. The same object as long as nothing of it has
 * changed, each subject for itself: what is due may be another one.
 */
export function outlookOf(contents: Contents, terrain: ElevationGrid | null): Outlook {
  const { subject, body, kit } = contents;
  const { runways, site, elevation, frame, ground } = fieldOf(contents, terrain);
  const around = surroundings(contents.obstacles, runways, elevation, frame, ground);
  const skyAt = skyAtOf(contents);
  return kept.get([subject, runways, elevation, body, kit, around, site.timeZone, skyAt], () => ({
    runways,
    fieldElevation: elevation,
    framing: framingOf(subject, body, kit.fill),
    reach: reachOf(kit),
    around,
    timeZone: site.timeZone,
    skyAt,
  }));
}
