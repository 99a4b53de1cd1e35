import type { PhotoFrame } from './frame-time';
import { passGap } from './practice';

/** Frames of one camera with at most 20 s from one to the next, in the order of time; those without a time are in none. */
export function groupFrames(frames: readonly PhotoFrame[]): readonly (readonly PhotoFrame[])[] {
  const timed = frames
    .filter((f): f is PhotoFrame & { instant: number } => f.instant !== null)
    .toSorted((a, b) => a.instant - b.instant);
  const groups: PhotoFrame[][] = [];
  const open = new Map<string, { readonly frames: PhotoFrame[]; last: number }>();
  for (const frame of timed) {
    const camera = frame.record.model ?? '';
    const group = open.get(camera);
    if (group && frame.instant - group.last <= passGap) {
      group.frames.push(frame);
      group.last = frame.instant;
      continue;
    }
    const fresh = [frame];
    groups.push(fresh);
    open.set(camera, { frames: fresh, last: frame.instant });
  }
  return groups;
}
