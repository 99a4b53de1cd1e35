/** Minutes that an act of a programme lasts where its end is not said and the next is not due. CP. */
export const actLasts = 10;
/** Minutes before and after an act within which it may still be flown: programmes are kept to a few minutes. CP. */
export const actMargin = 5;
