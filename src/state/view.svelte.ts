import type { Position, Survey } from '../survey/document';
import type { DrawTool } from '../survey/drawings';
import type { VertexRef } from '../survey/edits/vertices';

/** What the pointer does on the map: select and drag, or draw one of these. */
export type Tool = 'select' | DrawTool;

export type Moment = 'a' | 'b';

/** Which paths are drawn besides arrivals and departures of the ends in use. */
export interface PathChoice {
  readonly circuits: boolean;
  readonly everyEnd: boolean;
  /** Aircraft that taxi and that are parked. */
  readonly onTheGround: boolean;
}

/** How the camera is set where settings and the viewfinder show it; null leaves it to the figures. */
export interface CameraChoice {
  /** Key of a lens of the kit. */
  readonly lens: string | null;
  /** mm, f-number, s, ISO. */
  readonly focalLength: number | null;
  readonly aperture: number | null;
  readonly shutter: number | null;
  readonly iso: number | null;
  /** Null: as the weather of the moment is, as far as the survey tells. */
  readonly sky: 'clear' | 'hazy' | 'overcast' | 'heavy' | null;
  /** px of blur that pass for sharp. */
  readonly sharpWithin: number;
  readonly portrait: boolean;
  readonly part: 'whole' | 'nose' | 'tail';
}

export const startingCamera: CameraChoice = {
  lens: null,
  focalLength: null,
  aperture: null,
  shutter: null,
  iso: null,
  sky: null,
  sharpWithin: 2,
  portrait: false,
  part: 'whole',
};

/** What the notice offers to do. */
export interface NoticeAction {
  readonly label: string;
  readonly run: () => void;
}

/** How long a notice is worth reading. */
export interface NoticeLife {
  /** Asked after every change of the survey: false withdraws the notice. */
  readonly holds: (survey: Survey) => boolean;
  /** What is still to be said then, or null. */
  readonly then: string | null;
}

const untilDismissed: NoticeLife = { holds: () => true, then: null };

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
  /** Whether the side view along the line of sight lies open at the foot of the map. */
  sightLine = $state.raw(false);
  camera = $state.raw<CameraChoice>(startingCamera);
  /** What the viewfinder looks at: a path (PathRef.path), and a sample on it or a place between two. */
  framed = $state.raw<{ readonly path: string; readonly at: number } | null>(null);
  /** The moment whose light colours figures that show only one. */
  moment = $state.raw<Moment>('a');
  /** The flow configuration in use. */
  configuration = $state.raw(0);
  paths = $state.raw<PathChoice>({ circuits: false, everyEnd: false, onTheGround: false });
  /** Which view of time lies at the foot ("moments" or a key of the foot's list), and the share of the page's height in per cent that a tall one takes. */
  foot = $state.raw('moments');
  footShare = $state.raw(40);
  /** The spot (id) and path (PathRef.path) that the year at the foot is of; null for the one worth most. */
  yearOf = $state.raw<{ readonly spot: string; readonly path: string } | null>(null);
  /** Grows with every move of the camera: what is placed by screen position is placed anew. */
  cameraTick = $state.raw(0);
  #notice = $state.raw<{
    readonly text: string;
    readonly actions: readonly NoticeAction[];
    readonly life: NoticeLife;
  } | null>(null);

  /** One quiet line for the user, or null. */
  get notice(): string | null {
    return this.#notice?.text ?? null;
  }
  set notice(text: string | null) {
    this.#notice = text === null ? null : { text, actions: [], life: untilDismissed };
  }
  /** What the notice offers to do about it. */
  get noticeActions(): readonly NoticeAction[] {
    return this.#notice?.actions ?? [];
  }
  /** A notice that can be answered: "deleted" with "Undo". */
  offer(text: string, actions: readonly NoticeAction[], life = untilDismissed): void {
    this.#notice = { text, actions, life };
  }
  /** The survey has changed, forwards or back: a notice that it has overtaken goes. */
  surveyChanged(survey: Survey): void {
    const { life } = this.#notice ?? {};
    if (life && !life.holds(survey)) this.notice = life.then;
  }

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
    this.yearOf = null;
    this.notice = null;
    this.framed = null;
    // A lens of another kit means nothing here.
    this.camera = startingCamera;
  }
}
