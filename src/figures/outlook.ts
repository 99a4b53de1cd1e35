import type { Contents } from '../survey/contents';
import type { Body, Kit } from '../survey/schema/kit';
import type { Runway } from '../survey/schema/runway';
import type { Subject } from '../survey/schema/subject';
import type { SkyAt } from './light/sky';
import { skyAtOf } from './light/sky-at';
import { framingOf, type Framing } from './optics/framing';
import { reachOf, type Reach } from './optics/reach';
import { remembered } from './remembered';
import { siteFrame } from './sight/site-frame';
import { surroundings, type Surroundings } from './sight/surroundings';
import { terrainIn, type ElevationGrid } from './sight/terrain';
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

const rememberedOutlook = remembered(
  (
    subject: Subject,
    runways: readonly Runway[],
    elevation: number,
    body: Body,
    kit: Kit,
    around: Surroundings | null,
    timeZone: string,
    skyAt: SkyAt,
  ): Outlook => ({
    runways,
    fieldElevation: elevation,
    framing: framingOf(subject, body, kit.fill),
    reach: reachOf(kit),
    around,
    timeZone,
    skyAt,
  }),
);

/**
 * `terrain`: the ground's heights, null where only the runways' are known. The same object as long as nothing of it has
 * changed, each subject for itself: what is due may be another one.
 */
export function outlookOf(contents: Contents, terrain: ElevationGrid | null = null): Outlook {
  const { runways, subject, body, kit, site } = contents;
  const around = aroundOf(contents, terrain);
  const elevation = fieldElevation(contents);
  const sky = skyAtOf(contents);
  return rememberedOutlook(subject, runways, elevation, body, kit, around, site.timeZone, sky);
}

function aroundOf(contents: Contents, terrain: ElevationGrid | null): Surroundings | null {
  const frame = siteFrame(contents.site.reference);
  const ground = terrain && terrainIn(terrain, frame);
  return surroundings(contents.obstacles, contents.runways, fieldElevation(contents), frame, ground);
}
