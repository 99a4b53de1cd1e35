import type { Subject } from '../../survey/schema/subject';
import type { Sky } from '../optics/exposure';
import type { FormationPlace } from '../traffic/formation';
import type { EastNorthUp } from './from-eye';
import type { CameraAxes, Pose } from './pose';
import type { Scenery } from './scenery';

/** The moon as it is drawn: where it appears, and the direction from it to where its light comes from. */
export interface MoonInPicture {
  readonly direction: EastNorthUp;
  readonly lightFrom: EastNorthUp;
  /** Share of the disc that is lit, 0 to 1; 0 new, 0.25 first quarter, 0.5 full, 0.75 last quarter. */
  readonly lit: number;
  readonly phase: number;
}

/** Everything that a picture through the viewfinder is drawn from. m and unit vectors from the eye. */
export interface Picture {
  readonly scenery: Scenery;
  readonly subject: Subject;
  readonly pose: Pose;
  readonly camera: CameraAxes;
  /** mm, in the orientation in which the camera is held; f-number. */
  readonly lens: {
    readonly focalLength: number;
    readonly sensorWidth: number;
    readonly sensorHeight: number;
    readonly aperture: number;
  };
  /** Where the sun appears, and its geometric altitude in degrees. */
  readonly sun: { readonly direction: EastNorthUp; readonly altitude: number };
  readonly moon: MoonInPicture;
  readonly sky: Sky;
  /** Where those fly that are in it, m ahead, left and up of the first, which is at the pose. */
  readonly places: readonly FormationPlace[];
  readonly gearDown: boolean;
  /** Degrees that a blade sweeps while the shutter is open; null: it stands still. */
  readonly arc: number | null;
  /** Ids of what has leaves and stands bare in this month: one sees through it. */
  readonly bare: readonly string[];
  /** m from the eye up to the ground under the aircraft. */
  readonly groundBelow: number;
}
