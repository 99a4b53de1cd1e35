import type { SurveyFeature } from '../../survey/document';
import { shapeOf } from '../../survey/edits/vertices';
import type { MapSurface } from '../map-surface';
import { middleOf } from '../middle-of';
import { actionOf, viewKeys } from './keys';

/** px of one step, as the map library has it. */
const panStep = 100;
const ways: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-panStep, 0],
  ArrowRight: [panStep, 0],
  ArrowUp: [0, -panStep],
  ArrowDown: [0, panStep],
};

export interface ViewKeyNeeds {
  readonly surface: Pick<MapSurface, 'panBy' | 'zoomBy' | 'goTo'>;
  readonly selected: SurveyFeature | null;
  readonly showAll: () => void;
}

/** Moves the camera by a key of the keyboard; whether it was one that does. `control`: Ctrl or Cmd is held. */
export function viewKey(
  key: string,
  control: boolean,
  { surface, selected, showAll }: ViewKeyNeeds,
): boolean {
  const action = actionOf(viewKeys, key);
  if (action === null || (control && action !== 'pan')) return false;
  switch (action) {
    case 'pan':
      surface.panBy(...(ways[key] ?? [0, 0]));
      return true;
    case 'nearer':
    case 'farther':
      surface.zoomBy(action === 'nearer' ? 1 : -1);
      return true;
    case 'all':
      showAll();
      return true;
    case 'selected': {
      const shape = selected && shapeOf(selected);
      if (shape) surface.goTo(middleOf(shape));
      return shape !== null;
    }
  }
}
