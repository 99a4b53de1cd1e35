import type { Position } from '../survey/document';
import type { VertexRef } from '../survey/edits/vertices';

/** What the pointer does on the map: select and drag, or draw one of these. */
export type Tool = 'select' | 'runway' | 'standing-spot' | 'taxi-route' | 'apron' | 'no-go' | 'obstacle';

export type Moment = 'a' | 'b';

/** Which paths are drawn besides arrivals and departures of the ends in use. */
export interface PathChoice {
  readonly circuits: boolean;
  readonly everyEnd: boolean;
}

/** Where the user looks and what is chosen: nothing of it is in the survey, nothing of it is undone. */
export class View {
  /** The selected feature. */
  selected = $state.raw<string | null>(null);
  /** The selected vertex of the selected feature, for nudging and deleting. */
  vertex = $state.raw<VertexRef | null>(null);
  tool = $state.raw<Tool>('select');
  /** Vertices set so far with a drawing tool, and the pointer's position that follows. */
  drawing = $state.raw<readonly Position[]>([]);
  /** The feature being dragged: its figures are shown at the pointer. */
  dragging = $state.raw<string | null>(null);
  /** The inspected point: a path (PathRef.path) and a station on it. */
  inspected = $state.raw<{ readonly path: string; readonly station: number } | null>(null);
  /** The moment whose light colours figures that show only one. */
  moment = $state.raw<Moment>('a');
  /** The flow configuration in use. */
  configuration = $state.raw(0);
  paths = $state.raw<PathChoice>({ circuits: false, everyEnd: false });
  /** Grows with every move of the camera: what is placed by screen position is placed anew. */
  cameraTick = $state.raw(0);
  /** One quiet line for the user, or null. */
  notice = $state.raw<string | null>(null);

  select(id: string | null): void {
    if (id !== this.selected) {
      this.selected = id;
      this.vertex = null;
      this.inspected = null;
    }
  }

  /** Another survey is open: nothing of the old one is chosen any more. */
  reset(): void {
    this.select(null);
    this.tool = 'select';
    this.drawing = [];
    this.dragging = null;
    this.configuration = 0;
    this.notice = null;
  }
}
