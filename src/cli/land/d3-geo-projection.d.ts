declare module 'd3-geo-projection' {
  import type { GeoProjection } from 'd3-geo';
  /** Projects (and clips) a GeoJSON object; the positions of the answer are planar. */
  export function geoProject<T extends GeoJSON.GeoJsonObject>(object: T, projection: GeoProjection): T;
}
