import { describe, expect, it } from 'vitest';
import { compassHeading } from '../../../src/figures/now/compass-heading';
import { pointing } from '../../../src/figures/now/pointing';

const close = (a: number, b: number) => expect(Math.abs(((a - b + 540) % 360) - 180)).toBeLessThan(1e-6);

describe('which way a device points', () => {
  it('[F944] flat on the hand: alpha counts against the clock (W3C Device Orientation, 4.1)', () => {
    close(compassHeading({ alpha: 0, beta: 0, gamma: 0 }), 0);
    close(compassHeading({ alpha: 90, beta: 0, gamma: 0 }), 270);
    close(compassHeading({ alpha: 300, beta: 10, gamma: 0 }), 60);
    // Turned to landscape, the page's own top is a quarter on.
    close(compassHeading({ alpha: 300, beta: 10, gamma: 0 }, 90), 150);
  });

  it('[F945] held up: where the camera at the back looks, however it is tilted', () => {
    // Upright in portrait facing north: alpha 0, beta 90.
    close(compassHeading({ alpha: 0, beta: 90, gamma: 0 }), 0);
    close(compassHeading({ alpha: 270, beta: 80, gamma: 0 }), 90);
    // Upright in landscape, its left side down: the screen's normal looks to the west of its top edge.
    close(compassHeading({ alpha: 0, beta: 0, gamma: -90 }), 90);
    close(compassHeading({ alpha: 0, beta: 0, gamma: 90 }), 270);
  });
});

describe('pointing at the path', () => {
  const sun = { azimuth: 270, altitude: 20 };
  it('[F946] magnetic becomes true by the declination, and the shorter way round is told', () => {
    expect(pointing(350, 6, 20, sun)).toMatchObject({ heading: 356, turn: 24 });
    expect(pointing(10, -15, 340, sun)).toMatchObject({ heading: 355, turn: -15 });
    expect(pointing(10, 0, null, sun).turn).toBeNull();
  });

  it('[F947] arguable: 15 degrees beside the sun carries the caution, 16 not; nor does a sun that is down', () => {
    expect(pointing(255, 0, 90, sun).sunAhead).toBe(true);
    expect(pointing(254, 0, 90, sun).sunAhead).toBe(false);
    expect(pointing(279, 6, 90, sun).sunAhead).toBe(true);
    expect(pointing(270, 0, 90, { azimuth: 270, altitude: -3 }).sunAhead).toBe(false);
    // Just set, its edge may still be seen from a deck.
    expect(pointing(270, 0, 90, { azimuth: 270, altitude: -0.5 }).sunAhead).toBe(true);
  });
});
