/** ms in one go: with what else the page does in a task it stays under a frame of 16 ms. */
const most = 6;

/** A clock in ms, and a later task of the page: returns how to call it off. */
export interface Pauses {
  readonly now: () => number;
  readonly later: (go: () => void) => () => void;
}

/**
 * Does work step by step, a few ms at a time, so that the page goes on in between: `done` hears what comes of it. The first slice
 * is done at once. Returns how to end it: then nothing more is done, and nothing is heard.
 */
export function inSlices<T>(
  steps: Generator<void, T>,
  { now, later }: Pauses,
  done: (result: T) => void,
): () => void {
  let callOff = (): void => undefined;
  const go = () => {
    const until = now() + most;
    for (;;) {
      const step = steps.next();
      if (step.done) return done(step.value);
      if (now() >= until) break;
    }
    callOff = later(go);
  };
  go();
  return () => callOff();
}

/** The same, as a promise of what comes of it. `told` hears the last step of each slice. */
export async function sliced<Y, T>(
  steps: Generator<Y, T>,
  { now, later }: Pauses,
  told: (step: Y) => void = () => undefined,
): Promise<T> {
  for (;;) {
    const until = now() + most;
    let step = steps.next();
    while (!step.done && now() < until) step = steps.next();
    if (step.done) return step.value;
    told(step.value);
    await new Promise<void>((go) => later(go));
  }
}

/** The page's own. A message is a task as a timer is, but comes at once, and in a page that is hidden too. */
export const pagePauses: Pauses = {
  now: () => performance.now(),
  later: (go) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      go();
    };
    port2.postMessage(null);
    return () => port1.close();
  },
};
