/** The colour of a sheet in each look: what the page, the map and the browser's own bars share. */
export const sheets = { day: '#fbf8ef', night: '#222625', contrast: '#fffffe' } as const;
