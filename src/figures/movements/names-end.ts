import { designatorNumber } from '../geometry/designator';

/** Whether what a list calls a runway is this end: "9L" is "09L". */
export function namesEnd(given: string, designator: string): boolean {
  const bare = (text: string) => text.replace(/^0/, '').toUpperCase();
  return (
    designator.toUpperCase() === given.toUpperCase() ||
    (designatorNumber(designator) !== null && bare(designator) === bare(given))
  );
}
