import type { FlownBand } from '../../survey/schema/flown-band';
import { sampleStep } from '../traffic/samples';
import type { Band, Flown } from './learn';

/** m between the stations that a survey keeps: a fifth of those learned, between which flights do not bend. CP. */
const keptStep = 5 * sampleStep;

/** What a survey keeps of what flights of an end and kind have taught, to the decimetre; null where they were seen nowhere. */
export function bandToKeep({ kind, flights, stations }: Flown): FlownBand | null {
  const known = new Map(stations.map((s) => [s.station, s]));
  const first = stations.find(({ station }) => station % keptStep === 0);
  if (!first) return null;
  const height: Band[] = [];
  const offset: (Band | null)[] = [];
  // Up to the first gap: what lies beyond is another stretch.
  for (let at = first.station; ; at += keptStep) {
    const there = known.get(at);
    if (!there) break;
    height.push(rounded(there.height));
    offset.push(there.offset && rounded(there.offset));
  }
  return {
    kind,
    flights: flights.length,
    from: first.station,
    step: keptStep,
    height: height.map(([a, b, c]) => [a, b, c]),
    offset: offset.map((band) => band && [band[0], band[1], band[2]]),
  };
}

const rounded = (band: Band): Band => band.map((m) => Math.round(m * 10) / 10 + 0) as unknown as Band;
