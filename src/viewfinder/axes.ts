import { Matrix4, Vector3 } from 'three';
import type { EastNorthUp } from '../figures/frame/from-eye';

/** East, north, up of the figures in the axes of the drawing: x to the east, y up, z to the south. */
export const toDrawing = ([east, north, up]: EastNorthUp): Vector3 => new Vector3(east, up, -north);

/** A turn that takes x, y and z to three unit vectors, and a shift. */
export const placedBy = (x: Vector3, y: Vector3, z: Vector3, at: Vector3): Matrix4 =>
  new Matrix4().makeBasis(x, y, z).setPosition(at);
