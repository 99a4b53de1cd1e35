import type { MapSurface } from '../../map/map-surface';
import { zoomStepOf } from '../../map/screen';

/** Where the map's camera is, for what is drawn according to it. */
export class Camera {
  zoom = $state.raw(12);
  readonly zoomStep = $derived(zoomStepOf(this.zoom));
  /** Where it came to rest: tests compute pixels from it. */
  rest = $state.raw({ lng: 0, lat: 0, zoom: 0 });

  moved(map: Pick<MapSurface, 'zoom'>): void {
    this.zoom = map.zoom();
  }
  rests(map: Pick<MapSurface, 'centre' | 'zoom'>): void {
    const [lng, lat] = map.centre();
    this.rest = { lng, lat, zoom: map.zoom() };
  }
}
