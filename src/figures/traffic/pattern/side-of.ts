import type { Pattern } from '../../../survey/schema/flying';
import type { EndGeometry } from '../runway-geometry';

/** 1 where a pattern turns to the left, -1 to the right: its own word, else the side of the end's circuit. */
export const sideOf = ({ runway, end }: EndGeometry, { side }: Pattern): 1 | -1 =>
  (side ?? runway.ends[end].circuit) === 'right' ? -1 : 1;
