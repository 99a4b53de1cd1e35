import type { SightProfile } from '../../figures/sight/profile';

/** The picture's box in its own units; it is stretched to the panel's width. */
export const box = { width: 800, height: 180, left: 12, right: 12, top: 26, bottom: 28 } as const;

export interface ProfileShapes {
  readonly x: (at: number) => number;
  readonly y: (height: number) => number;
  readonly ground: string;
  readonly ray: string;
  /** How many times heights are drawn larger than distances. */
  readonly exaggeration: number;
}

/** SVG coordinates of a profile: from the eye at the left to a little past the aircraft at the right. */
export function profileShapes(
  { distance, eye, fin, wheels, ground, obstacles, ray, leastVisible }: SightProfile,
  width: number,
): ProfileShapes {
  const heights = [
    eye,
    fin,
    wheels,
    ...ground.map((g) => g.height),
    ...obstacles.map((o) => o.top),
    // A line that shows only far above everything would flatten the rest.
    ...(leastVisible !== null && leastVisible < fin + 150 ? [leastVisible] : []),
  ];
  const low = Math.min(...heights);
  const high = Math.max(...heights, low + 12);
  const room = box.height - box.top - box.bottom;
  const across = Math.max(1, width - box.left - box.right);
  const reach = distance * 1.06 + 1;
  const x = (at: number) => box.left + (at / reach) * across;
  const y = (height: number) => box.top + ((high - height) / (high - low)) * room;
  const line = (points: readonly { readonly at: number; readonly height: number }[]) =>
    points
      .map(({ at, height }, i) => `${i === 0 ? 'M' : 'L'}${x(at).toFixed(1)} ${y(height).toFixed(1)}`)
      .join('');
  const floor = box.height;
  const last = ground[ground.length - 1]?.height ?? low;
  return {
    x,
    y,
    ground: `${line(ground)}L${x(reach).toFixed(1)} ${y(last).toFixed(1)}V${floor}H${x(0).toFixed(1)}Z`,
    ray: line(ray),
    exaggeration: room / (high - low) / (across / reach),
  };
}
