import { bringInCity } from './bring-in.bench.ts';
import { dragSpot } from './drag-spot.bench.ts';
import { learnFromFlights } from './flown.bench.ts';
import { frames } from './frame.bench';
import { historyHeld } from './history.bench.ts';
import { inBrowser } from './in-browser.ts';
import { readPhotographs } from './photos.bench.ts';
import { openLargeSurvey } from './open-survey.bench.ts';
import { sweep } from './sweep.bench.ts';
import { sweepAsked } from './sweep-asked.bench.ts';
import { viewshed } from './viewshed.bench.ts';
import { whichField } from './which-field.bench.ts';
import { yearOfLight } from './year-of-light.bench.ts';

/** Prints what the budgets of the design are measured by. Not a test: nothing here passes or fails. */
dragSpot();
openLargeSurvey();
yearOfLight();
historyHeld();
learnFromFlights();
frames();
whichField();
sweep();
sweepAsked();
await viewshed();
await readPhotographs();
await bringInCity();
await inBrowser();
