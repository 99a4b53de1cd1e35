import type { Rules } from '../../survey/schema/rules';

/** Whether the field's rules forbid photography: then nothing is proposed, whatever a spot says (design, part two, section 11). */
export const fieldForbidsPhotographs = ({ photography }: Pick<Rules, 'photography'>): boolean =>
  photography === 'forbidden';
