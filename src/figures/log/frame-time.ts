import { wallInstant } from '../../time/local-time';
import type { PhotoRecord } from '../../survey/photo-record';

/** A photograph, and when it was taken. */
export interface PhotoFrame {
  readonly record: PhotoRecord;
  /** ms since 1970, UTC; null where nobody knows. */
  readonly instant: number | null;
  readonly doubts: readonly string[];
}

/**
 * The camera's own offset goes first, then the airfield's zone. `correction`: s to be added to what the camera's clock says,
 * the same for all.
 */
export function frameOf(record: PhotoRecord, zone: string, correction = 0): PhotoFrame {
  const { clock, offset, doubts } = record;
  if (clock === null) return { record, instant: null, doubts };
  if (offset !== null) {
    const { instant } = wallInstant(clock, 'UTC');
    return { record, instant: instant - offset * 60_000 + correction * 1000, doubts };
  }
  const { instant, came } = wallInstant(clock, zone);
  const said = {
    once: [],
    twice: ['This time came twice that night, and the camera wrote no zone: the first one is taken.'],
    skipped: ['The clocks skipped this time that night: it is taken as an hour later.'],
  }[came];
  return { record, instant: instant + correction * 1000, doubts: [...doubts, ...said] };
}
