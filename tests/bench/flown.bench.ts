import { learnFrom } from '../../src/figures/flown/learn';
import { contentsOf } from '../support/contents';
import { arrivalOf24, departureOf06, madeFlight, madeRunway, type MadePoint } from '../support/made-flights';
import { measure, printed } from './measure.ts';

const flights = 500;
const points = 1000;

/** What 500 recorded flights of 1,000 points teach. */
export function learnFromFlights(): void {
  const contents = contentsOf([
    madeRunway.feature,
    ...Array.from({ length: flights }, (_, seed) =>
      madeFlight(
        `f${seed}`,
        dense(
          seed % 2
            ? arrivalOf24({ glide: 3.2, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1.5, seed })
            : departureOf06({ liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 1.5, seed }),
        ),
      ),
    ),
  ]);
  const learned = measure(8, () => void learnFrom(contents));
  console.log(`what really flies (${flights} flights of ${points} points; budget 1 s, in a worker)`);
  console.log(`  learned               ${printed(learned)}`);
}

/** The same flight with 1,000 points. */
function dense(flight: readonly MadePoint[]): readonly MadePoint[] {
  return Array.from({ length: points }, (_, k) => {
    const at = (k * (flight.length - 1)) / (points - 1);
    const i = Math.min(flight.length - 2, Math.floor(at));
    const [a, b] = [flight[i], flight[i + 1]] as [MadePoint, MadePoint];
    const between = (member: keyof MadePoint) => a[member] + (b[member] - a[member]) * (at - i);
    return {
      along: between('along'),
      offset: between('offset'),
      height: between('height'),
      time: between('time'),
    };
  });
}
