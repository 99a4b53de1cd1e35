import {
  constants,
  PerformanceObserver,
  type NodeGCPerformanceDetail,
  type PerformanceEntry,
} from 'node:perf_hooks';

/**
 * How often the young generation was collected while something was done many times: what garbage costs, told by a count that
 * does not hang on what else the machine does.
 */
export async function youngCollections(calls: number, call: (i: number) => void): Promise<number> {
  let count = 0;
  const observer = new PerformanceObserver((list) => {
    for (const { detail } of list.getEntries() as readonly (PerformanceEntry & { detail?: unknown })[])
      if ((detail as NodeGCPerformanceDetail).kind === constants.NODE_PERFORMANCE_GC_MINOR) count++;
  });
  observer.observe({ entryTypes: ['gc'] });
  for (let i = 0; i < calls; i++) call(i);
  // What was observed is told in a task of its own.
  await new Promise((resolve) => setTimeout(resolve, 20));
  observer.disconnect();
  return count;
}
