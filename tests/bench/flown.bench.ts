import { learnFrom } from '../../src/figures/flown/learn';
import { Scratch } from '../../src/figures/scratch';
import { allSpotFigures } from '../../src/figures/spot-figures';
import { pathsOf } from '../../src/figures/traffic/paths';
import { readContents } from '../../src/survey/contents';
import { reshapeFeature } from '../../src/survey/edits/reshape-feature';
import { instants } from '../map/scene';
import { opened, plainSubject, spotFeature, surveyText } from '../support/contents';
import { arrivalOf24, departureOf06, madeFlight, madeRunway } from '../support/made-flights';
import { measure, printed } from './measure.ts';

const flights = 500;
const points = 1000;
const arrival = { glide: 3.2, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1.5 };
const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 1.5 };

const madeSeason = () =>
  Array.from({ length: flights }, (_, seed) =>
    madeFlight(
      `f${seed}`,
      seed % 2
        ? arrivalOf24({ ...arrival, every: 10_950 / arrival.speed / points, seed })
        : departureOf06({ ...departure, every: 7_995 / departure.speed / points, seed }),
    ),
  );

/** What 500 recorded flights of 1,000 points teach, and what it takes to open and to drag with them. */
export function learnFromFlights(): void {
  const spots = Array.from({ length: 5 }, (_, i) => spotFeature(`s${i}`, [18.16 + 0.004 * i, 50.918]));
  const text = surveyText([madeRunway.feature, ...spots, ...madeSeason()], { subjects: [plainSubject] });
  let survey = opened(text);
  const contents = readContents(survey);
  const learned = measure(8, () => void learnFrom(contents));
  console.log(`what really flies (${flights} flights of ${points} points; budget 1 s, in a worker)`);
  console.log(`  learned               ${printed(learned)}`);
  const scratch = new Scratch();
  const figures = () => {
    const read = readContents(survey);
    allSpotFigures(
      read,
      pathsOf(read, () => true, null),
      instants,
      null,
      scratch,
    );
  };
  const open = measure(4, () => {
    survey = opened(text);
    figures();
  });
  const drag = measure(200, (i) => {
    survey = reshapeFeature(survey, 's1', { type: 'Point', coordinates: [18.164 + 1e-5 * i, 50.918] });
    figures();
  });
  console.log(
    `  opened, all figures   ${printed(open)} (${Math.round(text.length / 1e6)} MB; budget 3 s in the page)`,
  );
  console.log(`  a spot dragged        ${printed(drag)}`);
}
