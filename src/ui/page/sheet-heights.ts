/** Heights that a sheet of a narrow page comes to rest at. */
export const sheetHeights = { half: '44dvh', tall: '100dvh' } as const;
