import { learnFrom } from '../../src/figures/flown/learn';
import { contentsOf } from '../support/contents';
import { arrivalOf24, departureOf06, madeFlight, madeRunway } from '../support/made-flights';
import { measure, printed } from './measure.ts';

const flights = 500;
const points = 1000;
const arrival = { glide: 3.2, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1.5 };
const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 1.5 };

/** What 500 recorded flights of 1,000 points teach. */
export function learnFromFlights(): void {
  const contents = contentsOf([
    madeRunway.feature,
    ...Array.from({ length: flights }, (_, seed) =>
      madeFlight(
        `f${seed}`,
        seed % 2
          ? arrivalOf24({ ...arrival, every: 10_950 / arrival.speed / points, seed })
          : departureOf06({ ...departure, every: 7_995 / departure.speed / points, seed }),
      ),
    ),
  ]);
  const learned = measure(8, () => void learnFrom(contents));
  console.log(`what really flies (${flights} flights of ${points} points; budget 1 s, in a worker)`);
  console.log(`  learned               ${printed(learned)}`);
}
