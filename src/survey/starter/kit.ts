import type { Kit } from '../schema/kit';

/**
 * The kit of a survey that names none: sensor sizes and lens ranges in general terms. Sensor sizes are from
 * memory (36 x 24 is the film gate of ISO 1007); pixel counts are typical, not those of one camera.
 */
export const starterKit: Kit = {
  fill: 0.8,
  bodies: [
    {
      key: 'full-frame',
      name: 'Full frame, 24 MP',
      sensorWidth: 36,
      sensorHeight: 24,
      pixelsWide: 6000,
      pixelsHigh: 4000,
    },
    {
      key: 'aps-c',
      name: 'APS-C, 24 MP',
      sensorWidth: 23.5,
      sensorHeight: 15.6,
      pixelsWide: 6000,
      pixelsHigh: 4000,
    },
    {
      key: 'four-thirds',
      name: 'Four Thirds, 20 MP',
      sensorWidth: 17.3,
      sensorHeight: 13,
      pixelsWide: 5184,
      pixelsHigh: 3888,
    },
    {
      key: 'one-inch',
      name: '1-inch type, 20 MP',
      sensorWidth: 13.2,
      sensorHeight: 8.8,
      pixelsWide: 5472,
      pixelsHigh: 3648,
    },
  ],
  lenses: [
    {
      key: 'standard-zoom',
      name: '24–70 mm f/2.8',
      shortest: 24,
      longest: 70,
      widestAperture: 2.8,
      extenders: [],
    },
    {
      key: 'tele-zoom',
      name: '70–200 mm f/2.8',
      shortest: 70,
      longest: 200,
      widestAperture: 2.8,
      extenders: [],
    },
    {
      key: 'long-zoom',
      name: '100–400 mm f/5.6',
      shortest: 100,
      longest: 400,
      widestAperture: 5.6,
      extenders: [],
    },
  ],
};
