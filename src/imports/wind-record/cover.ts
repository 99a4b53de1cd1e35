/** Covers as a record counts them, the clearest first. */
export type Cover = 0 | 1 | 2 | 3 | 4;

const levels: Readonly<Record<string, Cover>> = {
  CAVOK: 0,
  SKC: 0,
  CLR: 0,
  NSC: 0,
  NCD: 0,
  FEW: 1,
  SCT: 2,
  BKN: 3,
  OVC: 4,
  VV: 4,
};
const groups = /(?:^|[^A-Z])(CAVOK|SKC|CLR|NSC|NCD|FEW|SCT|BKN|OVC|VV)(\d{3})?(?![A-Z])/gi;
/** Hundreds of ft from which a layer is thin enough to count as one step less (design-2, section 9). */
const highFrom = 200;

/**
 * The cover that an archive states in one or several cells: groups of reports ("BKN020", a whole METAR, one layer a cell),
 * or eighths of the sky; the highest cover counts. Null where nothing is told.
 */
export function coverIn(cells: readonly string[]): Cover | null {
  const told = cells.join(' ').trim();
  const found = [...told.matchAll(groups)].map(([, name = '', base]): Cover => {
    const level = levels[name.toUpperCase()] ?? 0;
    return base !== undefined && Number(base) >= highFrom && level > 0 ? ((level - 1) as Cover) : level;
  });
  if (found.length > 0) return Math.max(...found) as Cover;
  // Eighths; 9: the sky cannot be seen for fog.
  const eighths = /^\d(?:[.,]0+)?$/.test(told) ? Number(told[0]) : null;
  if (eighths === null) return null;
  if (eighths === 0) return 0;
  return eighths <= 2 ? 1 : eighths <= 4 ? 2 : eighths <= 7 ? 3 : 4;
}

/** The columns of one sky: archives tell layer by layer ("skyc1" to "skyc4"); the one that was chosen stands for all. */
export function skyColumns(headings: readonly string[], chosen: number): number[] {
  const stem = /^(.*?)1$/.exec(headings[chosen]?.trim() ?? '')?.[1];
  if (stem === undefined || stem === '') return [chosen];
  return headings.flatMap((heading, i) => {
    const name = heading.trim();
    return name.startsWith(stem) && /^\d$/.test(name.slice(stem.length)) ? [i] : [];
  });
}
