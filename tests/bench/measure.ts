export interface Times {
  readonly median: number;
  readonly p95: number;
}

/** Script time of one call in ms over many calls, after warming up. */
export function measure(calls: number, call: (i: number) => void): Times {
  const warm = Math.ceil(calls / 4);
  const times: number[] = [];
  for (let i = 0; i < warm + calls; i++) {
    const from = performance.now();
    call(i);
    if (i >= warm) times.push(performance.now() - from);
  }
  times.sort((a, b) => a - b);
  const at = (share: number) => times[Math.min(times.length - 1, Math.floor(share * times.length))] as number;
  return { median: at(0.5), p95: at(0.95) };
}

export const printed = ({ median, p95 }: Times) =>
  `median ${median.toFixed(3)} ms, 95 % ${p95.toFixed(3)} ms`;
