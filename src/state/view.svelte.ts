import type { Position, Survey } from '../survey/document';
import type { DrawTool } from '../survey/drawings';
import type { VertexRef } from '../survey/edits/vertices';
import { DrawnMerge } from './drawn-merge.svelte';
import { DrawnPlaces } from './drawn-places.svelte';

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
  /** Exposure value at ISO 100 that was typed; null: by the sun. */
  readonly ev100: number | null;
  /** px of blur that pass for sharp. */
  readonly sharpWithin: number;
  readonly portrait: boolean;
  readonly part: 'whole' | 'nose' | 'tail' | 'formation';
}

const startingCamera: CameraChoice = {
  lens: null,
  focalLength: null,
  aperture: null,
  shutter: null,
  iso: null,
  sky: null,
  ev100: null,
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

/** What is chosen on the map and in the lists. */
export class Selection {
  /** The selected feature. */
  id = $state.raw<string | null>(null);
  /** The selected vertex of the selected feature, for nudging and deleting. */
  vertex = $state.raw<VertexRef | null>(null);
  /** The inspected point: a path (PathRef.path) and a station on it. */
  inspected = $state.raw<{ readonly path: string; readonly station: number } | null>(null);
  /** The path (PathRef.path) that is pointed at in a list: the map shows its light rings. */
  pointed = $state.raw<string | null>(null);
  /** Whether the side view along the line of sight lies open at the foot of the map. */
  sightLine = $state.raw(false);

  select(id: string | null): void {
    if (id !== this.id) {
      this.id = id;
      this.vertex = null;
      this.inspected = null;
      this.pointed = null;
    }
  }
}

/** What the pointer is about. */
export class Hand {
  tool = $state.raw<Tool>('select');
  /** Vertices set so far with a drawing tool, and the pointer's position that follows. */
  drawing = $state.raw<readonly Position[]>([]);
  /** What is being dragged: its figures are shown at the pointer, and slow ones wait. */
  dragging = $state.raw<string | null>(null);

  /** A drag or a drawing is under way. */
  get busy(): boolean {
    return this.dragging !== null || this.drawing.length > 0;
  }
}

/** Which of the figures are shown. */
export class Shown {
  /** The moment whose light colours figures that show only one. */
  moment = $state.raw<Moment>('a');
  /** The flow configuration in use. */
  configuration = $state.raw(0);
  paths = $state.raw<PathChoice>({ circuits: false, everyEnd: false, onTheGround: false });
}

export class Viewfinder {
  camera = $state.raw<CameraChoice>(startingCamera);
  /** What it looks at: a path (PathRef.path), and a sample on it or a place between two. */
  target = $state.raw<{ readonly path: string; readonly at: number } | null>(null);
}

/** The views of time at the foot of the page. */
export class Foot {
  /** "moments" or a key of the foot's list. */
  open = $state.raw('moments');
  /** The share of the page's height in per cent that a tall one takes. */
  share = $state.raw(40);
  /** Whether that share was set by hand; else the map keeps the larger part of the page. */
  pulled = $state.raw(false);
  /** The spot (id) and path (PathRef.path) that the year is of; null for the one worth most. */
  yearOf = $state.raw<{ readonly spot: string; readonly path: string } | null>(null);
}

/** Where the user looks and what is chosen, and what is said about it: nothing of it is in the survey, nothing of it is undone. */
export class View {
  readonly selection = new Selection();
  readonly hand = new Hand();
  readonly shown = new Shown();
  readonly viewfinder = new Viewfinder();
  readonly foot = new Foot();
  readonly places = new DrawnPlaces();
  readonly merge = new DrawnMerge();

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

  /** Another survey is open: nothing of the old one is chosen any more. */
  reset(): void {
    this.selection.select(null);
    this.hand.tool = 'select';
    this.hand.drawing = [];
    this.hand.dragging = null;
    this.shown.configuration = 0;
    this.foot.yearOf = null;
    this.notice = null;
    this.viewfinder.target = null;
    this.places.clear();
    this.merge.clear();
    // A lens of another kit means nothing here.
    this.viewfinder.camera = startingCamera;
  }
}
