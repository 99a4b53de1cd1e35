import type { NewLogEntry } from '../../survey/edits/add-log-entries';
import type { JsonObject } from '../../survey/json';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { isoInstant } from '../../time/local-time';
import type { Sample } from '../types';
import type { Pass } from './find-passes';
import type { Marks, Measured } from './measure';

/** The frame that stands for a pass: the best rated, of these the one in the middle of the pass. */
export function leadFrame({
  frames,
  from,
  to,
}: Pick<Pass, 'frames' | 'from' | 'to'>): Pass['frames'][number] {
  const off = (frame: Pass['frames'][number]) => Math.abs((frame.instant ?? from) - (from + to) / 2);
  const [lead] = frames.toSorted(
    (a, b) => (b.record.rating ?? -1) - (a.record.rating ?? -1) || off(a) - off(b),
  );
  return lead as Pass['frames'][number];
}

/** A pass as the survey keeps it: no file, no thumbnail, no position but the spot's, no serial number. */
export function logEntryOf(
  pass: Pass,
  spot: StandingSpot,
  predicted: Sample | null,
  measured: KeptMeasure | null = null,
): NewLogEntry {
  const { record } = leadFrame(pass);
  const { focalLength, fNumber, exposure, iso } = record;
  const kept = pass.frames.reduce((most, { record: { rating } }) => Math.max(most, rating ?? -1), -1);
  return {
    position: spot.position,
    properties: withoutNull({
      time: isoInstant(Math.floor(pass.from / 1000) * 1000),
      frames: pass.frames.length,
      spot: spot.id,
      path: pass.path,
      subject: pass.subject,
      camera: record.model,
      settings: withoutNull({ focalLength, fNumber, exposure, iso }),
      predicted: predicted
        ? withoutNull({
            focalLength: predicted.focalLength,
            light: predicted.light,
            lightAngle: predicted.lightAngle,
            slantRange: predicted.slantRange,
          })
        : null,
      measured: measured && withoutNull(roundedMeasure(measured)),
      kept: kept < 0 ? null : kept,
    }),
  };
}

/** A measure with what was marked for it. */
export type KeptMeasure = Measured & Pick<Marks, 'part' | 'way'>;

/** To the decimetre: no frame says more. */
function roundedMeasure({ part, way, angle: _, ...told }: KeptMeasure): JsonObject {
  const rounded = Object.entries(told).map(([name, value]): [string, number | null] => [
    name,
    value === null ? null : Math.round(value * 10) / 10,
  ]);
  return { part, way, ...Object.fromEntries(rounded) };
}

const withoutNull = (members: JsonObject): JsonObject =>
  Object.fromEntries(Object.entries(members).filter(([, value]) => value !== null));
