/** Values of common practice (CP), without a source, that stand in where a map says nothing. */
export const practice = {
  /** CP: m above ground. Two storeys. */
  buildingHeight: 6,
  /** The issue that asked for this names 3 m a storey. */
  levelHeight: 3,
  /** CP: m. */
  wallHeight: 2,
  /** CP: m, of the fence round an airfield. */
  fenceHeight: 2.4,
  /** CP: m. */
  hedgeHeight: 2,
  /** CP: m. */
  treeRowHeight: 12,
  /** CP: m. */
  woodHeight: 15,
  allMonths: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
  /** CP: m round the survey's reference within which things come in. */
  radius: 10_000,
  /** CP: m round runways and standing spots within which something can stand in the way, or one can stand. */
  near: 3_000,
  /** CP: a building with a smaller ground plan (m2) hides no aircraft. */
  leastBuilding: 15,
  /** CP: as many obstacles, and as many roads and greens, as a survey stays quick with; the nearest come in. */
  mostObstacles: 2_000,
  mostGroundUses: 2_000,
  /** CP: footprints of buildings beside them; in a town they must not crowd out its roads. */
  mostFootprints: 1_000,
  /** CP: s without a point after which a recorded flight is taken for two. */
  longGap: 60,
  /** CP: m without a point after which a flight recorded without times is taken for two. */
  longJump: 3_000,
  /** CP: m along the ground that a part of a recorded flight must have. */
  shortestPart: 200,
} as const;
