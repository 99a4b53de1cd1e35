import type { Position } from '../../survey/document';
import { standingEyeHeight, type StandingSpot } from '../../survey/schema/standing-spot';

/**
 * A spot that is in no survey: a standing adult, of whose access nothing is known. `ground`: m above mean sea level where it
 * must be stated, null where the ground is that of the place.
 */
export const spotThere = (
  position: Position,
  ground: number | null,
  { id, name }: Pick<StandingSpot, 'id' | 'name'> = { id: '', name: '' },
): StandingSpot => ({
  id,
  name,
  position,
  eyeHeight: standingEyeHeight,
  ground,
  notes: '',
  access: {
    status: 'unknown',
    contact: null,
    hours: null,
    ladder: null,
    parking: null,
    checkedOn: null,
    permission: null,
  },
});
