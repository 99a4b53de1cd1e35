import type { Permission } from '../../survey/schema/standing-spot';

/** Whether one is permitted on a local date: first and last day are included, a bound that is not said is none. */
export const holdsOn = ({ answer, from, until }: Permission, date: string): boolean =>
  answer === 'granted' && (from === null || from <= date) && (until === null || date <= until);
