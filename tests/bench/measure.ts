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

/** What is beside a figure: the most that it may take, and the same done the plain way in the same run. */
interface Beside {
  /** ms: of the median, and of the 95th percentile. */
  readonly budget?: number;
  readonly budgetP95?: number;
  readonly plain?: readonly [name: string, times: Times];
}

/** One line of the table: what, how long, within its budget or not, and how many times as quick as the plain way. */
export function row(what: string, times: Times, { budget, budgetP95, plain }: Beside = {}): void {
  const held = (value: number, most: number | undefined) =>
    most === undefined || value <= most ? '' : ' OVER';
  const limits = [
    ...(budget === undefined ? [] : [`median ${budget} ms${held(times.median, budget)}`]),
    ...(budgetP95 === undefined ? [] : [`95 % ${budgetP95} ms${held(times.p95, budgetP95)}`]),
  ];
  const against = plain ? `${(plain[1].median / times.median).toFixed(1)} x as quick as ${plain[0]}` : '';
  const notes = [limits.length > 0 ? `budget ${limits.join(', ')}` : '', against].filter(
    (note) => note !== '',
  );
  console.log(`  ${what.padEnd(24)}${printed(times).padEnd(40)}${notes.join('; ')}`);
}
