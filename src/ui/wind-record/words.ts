export const months = [
  'Jan',
  'Feb',
  'Mar',
  'Apr',
  'May',
  'Jun',
  'Jul',
  'Aug',
  'Sep',
  'Oct',
  'Nov',
  'Dec',
] as const;

/** "63 %"; what is little but not nothing is "<1 %". */
export const percent = (share: number): string =>
  share > 0 && share < 0.005 ? '<1 %' : `${Math.round(share * 100)} %`;
