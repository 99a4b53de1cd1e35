import { lastAnswer, Memo } from '../../survey/memo';
import type { Position } from '../../survey/document';
import type { Runway } from '../../survey/schema/runway';
import { draggedRunway, drawingOf } from './drawing';
import { overlay, type Overlay, type OverlayFeature } from './features';
import { groundLists, groundOverlay, useOverlay } from './ground';
import { handlesOf } from './handles';
import { litStrips } from './lit';
import { logMarks } from './log-marks';
import { inspectedMark, marksOf } from './marks';
import { pathsOverlay } from './paths';
import { quietSizes } from './quiet-sizes';
import {
  quietRingsOf,
  ringsOf,
  selectedRings,
  selectedRingsOf,
  type RingChoice,
  type RingSize,
} from './rings';
import type { Scene, SpotScene } from './scene';
import { spotFeature } from './spots';
import { ticksOf } from './ticks';

export interface Overlays {
  /** Roads, paths, parking and greens that were brought in. */
  readonly use: Overlay;
  readonly ground: Overlay;
  readonly lit: Overlay;
  readonly paths: Overlay;
  readonly spots: Overlay;
  /** What is selected, dragged or drawn: small, and written at every pointer move. */
  readonly live: Overlay;
}

type Features = readonly OverlayFeature[];

/** Draws scenes one after the other; an overlay that nothing has changed for is the same object as before. */
export function sceneDrawer(): (scene: Scene) => Overlays {
  // List by list: what an edit left alone is entry by entry the same, in a list of its own.
  const ground = lastAnswer((units: Scene['units'], ...lists: ReturnType<typeof groundLists>) =>
    groundOverlay(lists, units),
  );
  const use = lastAnswer(useOverlay);
  const lit = lastAnswer((features: Features) => overlay(features));
  const paths = lastAnswer(pathsOverlay);
  const spots = lastAnswer((features: Features) => overlay(features));
  const live = lastAnswer((...parts: readonly Features[]) => overlay(parts.flat()));
  const handles = lastAnswer(handlesOf);
  const ofSpot = lastAnswer(selectedSpotFeatures);
  const inspected = lastAnswer(inspectedMark);
  const log = lastAnswer(logMarks);
  const drawn = lastAnswer(drawingOf);
  const visited = lastAnswer((place: SpotScene | null, rings: RingChoice, zoom: number) =>
    place ? selectedRingsOf(place, rings, zoom) : none,
  );

  return (scene) => {
    const { contents, zoom, units } = scene;
    const selectedId = scene.selected?.id ?? null;
    const selectedSpot = scene.spots.find((s) => s.spot.id === selectedId);
    const { rings } = scene;
    const middle = contents.site.reference;
    const quiet = scene.spots.filter((s) => s !== selectedSpot);
    const sizes = quietSizes(quiet, selectedSpot ?? null, rings, zoom);
    return {
      use: use(contents.groundUses),
      ground: ground(units, ...groundLists(contents)),
      lit: lit(contents.runways.flatMap((runway) => stripsOf(runway, scene))),
      paths: paths(
        scene.grounded.runways,
        contents.subject,
        scene.grounded.fieldElevation,
        scene.paths,
        scene.focalLengths,
        scene.usableTo,
      ),
      spots: spots([
        ...quiet.flatMap((s, i) => {
          const size = sizes[i];
          return size ? quietRingsOf(s, rings, size, zoom) : none;
        }),
        ...quiet.map((s, i) =>
          quietSpot(s, rings, sizes[i] ?? null, scene.closedSpots.has(s.spot.id), middle),
        ),
      ]),
      live: live(
        selectedSpot
          ? ofSpot(
              selectedSpot.spot,
              selectedSpot.a,
              selectedSpot.b,
              scene.paths,
              rings,
              zoom,
              units,
              scene.closedSpots.has(selectedSpot.spot.id),
              middle,
            )
          : handles(scene.selected, scene.vertex),
        log(selectedSpot?.spot ?? null, contents.logEntries, scene.paths),
        inspected(scene.paths, scene.inspected, units),
        visited(scene.visited, rings, zoom),
        drawn(scene.drawing, scene.drawingRunway, contents.runways, contents.site, scene.instant, units),
        scene.dragging ? draggedRunway(scene.selected, scene.vertex, contents, scene.instant, units) : none,
      ),
    };
  };
}

const none: Features = [];

const kept = new Memo<OverlayFeature>();

const quietSpot = (
  { a, spot }: SpotScene,
  rings: Scene['rings'],
  size: RingSize | null,
  closed: boolean,
  middle: Position,
) =>
  kept.get([a, spot, rings, size, closed, ...middle], () =>
    spotFeature(spot, a, 'spot', { paths: ringsOf(a, rings), size }, closed, middle),
  );

function selectedSpotFeatures(
  spot: SpotScene['spot'],
  a: SpotScene['a'],
  b: SpotScene['b'],
  paths: Scene['paths'],
  rings: Scene['rings'],
  zoom: number,
  units: Scene['units'],
  closed: boolean,
  middle: Position,
): Features {
  const shown = ringsOf(a, rings);
  return [
    ...selectedRingsOf({ spot, a, b }, rings, zoom),
    ...ticksOf(paths, { spot, a }, zoom, units),
    ...marksOf(paths, a, b, shown, zoom),
    spotFeature(spot, a, 'selected-spot', { paths: shown, size: selectedRings }, closed, middle),
  ];
}

function stripsOf(runway: Runway, { litSides, clocks, zoom }: Scene): Features {
  const light = litSides.find((l) => l.runway === runway.id);
  return litStrips(runway, light?.a?.side ?? null, light?.b?.side ?? null, clocks.a, clocks.b, zoom);
}
