import { PathInView } from './path-in-view';
import { StandingWorth } from './standing-worth';
import { SightLines } from './sight/sight-lines';

/**
 * Room to work in for whoever computes figures: arrays that grow and are used again, so that nothing is allocated while a
 * spot is dragged. Who asks often owns one and hands it on; nothing in it outlives the call that it was handed to.
 */
export class Scratch {
  readonly view = new PathInView();
  readonly worth = new StandingWorth(this.view);
  readonly lines = new SightLines();
}
