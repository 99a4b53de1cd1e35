import type { MapSurface } from '../../map/map-surface';
import type { MapView } from '../../map/map-view';
import { mapKeyGroups } from '../../map/tools/keys';
import { Toolbox } from '../../map/tools/toolbox';
import type { MapControl } from '../../ports/map-control';
import { freshFeatureId } from '../../survey/ids';
import type { Editing, Figures, Land, Looking, MapSeat, Notices, Reader } from '../contexts';
import type { Camera } from './camera.svelte';
import { Framing } from './framing';

export interface MapNeeds {
  /** What the map fills. */
  readonly container: HTMLElement;
  readonly camera: Camera;
  readonly editing: Editing;
  readonly figures: Figures;
  readonly view: Looking;
  readonly notices: Notices;
  readonly seat: MapSeat;
  readonly look: Reader['look'];
  readonly base: Pick<Land['bases']['choice'], 'tell'>;
  /** Once everything that was there at the beginning is drawn. */
  readonly onReady: () => void;
}

/** The map and the tools that work on it. */
export interface MapOnPage {
  readonly container: HTMLElement;
  readonly surface: MapSurface;
  readonly toolbox: Toolbox;
  readonly framing: Framing;
}

/** Puts the map into its container, the tools between pointers and survey. The caller takes it off with `surface.remove()`. */
export function mapOnPage(
  View: typeof MapView,
  { container, camera, editing, figures, view, notices, seat, look, base, onReady }: MapNeeds,
): MapOnPage {
  const surface: MapSurface = new View({
    container,
    centre: figures.contents.site.reference,
    zoom: camera.zoom,
    look: look.name,
    pointers: {
      down: (pointer) => toolbox.down(pointer),
      held: (pointer) => toolbox.held(pointer),
      move: (pointer) => toolbox.move(pointer),
      up: (pointer) => toolbox.up(pointer),
      cancel: () => toolbox.cancel(),
      tap: (pointer) => {
        toolbox.tap(pointer);
        // What is under the pointer is asked of the places, unless something was picked.
        const { places, selection } = view;
        if (places.cells && view.hand.tool === 'select')
          places.pointed = selection.id === null ? pointer.position : null;
      },
      hover: (pointer) => toolbox.hover(pointer),
    },
    onCamera: () => {
      camera.moved(surface);
      seat.tick++;
      toolbox.camera();
    },
    onRest: () => camera.rests(surface),
    onResize: () => framing.resized(),
    onReady,
    onBase: (report) => base.tell(report),
  });
  const toolbox = new Toolbox({
    surface,
    document: editing,
    selection: view.selection,
    hand: view.hand,
    notices,
    newId: () => freshFeatureId(editing.survey),
    contents: () => figures.contents,
    terrain: () => figures.terrain,
    paths: () => figures.sights.paths,
    instant: () => figures.day.instantA,
  });
  const framing = new Framing({ surface, container, figures, hand: view.hand, seat });
  camera.rests(surface);
  return { container, surface, toolbox, framing };
}

/** What panels may ask of it. */
export const controlOf = ({ surface, toolbox, framing }: MapOnPage): MapControl => ({
  goTo: (position, to) => surface.goTo(position, to),
  fit: () => framing.showAll(),
  project: (position) => surface.project(position),
  centre: () => surface.centre(),
  baseFeatures: (layers) => surface.baseFeatures(layers),
  focus: () => surface.focus(),
  press: (key) => void toolbox.key({ key, shift: false, alt: false, at: performance.now() }),
  keys: mapKeyGroups,
});
