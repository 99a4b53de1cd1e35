/** What something on a sight line does to it: hides what is behind, lets it be seen through a veil, or stands aside. */
export type Does = 'hides' | 'veils' | 'opens';

interface SightRow {
  /** With leaves, and without; the same for what has none. */
  readonly inLeaf: Does;
  readonly bare: Does;
  /** Whether the top of an area is level, over its lowest corner, as heights of buildings are measured; else it follows the ground. */
  readonly level: boolean;
  /** How it is drawn. */
  readonly looks: 'wall' | 'wires' | 'leaves';
  /** m across of a line that states no width; 0 for one too thin to count. */
  readonly width: number;
}

/**
 * What obstacles do to sight. Figures, map, viewfinder and panels follow from this table; the words for it are a table
 * of the panel with a row for each of these.
 */
export const sights = {
  solid: { inLeaf: 'hides', bare: 'hides', level: true, looks: 'wall', width: 0 },
  mesh: { inLeaf: 'veils', bare: 'veils', level: true, looks: 'wires', width: 0 },
  leaf: { inLeaf: 'hides', bare: 'opens', level: false, looks: 'leaves', width: 0 },
  // Twigs without leaves veil more than they hide; a clipped field hedge is about a metre across. CP.
  hedge: { inLeaf: 'hides', bare: 'veils', level: false, looks: 'leaves', width: 1 },
} as const satisfies Readonly<Record<string, SightRow>>;

export type Sight = keyof typeof sights;
export const sightKinds = Object.keys(sights) as readonly Sight[];
export const sightOf = (sight: Sight): SightRow => sights[sight];

/** Whether what an obstacle does changes with its leaves. */
export const isLeafy = (sight: Sight): boolean => sights[sight].inLeaf !== sights[sight].bare;

/** Months in which leaves hide where a survey does not say, north and south of the equator. CP. */
export const leafSeason: { readonly north: readonly number[]; readonly south: readonly number[] } = {
  north: [4, 5, 6, 7, 8, 9, 10],
  south: [10, 11, 12, 1, 2, 3, 4],
};
