/** What a trace of the browser says of a page between the marks `bench-click`, `bench-painted` and `bench-list`. */
export interface TracedPage {
  /** ms by the clock from the click until the sketch is on the screen. */
  readonly painted: number;
  /** Processor ms of the main thread until then, and what of that the map library took in calls of its own. */
  readonly busy: number;
  readonly busyInMap: number;
  /** Processor ms of the longest task until the list, and of the longest one without the map library's calls. */
  readonly longest: number;
  readonly longestOwn: number;
}

interface Traced {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly data?: { readonly url?: string } };
}

export function longestTasks(trace: Buffer): TracedPage {
  const { traceEvents } = JSON.parse(trace.toString('utf8')) as { readonly traceEvents: readonly Traced[] };
  const markAt = (name: string): Traced => {
    const mark = traceEvents.find((event) => event.name === name);
    if (!mark) throw new Error(`expected the trace to have the mark ${name}`);
    return mark;
  };
  const [click, painted, list] = ['bench-click', 'bench-painted', 'bench-list'].map(markAt) as [
    Traced,
    Traced,
    Traced,
  ];
  const ofPage = traceEvents.filter(
    ({ ph, pid, tid }) => ph === 'X' && pid === click.pid && tid === click.tid,
  );
  const inMap = ofPage.filter(
    ({ name, args }) => name === 'FunctionCall' && /\/map-?(view|libre)/.test(args?.data?.url ?? ''),
  );
  const endOf = ({ ts, dur = 0 }: Traced) => ts + dur;
  const tasks = ofPage
    .filter(({ name, ts }) => name === 'RunTask' && ts >= click.ts && ts < list.ts)
    .map((task) => {
      // A call within a call is part of it.
      const calls = inMap.filter((call) => call.ts >= task.ts && endOf(call) <= endOf(task));
      const outer = calls.filter(
        (call) =>
          !calls.some((other) => other !== call && other.ts <= call.ts && endOf(other) >= endOf(call)),
      );
      const ms = (events: readonly Traced[]) => events.reduce((sum, { tdur = 0 }) => sum + tdur / 1000, 0);
      return { until: task.ts, all: ms([task]), map: ms(outer) };
    });
  const before = tasks.filter(({ until }) => until < painted.ts);
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
  return {
    painted: (painted.ts - click.ts) / 1000,
    busy: sum(before.map(({ all }) => all)),
    busyInMap: sum(before.map(({ map }) => map)),
    longest: Math.max(...tasks.map(({ all }) => all)),
    longestOwn: Math.max(...tasks.map(({ all, map }) => all - map)),
  };
}
