import { fieldElevation, lookedAt } from '../../figures/traffic/paths';
import { lastAnswer, Memo } from '../../survey/memo';
import type { Runway } from '../../survey/schema/runway';
import { draggedRunway, drawingOf } from './drawing';
import { overlay, type Overlay, type OverlayFeature } from './features';
import { groundOverlay, useOverlay } from './ground';
import { handlesOf } from './handles';
import { litStrips } from './lit';
import { logMarks } from './log-marks';
import { inspectedMark, marksOf } from './marks';
import { pathsOverlay } from './paths';
import { quietRings, quietRingsOf, selectedRings, selectedRingsOf } from './rings';
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
  const ground = lastAnswer(
    (
      runways: Scene['contents']['runways'],
      aprons: Scene['contents']['aprons'],
      taxiRoutes: Scene['contents']['taxiRoutes'],
      obstacles: Scene['contents']['obstacles'],
      noGoAreas: Scene['contents']['noGoAreas'],
      flightPaths: Scene['contents']['flightPaths'],
      units: Scene['units'],
    ) =>
      groundOverlay(
        { runways, aprons, taxiRoutes, obstacles, noGoAreas, flightPaths: lookedAt(flightPaths) },
        units,
      ),
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

  return (scene) => {
    const { contents, zoom, units } = scene;
    const selectedId = scene.selected?.id ?? null;
    const selectedSpot = scene.spots.find((s) => s.spot.id === selectedId);
    const size = quietRings(scene.spots.length);
    const quiet = scene.spots.filter((s) => s !== selectedSpot);
    return {
      use: use(contents.groundUses),
      ground: ground(
        contents.runways,
        contents.aprons,
        contents.taxiRoutes,
        contents.obstacles,
        contents.noGoAreas,
        contents.flightPaths,
        units,
      ),
      lit: lit(contents.runways.flatMap((runway) => stripsOf(runway, scene))),
      paths: paths(
        contents.runways,
        contents.subject,
        fieldElevation(contents),
        scene.paths,
        scene.focalLengths,
        scene.usableTo,
      ),
      spots: spots([
        ...quiet.flatMap(({ a, b, spot }) => quietRingsOf(a, b, spot.position, size, zoom)),
        ...quiet.map(({ a, spot }) => quietSpot(a, spot, size)),
      ]),
      live: live(
        selectedSpot
          ? ofSpot(selectedSpot.spot, selectedSpot.a, selectedSpot.b, scene.paths, zoom, units)
          : handles(scene.selected, scene.vertex),
        log(selectedSpot?.spot ?? null, contents.logEntries, scene.paths),
        inspected(scene.paths, scene.inspected, units),
        drawn(scene.drawing, scene.drawingRunway, contents.runways, contents.site, scene.instant, units),
        scene.dragging ? draggedRunway(scene.selected, scene.vertex, contents, scene.instant, units) : none,
      ),
    };
  };
}

const none: Features = [];

const kept = new Memo<OverlayFeature>();

const quietSpot = (a: SpotScene['a'], spot: SpotScene['spot'], size: ReturnType<typeof quietRings>) =>
  kept.get([a, spot, size], () => spotFeature(spot, a, 'spot', size));

function selectedSpotFeatures(
  spot: SpotScene['spot'],
  a: SpotScene['a'],
  b: SpotScene['b'],
  paths: Scene['paths'],
  zoom: number,
  units: Scene['units'],
): Features {
  return [
    ...selectedRingsOf({ spot, a, b }, zoom),
    ...ticksOf(paths, { spot, a }, zoom, units),
    ...marksOf(paths, a, b, zoom),
    spotFeature(spot, a, 'selected-spot', selectedRings),
  ];
}

function stripsOf(runway: Runway, { litSides, clocks, zoom }: Scene): Features {
  const light = litSides.find((l) => l.runway === runway.id);
  return litStrips(runway, light?.a?.side ?? null, light?.b?.side ?? null, clocks.a, clocks.b, zoom);
}
