import type { PathSamples } from '../figures/traffic/samples';

/** Every so many samples of a path, from the first on. */
export function pickedSamples(samples: PathSamples, every: number): PathSamples {
  const count = Math.ceil(samples.count / every);
  const pick = <L extends Float64Array | Uint8Array>(list: L, size = 1): L =>
    list.filter((_, k) => Math.floor(k / size) % every === 0) as L;
  return {
    headingKnown: samples.headingKnown,
    count,
    station: pick(samples.station),
    centre: pick(samples.centre, 3),
    forward: pick(samples.forward, 3),
    up: pick(samples.up, 3),
    slope: pick(samples.slope),
    attitude: pick(samples.attitude),
    bank: pick(samples.bank),
    height: pick(samples.height),
    share: pick(samples.share),
    speed: pick(samples.speed),
    onGround: pick(samples.onGround),
  };
}
