import type { LogEntry } from '../../survey/schema/log-entry';

/** m that the path said, and that a frame said. */
export interface MeasuredPair {
  readonly id: string;
  readonly predicted: number;
  readonly measured: number;
  readonly error: number;
}

/**
 * What frames seen side-on say against the path, as slant ranges or heights. Frames that came or went are no judges of the
 * path: their range is the path's own.
 */
export function measuredPairs(
  of: 'range' | 'height',
  entries: readonly Pick<LogEntry, 'id' | 'measured'>[],
): readonly MeasuredPair[] {
  return entries.flatMap(({ id, measured: m }) => {
    if (m?.way !== 'side-on') return [];
    const [predicted, measured, error] =
      of === 'range'
        ? [m.pathRange, m.slantRange, m.slantRangeError]
        : [m.pathHeight, m.height, m.heightError];
    return predicted === null || measured === null || error === null
      ? []
      : [{ id, predicted, measured, error }];
  });
}
