export interface Later<T> {
  readonly promise: Promise<T>;
  readonly answer: (value: T) => void;
  readonly fail: (error: Error) => void;
}

/** Something that is answered when the test says so. */
export function later<T>(): Later<T> {
  let answer: Later<T>['answer'] = () => undefined;
  let fail: Later<T>['fail'] = () => undefined;
  const promise = new Promise<T>((resolve, reject) => {
    answer = resolve;
    fail = reject;
  });
  return { promise, answer, fail };
}

/** Lets all that can go on without an answer go on: promises only, no clock. */
export async function settle(): Promise<void> {
  for (let i = 0; i < 40; i++) await Promise.resolve();
}
