import type { Block, Scenery } from '../figures/frame/scenery';

/** m, level, from the eye to the nearest wall of what stands about it; Infinity where nothing does. */
export function nearestWall(blocks: readonly Pick<Block, 'foot'>[]): number {
  let nearest = Infinity;
  for (const { foot } of blocks)
    for (let i = 0; i + 1 < foot.length; i++) {
      const [[ax, ay], [bx, by]] = [foot[i], foot[i + 1]] as [Block['foot'][number], Block['foot'][number]];
      const [dx, dy] = [bx - ax, by - ay];
      const length = dx * dx + dy * dy;
      const t = length > 0 ? Math.max(0, Math.min(1, -(ax * dx + ay * dy) / length)) : 0;
      nearest = Math.min(nearest, Math.hypot(ax + t * dx, ay + t * dy));
    }
  return nearest;
}

/**
 * m ahead of the eye from which on things are drawn: as far out as nothing in the frame is cut off. What is far away is
 * the finer told apart in depth for it: from 1 m on, skin and glass of an aircraft 1 km away would show through each other.
 * `range`: m to the nearest aircraft; `wall`: see `nearestWall`; `lowest`: radians below level of the frame's lowest corner.
 */
export function nearPlane(range: number, wall: number, ground: Scenery['ground'], lowest: number): number {
  const eyeHeight = Math.max(0.5, -(ground.points[0]?.[2] ?? 0));
  const grass = lowest > 0 ? eyeHeight / Math.sin(Math.min(lowest, Math.PI / 2)) : Infinity;
  return Math.max(0.3, Math.min(range / 4, wall, grass) / 2);
}
