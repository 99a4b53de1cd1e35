import { FlownFigures } from '../../state/flown.svelte';
import { getFigures, getLearning, getView } from '../contexts';

/** What the recorded flights teach, learned by a worker while the component that asks is there. */
export function followFlown(): FlownFigures {
  const learning = getLearning();
  const flown = new FlownFigures(getFigures(), getView().hand, () => learning.learner());
  $effect(() => flown.follow());
  $effect(() => () => flown.close());
  return flown;
}
